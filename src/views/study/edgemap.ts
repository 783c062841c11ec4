// Floor 8. The edge map as finished geometry: every traced line of a flag, drawn by the grade of its edge.

import type { EdgeLine, StudyResult } from "../../analysis/result.ts";
import { type Grade, gradeOf } from "../../colour/contrast.ts";
import type { ComparedEdge, Comparison } from "../../measure/comparison.ts";
import type { Format } from "../../words/format.ts";
import { gradeIds } from "../../words/gradeword.ts";
import { capitalise, formatNames } from "../../words/phrase.ts";
import type { Linker } from "../address.ts";
import type { Crop } from "../edge/linepiece.ts";
import { traceOutline } from "./focusoutline.ts";

/** How a line is drawn. */
type DrawnGrade = Grade | "merged";

const drawnGrades: readonly DrawnGrade[] = ["strong", "clear", "soft", "weak", "merged"];

export interface EdgeMapView {
  readonly title: string;
  readonly gradeNames: Readonly<Record<DrawnGrade, string>>;
  readonly width: number;
  readonly height: number;
  readonly fit: "wide" | "tall";
  /** The lines of each edge, once, those of the focus apart; the panels refer to them by id. */
  readonly shapes: readonly LineShape[];
  /** What the band along lines of the focus says; undefined without a focus. */
  readonly focus: string | undefined;
  /** The outline of the focus, along which the band lies, on its outer side; empty without a focus. */
  readonly band: string;
  readonly panels: readonly [EdgeMapPanel, EdgeMapPanel];
}

/** Where on the flag an edge is: its lines, and the frame of the part that is shown large. */
export interface LocatorView extends Pick<EdgeMapView, "width" | "height" | "fit"> {
  /** What it shows, in a sentence. */
  readonly description: string;
  readonly ground: string;
  readonly path: string;
  readonly frame: Crop;
}

export interface LineShape {
  readonly id: string;
  readonly path: string;
  readonly isFocus: boolean;
}

export interface EdgeMapPanel {
  readonly heading: string;
  readonly description: string;
  /** The drawing in grey, that lies under the lines. */
  readonly ground: string;
  readonly lines: readonly {
    readonly id: string;
    readonly grade: DrawnGrade;
    readonly isFocus: boolean;
  }[];
}

/** Units of a flag's height in the map. */
const heightUnits = 1000;
/** Points over which lines are thinned, so that a page stays light. */
const mostPoints = 2400;
/** A mat is three units wide and two high. */
const squarest = 1.3;

/** The edge map of a study; the drawings under it are those of the grey preview, `ground` says where they are. */
export function presentEdgeMap(result: StudyResult, link: Linker, path: string, format: Format): EdgeMapView {
  const { comparison } = result;
  const shapes = drawEdges(result.edgeLines, comparison);
  const panel = (heading: string, name: string, side: 0 | 1): EdgeMapPanel => ({
    heading,
    description: describePanel(comparison.edges, side, format),
    ground: link(`${path}seen-grey-${name}.svg`),
    lines: comparison.edges.flatMap((edge) => {
      const grade = gradeAt(edge, side);
      if (grade === undefined) return [];
      return shapes
        .filter(({ id }) => id === idOf(edge) || id === focusIdOf(edge))
        .map(({ id, isFocus }) => ({ id, grade, isFocus }));
    }),
  });
  return {
    title: format.say("map.title"),
    gradeNames: Object.fromEntries(
      drawnGrades.map((grade) => [grade, sayGrade(grade, format)]),
    ) as EdgeMapView["gradeNames"],
    ...sizeOf(comparison.before.proportions),
    shapes,
    focus: sayMarked(comparison, format),
    band: drawBand(result.edgeLines),
    panels: [
      panel(format.say("plate.original"), "original", 0),
      panel(format.say("plate.redesign"), "redesign", 1),
    ],
  };
}

/** The locator of one edge, `frame` in flag heights; `ground` is the drawing under it. */
export function presentLocator(
  { edgeLines, comparison }: StudyResult,
  edge: Pick<ComparedEdge, "a" | "b" | "names">,
  frame: Crop,
  ground: string,
  { say }: Format,
): LocatorView {
  const own = thin(edgeLines).filter((line) => idOf(line) === idOf(edge));
  const scale = (heights: number) => Math.round(heights * heightUnits);
  return {
    ...sizeOf(comparison.before.proportions),
    description: say("edgepage.locatorSays", { one: edge.names[0][0], other: edge.names[0][1] }),
    ground,
    path: own.map(({ points }) => drawPath(points)).join(""),
    frame: { x: scale(frame.x), y: scale(frame.y), width: scale(frame.width), height: scale(frame.height) },
  };
}

function sizeOf([height, width]: readonly [number, number]): Pick<EdgeMapView, "width" | "height" | "fit"> {
  return {
    width: Math.round((heightUnits * width) / height),
    height: heightUnits,
    fit: width / height >= squarest ? "wide" : "tall",
  };
}

