// Floor 8. The page of one edge: a comparison that can be pointed at, with every number there is of it.

import type { StudyResult } from "../../analysis/result.ts";
import type { Gallery } from "../../content/study/study.ts";
import type { ComparedEdge, Comparison } from "../../measure/comparison.ts";
import { edgeMetrics } from "../../measure/edgemetric.ts";
import type { MeasuredEdge } from "../../measure/measurement.ts";
import { findMeasured, listMoves } from "../../words/edgemove.ts";
import { describeViewing } from "../../words/focusfact.ts";
import type { Format } from "../../words/format.ts";
import { outcomeIds } from "../../words/gradeword.ts";
import { metricIds, metricMeansIds, wordsOf } from "../../words/metricwords.ts";
import { describeEdge, describeUnchanged } from "../../words/outcomewords.ts";
import { findPaint } from "../../words/paintname.ts";
import { capitalise, formatNames } from "../../words/phrase.ts";
import { formatTitle } from "../../words/title.ts";
import { formatCanonical, type Linker, linkFrom } from "../address.ts";
import { describePicture, type LinkPicture, pictureEdge } from "../linkview.ts";
import { type Frame, presentFrame } from "../pageframe.ts";
import type { Plate } from "../plate.ts";
import { recordEdge } from "../schemarecord.ts";
import { formatStudyPath, presentStatus, type StatusView } from "../status.ts";
import { type AnswerView, presentAnswer } from "../study/answerview.ts";
import { presentRefer, type ReferView } from "../study/citation.ts";
import { presentChosen, type RulerView } from "../study/contrastruler.ts";
import { type Details, findPlace, presentDetails } from "../study/edgedetail.ts";
import { type LocatorView, presentLocator } from "../study/edgemap.ts";
import { presentSaidOf, type SaidView } from "../study/saidview.ts";
import { chooseSplit, type Split } from "../study/splitline.ts";
import type { SummaryRow } from "../study/studypage.ts";
import { cropFiles, listPlacedEdges, type PlaceEdge, placeEdges } from "./edgeaddress.ts";
import { type EdgeRow, presentEdge, type Reading, roundLength } from "./edgerow.ts";
import { presentVisions, type VisionRow } from "./edgevision.ts";

/** The place in one flag; without `contrast` where there the edge is not. `note`: what the redesign is. */
export interface EdgePlate extends Plate {
  readonly contrast: string | undefined;
  readonly note: string | undefined;
}

export interface EdgePage {
  /** The page's folder in the site, without slashes around it. */
  readonly folder: string;
  /** Of its study. */
  readonly slug: string;
  readonly frame: Frame;
  readonly picture: LinkPicture;
  readonly title: string;
  readonly renamed: string | undefined;
  readonly study: { readonly title: string; readonly address: string; readonly table: string };
  readonly status: StatusView;
  readonly outcome: { readonly word: string; readonly sentence: string };
  readonly row: EdgeRow;
  /** Which of its grades is near the line; undefined where none is. */
  readonly near: string | undefined;
  readonly ruler: RulerView;
  /** Whether both colours are what they were: then one picture stands for both. */
  readonly isUnchanged: boolean;
  /** Where on the flag it is, and that part of both flags; undefined where none of its lines is traced. */
  readonly place: { readonly locator: LocatorView; readonly crops: readonly EdgePlate[] } | undefined;
  readonly numbers: readonly SummaryRow[];
  readonly visions: readonly (VisionRow & { readonly details: Details })[];
  readonly measuredHow: string;
  /** The same pair of colour names in other studies, a row each; undefined where there is none. */
  readonly elsewhere: RulerView | undefined;
  readonly siblings: readonly Sibling[];
  readonly links: Readonly<Record<"contrast" | "beside" | "vision" | "nearLine", string>>;
  readonly refer: ReferView;
  readonly answer: AnswerView | undefined;
  /** What others said to this edge. */
  readonly said: readonly SaidView[];
}

export interface Sibling {
  readonly names: string;
  readonly outcome: string;
  readonly address: string;
  readonly isHere: boolean;
  readonly details: Details;
}

