// Floor 5. A charge that runs into a stripe or field of its own paint: no region of its own, so it is not found, or only
// what of it has other paints. The drawing knows better: what it lays over everything that reaches the border.
import type { Problem } from "../problem/problem.ts";
import { quoteText } from "../problem/quote.ts";
import type { LabelMap } from "../regions/label.ts";
import { findPieces, type Pieces, spreadPieces } from "../regions/piece.ts";
import type { Instance } from "../svg/instance.ts";
import { findPaints, type PaintUse } from "../svg/paint.ts";
import { renderMap } from "./map.ts";
import type { OpenedDrawing } from "./open.ts";
import type { Study } from "./study.ts";

/** Shares of the flag between which a figure may be a charge; the upper is that of found ones (our own judgement). */
const [smallest, largest] = [0.004, 0.35] as const;
/** Least shares of a figure's outline along which it runs into its own paint, and shows (our own judgement). */
const [leastRun, leastShown] = [0.05, 0.25] as const;
/** A figure of which this share is the focus is found. */
const isFound = 0.5;
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
  const paints = own.map(({ key }) => ({ key, declared: null, flat: true, selected: false }));
  const layers = await renderMap({ ...findPaints(resolved), uses: own, paints }, view, viewing.render);
  const uppermost = findUppermostAtBorder(layers);
  const mask = Uint8Array.from(layers.labels, (label) => (label > uppermost ? 1 : 0));
  const found = findPieces(mask, view.width, view.height);
  const seen = compareOutlines(found, view, ground.focus.mask);
  const piece = found.pieces.findIndex(({ pixels }, index) => {
    const share = pixels / ground.scene.areas.flagPixels;
    const { outline, run, focus } = seen[index] ?? { outline: 0, run: 0, focus: 0 };
    const shown = outline - run;
    return (
      share >= smallest &&
      share <= largest &&
      focus < isFound * pixels &&
      run >= leastRun * outline &&
      shown >= leastShown * outline
    );
  });
  return piece < 0 ? undefined : nameFigure(uses, layers, spreadPieces(found), piece);
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
    if (isNear || [at - 1, at + 1, at - width, at + width].some((next) => labels[next] === 0)) most = label;
  }
  return most;
}

interface Outline {
  /** Pixel sides between the piece and what is around it, and those of them with one paint on both sides. */
  outline: number;
  run: number;
  /** Pixels of the piece that are the focus. */
  focus: number;
}

function compareOutlines(
  found: Pieces,
  { width, labels }: LabelMap,
  focus: Uint8Array | undefined,
): readonly Outline[] {
  const pieceOf = spreadPieces(found);
  const outlines = found.pieces.map(() => ({ outline: 0, run: 0, focus: 0 }));
  for (let at = 0; at < pieceOf.length; at += 1) {
    const own = outlines[pieceOf[at] as number];
    if (own === undefined) continue;
    own.focus += focus?.[at] ?? 0;
    for (const next of [at - 1, at + 1, at - width, at + width]) {
      if (pieceOf[next] !== -1) continue;
      own.outline += 1;
      if (labels[next] === labels[at]) own.run += 1;
    }
  }
  return outlines;
}

/** The smallest group with an id that holds all shapes of a piece, else the shape that shows most of it. */
function nameFigure(
  uses: readonly PaintUse[],
  { labels }: LabelMap,
  pieceOf: Int32Array,
  piece: number,
): Instance | undefined {
  const pixels = new Map<Instance, number>();
  for (let at = 0; at < pieceOf.length; at += 1) {
    const instance = uses[(labels[at] as number) - 1]?.instance;
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

/** Returns the warning that the focus of `study` has to be named, with what to type. */
export function askForFocus(charge: Instance, study: Study): Problem {
  const { element } = charge;
  const id = element.attributes["id"];
  const which = id === undefined ? `A ${element.name}` : `The charge ${quoteText(`#${id}`)}`;
  const own = id === undefined ? "\nBetter, give the charge an id in the drawing and select that." : "";
  return {
    rule: "study/focus-hidden",
    severity: "warning",
    file: study.file,
    ...study.places.get("original"),
    reason: `${which} runs into an area of its own colour, so it is not found as the focus, or only parts of it are.`,
    hint: `Name it: ${proposeFocus(charge)}${own}`,
  };
}
