// Floor 9. The pictures of a lesson, as recipes: a still of each step, the swap, a thumbnail, both flags, and figures as SVG.
import type { StudyResult } from "../../analysis/result.ts";
import type { Gallery } from "../../content/study/study.ts";
import { lessonFiles, nameStill, stillsFolder } from "../../views/show/lessonfile.ts";
import { formatShowPath, presentShow, type ShowPage } from "../../views/show/showpage.ts";
import { listSteps } from "../../views/show/showsteps.ts";
import { formatStudyPath } from "../../views/status.ts";
import { pngSize } from "../../views/study/notes.ts";
import { type Format, formatOf } from "../../words/format.ts";
import { nameStudy } from "../../words/namedresult.ts";
import { formatTitle } from "../../words/title.ts";
import { collectSources, type Drawn, findFrom } from "./drawnsource.ts";
import { listFigures } from "./figurerecipe.ts";
import type { Size } from "./paper.ts";
import type { PictureScene, Source } from "./picturescene.ts";
import type { DrawnFile } from "./recipe.ts";
import { arrangeSplit, arrangeStep } from "./stillscene.ts";

/** What a projector and most recordings show. */
export const usualSize: Size = { width: 1920, height: 1080 };
const thumbnailSize: Size = { width: 1280, height: 720 };

/** A still of each step of a show, in order. */
export function listStills(
  { steps, folder }: Pick<ShowPage, "steps" | "folder">,
  drawn: Drawn,
  format: Format,
  size: Size = usualSize,
): readonly DrawnFile[] {
  const find = findFrom(`/${folder}/`, drawn);
  return steps.map((step, index) => ({
    path: nameStill(index, step.anchor),
    recipe: stillOf(arrangeStep(step, size, format, find), [step.heading, step.says ?? ""], format),
  }));
}

/** The swap, a thumbnail and both flags of a study; `prefix` begins their names. */
export function listTakeaways(
  result: StudyResult,
  gallery: Gallery,
  drawn: Drawn,
  size: Size = usualSize,
  prefix = "",
): readonly DrawnFile[] {
  const { study, comparison, drawings } = result;
  const format = formatOf(gallery);
  const unofficial = format.say("still.unofficial");
  const path = formatShowPath(study.slug);
  const { show: _, ...unplanned } = study;
  const steps = listSteps({ ...nameStudy(result, format), study: unplanned }, gallery, path, format);
  const find = findFrom(path, drawn);
  const [before, after] = ["before", "after"].map((name) => {
    const step = steps.find((one) => one.name === name);
    if (step === undefined) throw new Error(`a study without the step ${name}`);
    return arrangeStep(step, size, format, find);
  }) as [PictureScene, PictureScene];
  const { proportions } = comparison.before;
  const sources = [drawings.original, drawings.redesign].map((drawing) => ({
    drawing,
    proportions,
  })) as unknown as readonly [Source, Source];
  const name = study.flag ?? study.title;
  const says = format.say("still.split");
  const png = pngSize(proportions);
  return [
    {
      path: `${prefix}${lessonFiles.swap}`,
      recipe: {
        kind: "swap",
        scenes: [before, after],
        words: [...wordsIn(before), ...wordsIn(after)],
        note: `${unofficial} ${formatTitle(study, format)}`,
      },
    },
    {
      path: `${prefix}${lessonFiles.thumbnail}`,
      recipe: stillOf(
        arrangeSplit({ heading: name, says }, sources, thumbnailSize, format),
        [name, says],
        format,
      ),
    },
    {
      path: `${prefix}${lessonFiles.original}`,
      recipe: { kind: "picture", drawing: drawings.original, size: png },
    },
    {
      path: `${prefix}${lessonFiles.redesign}`,
      recipe: { kind: "picture", drawing: drawings.redesign, size: png, note: unofficial },
    },
    ...listFigures(result, gallery, drawn).map(({ path: file, ...rest }) => ({
      path: `${prefix}${file}`,
      ...rest,
    })),
  ];
}

/** What the page of a study offers whose author says so; `shown` is all else that is drawn for it. */
export function listOffered(
  result: StudyResult,
  gallery: Gallery,
  shown: readonly DrawnFile[],
): readonly DrawnFile[] {
  const drawn = collectSources([[result, shown]], undefined);
  const format = formatOf(gallery);
  const show = presentShow(nameStudy(result, format), gallery, format);
  const flags: readonly string[] = [lessonFiles.original, lessonFiles.redesign];
  const folder = `${formatStudyPath(result.study.slug)}${stillsFolder}`.slice(1);
  return [...listStills(show, drawn, format), ...listTakeaways(result, gallery, drawn)]
    .filter(({ path }) => !flags.includes(path))
    .map(({ path, recipe }) => ({ path: `${folder}${path}`, recipe }));
}

function stillOf(scene: PictureScene, said: readonly string[], { say }: Format): DrawnFile["recipe"] {
  const words = said.filter((text) => text !== "").map((text) => (/[.?!]$/.test(text) ? text : `${text}.`));
  return { kind: "still", scene, words: wordsIn(scene), note: [say("still.unofficial"), ...words].join(" ") };
}

function wordsIn({ items }: PictureScene): readonly string[] {
  return items.flatMap((item) => (item.kind === "text" ? [item.text] : []));
}
