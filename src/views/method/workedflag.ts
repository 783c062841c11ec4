// Floor 8. The flag that the method page takes through its steps: one study of the gallery, and what each step makes of it.

import type { GalleryResult, StudyResult } from "../../analysis/result.ts";
import { measureLuminance } from "../../colour/cloth.ts";
import { linearOf } from "../../colour/colourtext.ts";
import { isClear } from "../../colour/contrast.ts";
import type { Format } from "../../words/format.ts";
import { formatFocusFrom } from "../../words/fromafar.ts";
import { outcomeIds } from "../../words/gradeword.ts";
import type { Swatch } from "../../words/paintname.ts";
import { formatNames } from "../../words/phrase.ts";
import { describeChange, describeVerdict } from "../../words/verdict.ts";
import type { Linker } from "../address.ts";
import { type DetailView, findCrop, presentDetail } from "../edge/edgecrop.ts";
import { orderStudies } from "../front/card.ts";
import { type Plate, presentPair, presentPlate } from "../plate.ts";
import { formatStudyPath } from "../status.ts";
import { formatStripFile, stripSize } from "../study/distancestrip.ts";
import { type EdgeMapView, presentEdgeMap } from "../study/edgemap.ts";
import { type LikenessView, presentLikeness } from "../study/likenessfact.ts";
import { type CellView, type MatrixView, presentMatrix } from "../study/matrixview.ts";
import { presentSeen } from "../study/seenotherwise.ts";
import { nameEntry, placeDrawing } from "../survey/flagname.ts";
import { type ClaritySum, presentSum } from "./claritysum.ts";

export interface WorkedFlag {
  readonly name: string;
  /** Its study's page. */
  readonly address: string;
  readonly plate: Plate;
  /** The drawing in code colours. */
  readonly labels: Plate;
  readonly map: EdgeMapView;
  readonly cloth: readonly ClothRow[];
  readonly sum: ClaritySum;
  readonly edges: readonly WorkedEdge[];
  readonly afar: readonly (Plate & { readonly distance: number; readonly clarity: string })[];
  readonly seen: readonly (Plate & { readonly value: string })[];
  readonly likeness: LikenessView | undefined;
  /** The change and its verdict as the study's page tells them. */
  readonly said: string;
  /** The best change of each colour; none where none was tried. */
  readonly options: readonly WorkedOption[];
  /** The flag in the survey, between those before and behind it; none where it has no place there. */
  readonly placed: readonly (Plate & { readonly clarity: string })[];
}

/** A change as a part of the picture of all of them: `box` is its place there. */
export interface WorkedOption
  extends Pick<MatrixView, "src" | "width" | "height">,
    Pick<CellView, "box" | "clarity"> {
  readonly names: readonly [string, string];
  readonly address: string;
}

/** A colour of the flag as cloth. `x` is its reflectance, 0 to 100. */
export interface ClothRow extends Swatch {
  readonly luminance: string;
  readonly reflectance: string;
  readonly x: number;
}

/** What the change does to one edge. */
export interface WorkedEdge {
  readonly names: string;
  readonly outcome: string;
  readonly before: string;
  readonly after: string;
  /** Where both stand on a line from 0 to 100; a parted edge has no place before. */
  readonly x: readonly [number | undefined, number];
  readonly details: readonly [DetailView, DetailView] | undefined;
}

/** The file of a study's drawing in code colours, in its folder. */
export const labelFile = "labels.svg";

/** What the pictures have room for. */
const most = { edges: 8, colours: 6, options: 4 };
/** Flag heights from which the flag is shown. */
const shownFrom = [20, 80, 320] as const;

/**
 * The flag of the oldest study that has something to show for every step, so that a new study changes no picture: charges,
 * edges clear and weak, one that the change makes clear, and a flag that it looks like. Else that of the oldest with an
 * edge; undefined where no study has one.
 */
export function presentWorked(all: GalleryResult, link: Linker, format: Format): WorkedFlag | undefined {
  const oldest = [...orderStudies(all.studies)].reverse();
  const result =
    oldest.find(isTelling) ?? oldest.find(({ comparison }) => comparison.before.edges.length > 0);
  return result && present(result, all, link, format);
}

function isTelling({ comparison: { before, edges }, likeness }: StudyResult): boolean {
  return (
    before.focus.source !== "none" &&
    likeness?.nearest.some(({ origin }) => origin !== "collection") === true &&
    edges.length > 2 &&
    edges.length <= most.edges &&
    edges.some(({ outcome }) => outcome === "gained") &&
    before.edges.some(({ grade }) => isClear(grade)) &&
    before.edges.some(({ grade }) => grade === "weak")
  );
}

