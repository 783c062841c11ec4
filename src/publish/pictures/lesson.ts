// Floor 9. A study or a series → all that goes into the folder of its lesson: pictures, as recipes, and what to say.
import type { AnalysedGallery } from "../../analysis/analysegallery.ts";
import { presentSeriesShows } from "../../views/show/seriesshow.ts";
import { presentShow } from "../../views/show/showpage.ts";
import { formatOf } from "../../words/format.ts";
import { nameGallery, nameStudy } from "../../words/namedresult.ts";
import { formatScript } from "../feeds/speakerscript.ts";
import { listDrawn } from "./drawingrecipe.ts";
import { collectSources } from "./drawnsource.ts";
import type { Size } from "./paper.ts";
import type { DrawnFile } from "./recipe.ts";
import { listStills, listTakeaways } from "./stillrecipe.ts";

/** The files of one folder. `file` is where problems are told. */
export interface Lesson {
  readonly folder: string;
  readonly file: string;
  readonly files: readonly DrawnFile[];
  readonly script: string;
}

/** Plans the lesson of the study, or of the series, `slug`. Throws where there is none of that name. */
export function planLesson(gallery: AnalysedGallery, slug: string, isSeries: boolean, size: Size): Lesson {
  const format = formatOf(gallery.gallery);
  const series = isSeries ? gallery.series?.find((one) => one.slug === slug) : undefined;
  const slugs = series?.entries.flatMap((entry) => ("study" in entry ? [entry.study] : [])) ?? [slug];
  const own = gallery.studies.filter(({ study }) => slugs.includes(study.slug));
  const drawn = collectSources(
    own.map((one) => [one, listDrawn(one, gallery.gallery)] as const),
    gallery.survey,
  );
  const [show] = isSeries
    ? presentSeriesShows(nameGallery(gallery, format), format).filter(
        ({ folder }) => folder === `series/${slug}/show`,
      )
    : own.map((one) => presentShow(nameStudy(one, format), gallery.gallery, format));
  if (show === undefined) throw new Error(`no steps of ${slug}`);
  const files = own.flatMap((one) =>
    listTakeaways(one, gallery.gallery, drawn, size, isSeries ? `${one.study.slug}-` : ""),
  );
  return {
    folder: slug,
    file: own[0]?.study.file ?? slug,
    files: [...listStills(show, drawn, format, size), ...files],
    script: formatScript(show, format),
  };
}
