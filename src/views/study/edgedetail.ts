// Floor 8. The place where two paints meet, cut out of both drawings of a study, to stand for the edge wherever it is named.

import type { StudyResult } from "../../analysis/result.ts";
import type { ComparedEdge } from "../../measure/comparison.ts";
import type { Linker } from "../address.ts";
import { type DetailView, findCrop, presentDetail } from "../edge/edgecrop.ts";
import type { Crop } from "../edge/linepiece.ts";
import { formatStudyPath } from "../status.ts";

/** The place in the original and in the redesign; undefined where none of the edge's lines is traced. */
export type Details = readonly [DetailView, DetailView] | undefined;

/** An edge is shown on many pages, and its place is searched for once. */
const known = new WeakMap<ComparedEdge, Crop | undefined>();

/** The place of one edge of `result`, or undefined where none of its lines is traced. */
export function findPlace({ edgeLines, comparison }: StudyResult, edge: ComparedEdge): Crop | undefined {
  if (!known.has(edge)) known.set(edge, findCrop(edgeLines, edge, comparison.before.proportions));
  return known.get(edge);
}

/** `kind`: how the names of the study's drawings begin that are cut, as `seen-grey-`. */
export function presentDetails(result: StudyResult, edge: ComparedEdge, link: Linker, kind = ""): Details {
  const crop = findPlace(result, edge);
  if (crop === undefined) return undefined;
  const { proportions } = result.comparison.before;
  const detail = (name: string) =>
    presentDetail(crop, link(`${formatStudyPath(result.study.slug)}${kind}${name}.svg`), proportions);
  return [detail("original"), detail("redesign")];
}
