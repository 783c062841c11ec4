// Floor 8. The pictures of its steps that the page of a study offers, where its author says so.
import type { StudyResult } from "../../analysis/result.ts";
import type { Gallery } from "../../content/study/study.ts";
import type { Format } from "../../words/format.ts";
import { linkFrom } from "../address.ts";
import { formatStudyPath } from "../status.ts";
import type { Download } from "../study/notes.ts";
import { lessonFiles, nameStill, stillsFolder } from "./lessonfile.ts";
import { listSteps } from "./showsteps.ts";

/** What the page of a study offers of it: nothing unless its author says so. */
export function presentLesson(result: StudyResult, gallery: Gallery, format: Format): readonly Download[] {
  const { study, comparison, ranking } = result;
  if (study.downloads !== true) return [];
  const { say } = format;
  const path = formatStudyPath(study.slug);
  const link = linkFrom(path);
  const offer = (file: string, text: string): Download => ({
    address: link(`${path}${stillsFolder}${file}`),
    file: `${study.slug}-${file}`,
    text,
  });
  const hasEdges = comparison.edges.length > 0;
  return [
    ...listSteps(result, gallery, path, format).map(({ anchor, heading }, index) =>
      offer(
        nameStill(index, anchor),
        say("still.scriptStep", { number: format.number(index + 1, 0), heading: heading.replace(/\.$/, "") }),
      ),
    ),
    offer(lessonFiles.swap, say("still.swap")),
    offer(lessonFiles.thumbnail, say("still.thumbnail")),
    ...(hasEdges
      ? [offer(lessonFiles.map, say("still.map")), offer(lessonFiles.ruler, say("still.ruler"))]
      : []),
    ...(ranking?.matrix === undefined ? [] : [offer(lessonFiles.matrix, say("still.matrix"))]),
    offer(lessonFiles.script, say("still.script")),
  ];
}