const none = "–";

/** Other studies that an edge page names. Our own judgement: more are a list, and no comparison. */
const mostElsewhere = 24;

/** The pages of all edges of `results`, study by study, longest edge first; `namesakes` are those of the gallery. */
export function presentEdgePages(
  results: readonly StudyResult[],
  namesakes: Namesakes,
  gallery: Gallery,
  format: Format,
): readonly EdgePage[] {
  return results.flatMap((result) => {
    const place = placeEdges(result.study.slug, result.comparison);
    const split = chooseSplit(result);
    return listPlacedEdges(result.study.slug, result.comparison).map(({ edge }, index) =>
      presentEdgePage({ result, edge, index, place, split, namesakes }, gallery, format),
    );
  });
}

/** The link pictures of the pages of one study's edges. */
export function pictureEdges(result: StudyResult, gallery: Gallery, format: Format): readonly LinkPicture[] {
  const { study, comparison } = result;
  const split = chooseSplit(result);
  return listPlacedEdges(study.slug, comparison).map(({ edge, path }) => {
    const row = presentEdge(edge, comparison, format);
    const folder = path.slice(1, -1);
    const [title, outcome] = [
      capitalise(row.called ?? row.names),
      capitalise(format.say(outcomeIds[edge.outcome])),
    ];
    return pictureEdge({ folder, title, studyTitle: study.title, outcome, row, split }, gallery, format);
  });
}

interface Subject {
  readonly result: StudyResult;
  readonly edge: ComparedEdge;
  readonly index: number;
  readonly place: PlaceEdge;
  readonly split: Split;
  readonly namesakes: Namesakes;
}

/** Studies with an edge of these two names, by the names, in the order of the front page. */
type Namesakes = ReadonlyMap<string, ReadonlySet<StudyResult>>;

function presentEdgePage(subject: Subject, gallery: Gallery, format: Format): EdgePage {
  const { result, edge, index, place, split } = subject;
  const { study, comparison } = result;
  const { say } = format;
  const path = place(edge);
  const link = linkFrom(path);
  const studyPath = formatStudyPath(study.slug);
  const row = presentEdge(edge, comparison, format);
  const move = listMoves(comparison, format)[index];
  const isUnchanged = isSameEdge(row);
  const sentence =
    move === undefined ? "" : isUnchanged ? describeUnchanged(move, format) : describeEdge(move, format);
  const title = capitalise(row.called ?? row.names);
  const folder = path.slice(1, -1);
  const outcome = isUnchanged ? say("edgeSaid.unchanged") : capitalise(say(outcomeIds[edge.outcome]));
  const numbers = [presentContrast(row, format), ...presentNumbers(edge, result, format)].map((number) =>
    isUnchanged ? { ...number, isShared: true as const } : number,
  );
  const refer = presentRefer(result, gallery, format, {
    title,
    path,
    kind: "edge",
  });
  const picture = pictureEdge(
    { folder, title, studyTitle: formatTitle(study, format), outcome, row, split },
    gallery,
    format,
  );
  return {
    folder,
    slug: study.slug,
    frame: frameEdge(subject, gallery, format, { title, sentence, picture }),
    picture,
    title,
    renamed: row.renamed,
    study: { title: formatTitle(study, format), address: link(studyPath), table: link(`${studyPath}#edges`) },
    status: presentStatus(study.status, format),
    outcome: { word: outcome, sentence },
    row,
    near: sayNear(row, format),
    ruler: presentChosen([{ result, edge }], link, format),
    isUnchanged,
    place: presentPlace(subject, link, path, isUnchanged, format),
    numbers,
    visions: presentVisions(edge, row, comparison, format).map((vision) => ({
      ...vision,
      details: presentDetails(result, edge, link, `seen-${vision.vision}-`),
    })),
    measuredHow: describeViewing(comparison, format),
    elsewhere: findElsewhere(subject, link, format),
    siblings: listSiblings(subject, link, format),
    links: {
      contrast: link("/method/#contrast"),
      beside: link("/method/#beside"),
      vision: link("/method/#vision"),
      nearLine: link("/method/#near-the-line"),
    },
    refer,
    said: presentSaidOf(result, edge, format),
    answer: presentAnswer(
      gallery.answer,
      {
        isFiled: true,
        title: study.title,
        edge: title,
        stamped: refer.stamped,
        numbers: [`${outcome}. ${sentence}`, ...listNumbers(numbers, format)],
      },
      format,
    ),
  };
}