function present(result: StudyResult, all: GalleryResult, link: Linker, format: Format): WorkedFlag {
  const { study, comparison } = result;
  const path = formatStudyPath(study.slug);
  const name = study.flag ?? study.title;
  const [plate] = presentPair(result, link, format);
  const show = (label: string, file: string, said: string): Plate => ({
    ...plate,
    label,
    src: link(`${path}${file}`),
    alt: said,
  });
  const { focus, proportions } = comparison.before;
  return {
    name,
    address: link(path),
    plate: { ...plate, label: name },
    labels: show(format.say("method.labels"), labelFile, format.say("method.labelsShown", { name })),
    map: presentEdgeMap(result, link, path, format),
    cloth: listCloth(result, format),
    sum: presentSum(comparison.before, format),
    edges: listEdges(result, link, format),
    afar:
      focus.source === "none"
        ? []
        : shownFrom.map((step) => ({
            ...show(
              format.number(step, 0),
              formatStripFile(step, "original"),
              format.say("method.afarShown", { name, distance: step }),
            ),
            ...stripSize(proportions),
            distance: step,
            clarity: formatFocusFrom(focus, step, format),
          })),
    seen: presentSeen(comparison, format).map(({ vision, heading, looks, before }) => ({
      ...show(
        heading,
        `seen-${vision}-original.svg`,
        format.say("method.visionShown", { heading, looks: looks[0] }),
      ),
      value: before,
    })),
    likeness: presentLikeness(result, all, link, format),
    said: sayVerdict(result, format),
    options: listOptions(result, link, format),
    placed: placeFlag(study.slug, all, link, format),
  };
}

function sayVerdict(result: StudyResult, format: Format): string {
  const { word, sentence } = describeVerdict(result.comparison, format);
  return `${word}. ${describeChange(result, format)} ${sentence}`;
}

function listOptions(result: StudyResult, link: Linker, format: Format): readonly WorkedOption[] {
  const matrix = presentMatrix(result, link, format);
  if (matrix === undefined) return [];
  const { src, width, height, page, columns, rows } = matrix;
  return rows
    .flatMap((row): readonly WorkedOption[] => {
      const at = row.cells.findIndex((cell) => cell?.isBest);
      const [cell, column] = [row.cells[at], columns[at]];
      if (!cell || column === undefined) return [];
      const { box, clarity, id } = cell;
      return [{ src, width, height, box, clarity, names: [row.name, column.name], address: `${page}#${id}` }];
    })
    .slice(0, most.options);
}

function placeFlag(
  slug: string,
  { survey, studies }: GalleryResult,
  link: Linker,
  format: Format,
): WorkedFlag["placed"] {
  const entries = survey?.entries ?? [];
  const at = entries.findIndex(({ slugs }) => slugs.includes(slug));
  if (at === -1) return [];
  return entries.slice(Math.max(0, at - 1), at + 2).map((entry) => ({
    ...presentPlate(nameEntry(entry, studies), link(placeDrawing(entry)), entry.measure, format),
    clarity: format.percent(entry.flag.clarity),
  }));
}

function listCloth({ comparison: { before } }: StudyResult, format: Format): readonly ClothRow[] {
  return before.colours.slice(0, most.colours).map(({ hex, name, reflectance }) => ({
    hex,
    name,
    luminance: format.number(measureLuminance(linearOf(hex)), 3),
    reflectance: format.number(reflectance, 1),
    x: round(reflectance),
  }));
}

function listEdges(
  { study, comparison, edgeLines }: StudyResult,
  link: Linker,
  format: Format,
): readonly WorkedEdge[] {
  const { proportions } = comparison.before;
  const src = (file: string) => link(`${formatStudyPath(study.slug)}${file}.svg`);
  return comparison.edges.slice(0, most.edges).map((edge) => {
    const crop = findCrop(edgeLines, edge, proportions);
    const [before, after] = edge.contrast;
    return {
      names: formatNames(edge.names[before === null ? 1 : 0], format),
      outcome: format.say(outcomeIds[edge.outcome]),
      before: before === null ? "–" : format.contrast(before),
      after: format.contrast(after),
      x: [before === null ? undefined : round(before), round(after)],
      details: crop && [
        presentDetail(crop, src("original"), proportions),
        presentDetail(crop, src("redesign"), proportions),
      ],
    };
  });
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