function gradeAt(edge: ComparedEdge, side: 0 | 1): DrawnGrade | undefined {
  if (side === 1 && edge.outcome === "merged") return "merged";
  const contrast = edge.contrast[side];
  return contrast === null ? undefined : gradeOf(contrast);
}

function idOf({ a, b }: { readonly a: string; readonly b: string }): string {
  return `line-${a}-${b}`;
}

function focusIdOf(edge: { readonly a: string; readonly b: string }): string {
  return `${idOf(edge)}-focus`;
}

/** Where the focus lies along most of it. */
function isOfFocus({ focusShare }: EdgeLine): boolean {
  return focusShare > 0.5;
}

function drawEdges(lines: readonly EdgeLine[], comparison: Comparison): readonly LineShape[] {
  const thinned = thin(lines);
  return comparison.edges.flatMap((edge) => {
    const own = thinned.filter((line) => idOf(line) === idOf(edge));
    const draw = (id: string, isFocus: boolean): readonly LineShape[] => {
      const path = own
        .filter((line) => isOfFocus(line) === isFocus)
        .map(({ points }) => drawPath(points))
        .join("");
      return path === "" ? [] : [{ id, path, isFocus }];
    };
    return [...draw(idOf(edge), false), ...draw(focusIdOf(edge), true)];
  });
}

function drawBand(lines: readonly EdgeLine[]): string {
  const own = thin(lines).filter(isOfFocus);
  return traceOutline(own.map(({ points }) => points))
    .map((ring) => `${drawPath(ring)}z`)
    .join("");
}

function sayGrade(grade: DrawnGrade, { say }: Format): string {
  return say(grade === "merged" ? "outcome.merged" : gradeIds[grade]);
}

function sayMarked({ before }: Comparison, format: Format): string | undefined {
  const { source, share } = before.focus;
  if (source === "none") return undefined;
  return format.say(source === "found" ? "map.focusFound" : "map.focusNamed", { share: format.share(share) });
}

/** Leaves out points that lie near the one before, more and more, until few enough are left. Ends stay. */
function thin(lines: readonly EdgeLine[]): readonly EdgeLine[] {
  let thinned = lines;
  for (let least = 0.002; countPoints(thinned) > mostPoints && least < 0.05; least *= 2) {
    thinned = lines.map((line) => ({ ...line, points: dropNear(line.points, least) }));
  }
  return thinned;
}

function countPoints(lines: readonly EdgeLine[]): number {
  return lines.reduce((sum, line) => sum + line.points.length / 2, 0);
}

function dropNear(points: readonly number[], least: number): readonly number[] {
  const kept: number[] = [];
  for (let at = 0; at < points.length; at += 2) {
    const [x, y] = [points[at] ?? 0, points[at + 1] ?? 0];
    const [lastX, lastY] = [kept.at(-2), kept.at(-1)];
    const isEnd = at === 0 || at >= points.length - 2;
    if (isEnd || lastX === undefined || lastY === undefined || Math.hypot(x - lastX, y - lastY) >= least)
      kept.push(x, y);
  }
  return kept;
}

/** Whole units, each point from the one before: short text. */
function drawPath(points: readonly number[]): string {
  const units = points.map((value) => Math.round(value * heightUnits));
  let path = `M${units[0] ?? 0} ${units[1] ?? 0}`;
  if (units.length > 2) path += "l";
  for (let at = 2; at < units.length; at += 2) {
    const [dx, dy] = [(units[at] ?? 0) - (units[at - 2] ?? 0), (units[at + 1] ?? 0) - (units[at - 1] ?? 0)];
    path += `${at === 2 || dx < 0 ? "" : " "}${dx}${dy < 0 ? "" : " "}${dy}`;
  }
  return path;
}

/** `Strong, 58% of all edge length: white / black. Weak, 42%: dark blue / black.` */
function describePanel(edges: readonly ComparedEdge[], side: 0 | 1, format: Format): string {
  const drawn = edges.filter((edge) => gradeAt(edge, side) !== undefined);
  const all = drawn.reduce((sum, { length }) => sum + length, 0);
  const groups = drawnGrades.flatMap((grade) => {
    const own = drawn.filter((edge) => gradeAt(edge, side) === grade);
    if (own.length === 0) return [];
    const share = format.share(own.reduce((sum, { length }) => sum + length, 0) / all);
    return [{ grade, share, names: format.list(own.map(({ names }) => formatNames(names[side], format))) }];
  });
  if (groups.length === 0) return format.say("map.none");
  const said = groups.map(({ grade, share, names }, index) =>
    format.say(index === 0 ? "map.firstGrade" : "map.grade", {
      grade: capitalise(sayGrade(grade, format)),
      share,
      names,
    }),
  );
  return said.join(" ");
}