function frameEdge(
  { result: { study }, edge, place }: Subject,
  gallery: Gallery,
  format: Format,
  { title, sentence, picture }: Pick<EdgePage, "title" | "picture"> & { readonly sentence: string },
): Frame {
  const description = `${format.say("edgepage.description", { outcome: format.say(outcomeIds[edge.outcome]) })} ${sentence}`;
  const studyUrl = formatCanonical(gallery.address, formatStudyPath(study.slug));
  const head = {
    path: place(edge),
    title: format.say("picture.within", { title, study: formatTitle(study, format) }),
    description,
    picture: { path: `/${picture.file}`, alt: describePicture(picture, format) },
    isArticle: true,
    record: recordEdge(study, gallery, title, description, studyUrl, format),
  };
  return presentFrame({ ...head, section: "studies" }, gallery, format);
}

function listSiblings(subject: Subject, link: Linker, format: Format): readonly Sibling[] {
  const { result, edge } = subject;
  return listPlacedEdges(result.study.slug, result.comparison).map(({ edge: other, path }) => ({
    names: presentEdge(other, result.comparison, format).called ?? formatNames(other.names[0], format),
    outcome: format.say(outcomeIds[other.outcome]),
    address: link(path),
    isHere: other === edge,
    details: presentDetails(result, other, link),
  }));
}

function presentPlace(
  { result, edge }: Subject,
  link: Linker,
  path: string,
  isUnchanged: boolean,
  format: Format,
): EdgePage["place"] {
  const { say } = format;
  const crop = findPlace(result, edge);
  if (crop === undefined) return undefined;
  const { before, after } = presentEdge(edge, result.comparison, format);
  const plate = (label: string, file: string, side: 0 | 1): EdgePlate => ({
    label,
    contrast: [before, after][side]?.contrast,
    note: side === 0 ? undefined : say("study.unofficial"),
    src: link(`${path}${file}`),
    alt: say("edgepage.placeAlt", {
      label: side === 0 ? label : say("edgepage.unofficial"),
      one: edge.names[side][0],
      other: edge.names[side][1],
    }),
    width: 900,
    height: 600,
    fit: "wide",
  });
  const ground = link(`${formatStudyPath(result.study.slug)}original.svg`);
  return {
    locator: presentLocator(result, edge, crop, ground, format),
    crops: isUnchanged
      ? [plate(say("summary.both"), cropFiles.original, 0)]
      : [
          plate(say("plate.original"), cropFiles.original, 0),
          plate(say("plate.redesign"), cropFiles.redesign, 1),
        ],
  };
}

/** Whether both colours of an edge are what they were. */
function isSameEdge({ before, after }: EdgeRow): boolean {
  return before !== undefined && before.hexes.join() === after.hexes.join();
}

/** What stands beside contrast, and how long the edge is. */
function presentNumbers(
  edge: ComparedEdge,
  { comparison }: StudyResult,
  format: Format,
): readonly SummaryRow[] {
  const [before, after] = [comparison.before, comparison.after].map((measure) =>
    findMeasured(measure.edges, edge),
  );
  const both = (say: (measured: MeasuredEdge) => string, otherwise: string) =>
    [before, after].map((measured) => (measured === undefined ? otherwise : say(measured)));
  const pair = (name: string, say: (measured: MeasuredEdge) => string): SummaryRow => {
    const [was = none, is = none] = both(say, none);
    return { name, before: was, after: is };
  };
  const [partBefore = "", partAfter = ""] = both((measured) => sayPart(measured, format), "");
  return [
    ...edgeMetrics.flatMap((metric) => {
      const { page } = wordsOf(metric);
      const value = (measured: MeasuredEdge) => measured[metric.id as keyof MeasuredEdge];
      const name = metricIds[metric.id];
      const means = metricMeansIds[metric.id];
      return name === undefined || page === undefined
        ? []
        : [
            {
              ...pair(format.say(name), (measured) => page(value(measured), format)),
              ...(means && { means: format.say(means) }),
            },
          ];
    }),
    {
      ...pair(format.say("mark.length"), ({ length }) =>
        format.say("length.heights", { length: roundLength(length) }),
      ),
      ...(comparison.before.focus.source !== "none" && { of: [partBefore, partAfter] as const }),
      isShared: true,
    },
  ];
}

