// Floor 6. A charge that runs into a stripe or field of its own paint: no region of its own, so it is not found, or only
// what of it has other paints. The drawing knows better: what it lays over everything that reaches the border.

import { keyed } from "../../content/study/colourword.ts";
import { type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { findRegions } from "../../regions/component.ts";
import { maskRegions } from "../../regions/focus/charges.ts";
import { findPieces, type Piece, type Pieces, spreadPieces } from "../../regions/focus/piece.ts";
import type { LabelMap } from "../../regions/labelmap.ts";
import { findRuns } from "../../regions/runs.ts";
import type { Instance } from "../../svg/instance.ts";
import { findPaints, type Paint, type PaintUse } from "../../svg/paint.ts";
import { type Label, type List, listed, type PaintIndex, paintOf } from "../../svg/paintnumber.ts";
import { renderMap } from "./measuregeometry.ts";
import type { OpenedDrawing } from "./opendrawing.ts";

/** Shares of the flag between which a figure may be a charge; the upper is that of found ones (our own judgement). */
const [smallest, largest] = [0.004, 0.35] as const;
/** Shares of a figure's outline between which its own paint lies along it: less is a touch, more a paint that nobody sees. */
const [leastAlong, mostAlong] = [0.05, 0.65] as const;
/** A figure of which more than this share is the field is not found; this share or more has the paint it runs into. */
const [isFound, leastMissed] = [0.5, 0.2] as const;
/** The border in picture heights: what comes so near to it reaches it. */
const borderWidth = 1 / 240;
/** Most uses of paint that one label map tells apart. */
const mostUses = 60_000;

/**
 * Where the focus is not named, looks for a figure laid over all that reaches the border, which partly shows against
 * another paint, partly runs into its own, and of which less than half was found. Returns the shape that has most of it,
 * or the group with an id that holds all of it; undefined where there is none. One rendering, in which each shape has its
 * own label.
 */
export async function findHiddenCharge({
  resolved,
  viewing,
  inspection,
}: OpenedDrawing): Promise<Instance | undefined> {
  const { view, ground } = inspection;
  const { uses } = ground.scene.shapes;
  if (ground.focus.source === "named" || uses.length < 2 || uses.length > mostUses) return undefined;
  const own = uses.map((use, index) => ({ ...use, key: String(index) }));
  const paints = listed<PaintIndex, Paint>(
    own.map(({ key }) => ({ key, declared: null, flat: true, selected: false })),
  );
  const layers = await renderMap({ ...findPaints(resolved), uses: own, paints }, view, viewing.render);
  const uppermost = findUppermostAtBorder(layers);
  const mask = new Uint8Array(layers.labels.length);
  for (let at = 0; at < mask.length; at += 1) if ((layers.labels[at] as number) > uppermost) mask[at] = 1;
  const found = findPieces(mask, view.width, view.height);
  const figures = countFigures(found, view, findField(view, ground.focus.mask));
  const piece = found.pieces.findIndex((one, index) => {
    const share = one.pixels / ground.scene.areas.flagPixels;
    return share >= smallest && share <= largest && runsIntoItsPaint(one, figures[index] as Figure);
  });
  return piece < 0 ? undefined : nameFigure(listed(uses), layers, spreadPieces(found), piece);
}

/** The highest label that reaches the border of the picture or a transparent part: all below it is ground. */
function findUppermostAtBorder({ width, height, labels }: LabelMap): number {
  const edge = Math.ceil(borderWidth * height);
  let most = 0;
  for (let at = 0; at < labels.length; at += 1) {
    const label = labels[at] as number;
    if (label <= most) continue;
    const x = at % width;
    const y = (at - x) / width;
    const isNear = Math.min(x, y, width - 1 - x, height - 1 - y) < edge;
    if (
      isNear ||
      labels[at - 1] === 0 ||
      labels[at + 1] === 0 ||
      labels[at - width] === 0 ||
      labels[at + width] === 0
    )
      most = label;
  }
  return most;
}

/** A mask of what is not the focus and hangs together with the border or a transparent part. */
function findField(view: LabelMap, focus: Uint8Array | undefined): Uint8Array {
  const map = findRegions(findRuns(view));
  const outer = [...map.regions.keys()].filter((index) => map.regions[index]?.touchesOutside === true);
  return maskRegions(map, new Set(outer)).map((isOuter, at) => (focus?.[at] === 1 ? 0 : isOuter));
}

/** What is counted of one piece. */
interface Figure {
  /** Pixel sides that it shares with what is around it, in all and by the paint around. */
  sides: number;
  readonly around: Map<Label, number>;
  /** Its pixels that belong to the field, in all and by paint. */
  missed: number;
  readonly paints: Map<Label, number>;
}

function countFigures(found: Pieces, { width, labels }: LabelMap, field: Uint8Array): readonly Figure[] {
  const pieceOf = spreadPieces(found);
  const figures = found.pieces.map(
    (): Figure => ({ sides: 0, around: new Map(), missed: 0, paints: new Map() }),
  );
  const count = (paints: Map<Label, number>, at: number): void => {
    const label = labels[at] as Label;
    paints.set(label, (paints.get(label) ?? 0) + 1);
  };
  const steps = [-1, 1, -width, width];
  for (let at = 0; at < pieceOf.length; at += 1) {
    if (pieceOf[at] === -1) continue;
    const figure = figures[pieceOf[at] as number] as Figure;
    if (field[at] === 1) {
      figure.missed += 1;
      count(figure.paints, at);
    }
    for (const step of steps) {
      if (pieceOf[at + step] !== -1) continue;
      figure.sides += 1;
      count(figure.around, at + step);
    }
  }
  return figures;
}

/** Whether much of a figure runs into the field, because it has a paint that lies along a part of its outline, and along no more. */
function runsIntoItsPaint({ pixels }: Piece, { sides, around, missed, paints }: Figure): boolean {
  if (missed <= isFound * pixels) return false;
  return [...paints].some(([label, missing]) => {
    const along = (around.get(label) ?? 0) / sides;
    return missing >= leastMissed * pixels && along >= leastAlong && along <= mostAlong;
  });
}

/** The smallest group with an id that holds all shapes of a piece, else the shape that shows most of it. */
function nameFigure(
  uses: List<PaintIndex, PaintUse>,
  { labels }: LabelMap,
  pieceOf: Int32Array,
  piece: number,
): Instance | undefined {
  const pixels = new Map<Instance, number>();
  for (let at = 0; at < pieceOf.length; at += 1) {
    const instance = uses[paintOf(labels[at] as Label)]?.instance;
    if (pieceOf[at] === piece && instance !== undefined)
      pixels.set(instance, (pixels.get(instance) ?? 0) + 1);
  }
  const [largestShape] = [...pixels].sort(([, a], [, b]) => b - a)[0] ?? [];
  for (let group = largestShape; group?.parent; group = group.parent) {
    const held = new Set(listWithin(group));
    if (group.element.attributes["id"] !== undefined && [...pixels.keys()].every((shape) => held.has(shape)))
      return group;
  }
  return largestShape;
}

function listWithin(instance: Instance): readonly Instance[] {
  return [instance, ...instance.children.flatMap(listWithin)];
}

/** Returns what names a charge in a study: `focus: { select: "#anchor" }`, or its colour where it has no id. */
export function proposeFocus({ element, fill }: Instance): string {
  const id = element.attributes["id"];
  const colour = fill.kind === "colour" ? fill.hex : "#7a1020";
  return id === undefined ? `focus: { colour: "${colour}" }` : `focus: { select: "#${id}" }`;
}

/** Returns the warning that the focus has to be named, with what to type. */
export function askForFocus(charge: Instance): Problem {
  const { element } = charge;
  const id = element.attributes["id"];
  const which = id === undefined ? `A ${element.name}` : `The charge ${quoteText(`#${id}`)}`;
  const own = id === undefined ? "\nBetter, give the charge an id in the drawing and select that." : "";
  return report(
    "study/focus-hidden",
    keyed("original"),
    {
      reason: `${which} runs into an area of its own colour, so it is not found as the focus, or only parts of it are.`,
      hint: `Name it: ${proposeFocus(charge)}${own}`,
    },
    "warning",
  );
}