/** How much of an edge lies on the outline of what has to be seen. */
function sayPart({ length, focusLength }: MeasuredEdge, { say }: Format): string {
  if (focusLength === 0) return say("length.offFocus");
  if (focusLength === length) return say("length.onFocus");
  return say("length.partOnFocus", { part: roundLength(focusLength) });
}

/** The one number of an edge, its grade under it. */
function presentContrast({ before, after }: EdgeRow, { say }: Format): SummaryRow {
  return {
    name: say("mark.contrast"),
    before: before?.contrast ?? none,
    after: after.contrast,
    of: [sayGrade(before), sayGrade(after)],
  };
}

function sayGrade(reading: Reading | undefined): string {
  if (reading === undefined) return "";
  const { grade, near } = reading;
  return near === undefined ? grade : `${grade} (${near})`;
}

/** `The grade of the redesign is near the line`. */
function sayNear({ before, after }: EdgeRow, { say }: Format): string | undefined {
  const isNear = [before?.near, after.near].map((near) => near !== undefined);
  if (isNear[0] && isNear[1]) return say("edgepage.bothNear");
  if (!isNear[0] && !isNear[1]) return undefined;
  return say(isNear[0] ? "edgepage.originalNear" : "edgepage.redesignNear");
}

/** `Contrast: 84 % strong → 27 % weak` */
function listNumbers(numbers: readonly SummaryRow[], { say }: Format): readonly string[] {
  return numbers.map(({ name, of, ...values }) => {
    const [before = "", after = ""] = [values.before, values.after].map((value, at) =>
      [value, of?.[at]].filter(Boolean).join(" "),
    );
    return say("move.row", { name, before, after });
  });
}

/** Finds the first studies with each pair of names, one more than a page shows: its own may be among them. */
export function indexNames(results: readonly StudyResult[]): Namesakes {
  const found = new Map<string, Set<StudyResult>>();
  for (const result of results)
    for (const edge of result.comparison.edges) {
      const key = nameKey(edge, result.comparison);
      const known = found.get(key);
      if (known === undefined) found.set(key, new Set([result]));
      else if (known.size <= mostElsewhere) known.add(result);
    }
  return found;
}

/** Edges of the other studies whose original has the same two names, in the order of the front page; the first few. */
function findElsewhere(
  { result, edge, namesakes }: Subject,
  link: Linker,
  format: Format,
): EdgePage["elsewhere"] {
  const asked = nameKey(edge, result.comparison);
  const found = [...(namesakes.get(asked) ?? [])]
    .filter((other) => other !== result)
    .slice(0, mostElsewhere)
    .flatMap((other) => {
      const { study, comparison } = other;
      const place = placeEdges(study.slug, comparison);
      return comparison.edges
        .filter((one) => nameKey(one, comparison) === asked)
        .map((one) => ({ result: other, edge: one, called: study.title, address: link(place(one)) }));
    });
  return found.length === 0 ? undefined : presentChosen(found, link, format);
}

function nameKey({ a, b, names: [before] }: ComparedEdge, comparison: Comparison): string {
  const nameOf = (id: string, index: number): string =>
    findPaint(comparison.before, id)?.part?.of ?? before[index] ?? id;
  return [a, b].map(nameOf).sort().join(" / ");
}
