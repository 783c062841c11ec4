// The proof that reading, writing and recolouring are faithful to one real drawing: what is to hold of it, measured in
// two renderers. Nothing is asserted here; the figures come back as data.
import { readFileSync } from "node:fs";
import type { Hex } from "../../src/colour/colour.ts";
import { toRgb } from "../../src/colour/colourtext.ts";
import { type LabelMap, readLabels } from "../../src/regions/labelmap.ts";
import { measuringSize } from "../../src/regions/raster.ts";
import { readDrawing } from "../../src/svg/gate/sanitise.ts";
import { type ResolvedDrawing, resolveDrawing } from "../../src/svg/instance.ts";
import { codeOf, writeLabels } from "../../src/svg/labeldrawing.ts";
import { findPaints, type Paint, type PaintedShapes } from "../../src/svg/paint.ts";
import { labelOf } from "../../src/svg/paintnumber.ts";
import { recolour } from "../../src/svg/recolour.ts";
import type { Drawing } from "../../src/svg/tree.ts";
import { writeDrawing, writeSized } from "../../src/svg/writesvg.ts";
import type { CollectionFile } from "./files.ts";
import { differenceAt, draw, type Picture, type Renderer, sizeText } from "./picture.ts";
import { findEdges, findFilled, findHolding, growTwo, type PixelSet, shrinkTwo } from "./region.ts";
import { evenOut } from "./spelling.ts";

/** Pixels of one renderer that break a rule. */
export type Count = Readonly<Record<Renderer, number>>;

/**
 * Pixels that changed further than 2 px from the paint, by what lies there: an edge between other paints (or the border
 * of the picture), where anti-aliasing lets through what is beneath; a translucent paint, a gradient or a pattern; a part
 * of the paint too thin for a sample a quarter of a pixel apart, which a map of 16 × 16 samples shows; or nothing that
 * explains it.
 */
export interface Stray {
  readonly edge: Count;
  readonly blended: Count;
  readonly thin: Count;
  readonly other: Count;
}

/** What changing one flat opaque paint did. */
export interface PaintProof {
  readonly colour: Hex;
  readonly next: Hex;
  /** Share of the picture. */
  readonly share: number;
  readonly stray: Stray;
  /** Pixels 2 px or more inside the paint that do not show the new colour: where something lay over the old, or not. */
  readonly covered: Count;
  readonly unpainted: Count;
  /** Whether changing back gives the text there was, and changing twice the text of changing once. */
  readonly restored: boolean;
  readonly settled: boolean;
}

export interface FileProof {
  readonly name: string;
  /** Pixels that reading and writing changed, at 320 px wide. */
  readonly changed: Count;
  readonly paints: readonly PaintProof[];
  /** Paints of at least 0.4 % that are translucent, gradients or patterns. */
  readonly apart: readonly string[];
  /** Share of the pixels whose label is the same in both renderers, at the measuring size. */
  readonly agreement: number;
}

const widthPixels = 320;
const leastShare = 0.004;
/** Of 255. */
const seen = 8;

/** Measures all of it for one file. Throws where the file is refused. */
export async function proveFile(file: CollectionFile): Promise<FileProof> {
  const bytes = readFileSync(file.path);
  const { value: drawing } = readDrawing(file.name, bytes);
  if (drawing === undefined) throw new Error(`${file.name} was refused`);
  const { width, height } = drawing.viewBox;
  const heightPixels = Math.max(1, Math.round((widthPixels * height) / width));
  const resolved = resolveDrawing(drawing);
  const shapes = findPaints(resolved);
  const map = await label(shapes, widthPixels, heightPixels, "librsvg");
  const fine = await label(shapes, 4 * widthPixels, 4 * heightPixels, "librsvg");
  const edges = findEdges(map, fine);
  const before = await drawAll(writeSized(drawing, widthPixels, heightPixels));
  const large = shapes.paints.filter(
    (paint) => shareOf(map, shapes.paints, (other) => other === paint) >= leastShare,
  );
  const paints: PaintProof[] = [];
  for (const paint of large) {
    if (!paint.flat || paint.declared === null) continue;
    paints.push(
      await provePaint(resolved, shapes, paint.declared, {
        map,
        fine,
        edges,
        before,
        heightPixels,
      }),
    );
  }
  return {
    name: file.name,
    changed: await countChanged(bytes.toString("utf8"), writeDrawing(drawing), heightPixels),
    paints,
    apart: large.filter((paint) => !paint.flat || paint.declared === null).map((paint) => paint.key),
    agreement: await measureAgreement(shapes, drawing),
  };
}

interface Setting {
  readonly map: LabelMap;
  readonly fine: LabelMap;
  readonly edges: PixelSet;
  readonly before: Readonly<Record<Renderer, Picture>>;
  readonly heightPixels: number;
}

async function provePaint(
  resolved: ResolvedDrawing,
  shapes: PaintedShapes,
  colour: Hex,
  setting: Setting,
): Promise<PaintProof> {
  const { map, fine, before } = setting;
  const { paints } = shapes;
  const next = chooseNew(writeDrawing(resolved.drawing), paints, colour);
  const redesign = change(resolved, colour, next);
  const after = await drawAll(writeSized(redesign, widthPixels, setting.heightPixels));
  const near = (test: (paint: Paint) => boolean): PixelSet =>
    growTwo(findHolding(map, fine, labelsOf(paints, test)), map.width);
  const flat = labelsOf(paints, (paint) => paint.declared === colour && paint.flat);
  const inside = shrinkTwo(findFilled(map, fine, flat), map.width);
  const unpainted = each((renderer) =>
    countUnpainted(before[renderer], after[renderer], inside, colour, next),
  );
  const sets = {
    own: near((paint) => paint.declared === colour),
    blended: near((paint) => !paint.flat),
    edges: setting.edges,
  };
  let strays = each((renderer) => countStray(before[renderer], after[renderer], sets));
  if (strays.librsvg.other + strays.resvg.other > 0) {
    const finest = await label(shapes, 16 * widthPixels, 16 * setting.heightPixels, "librsvg");
    const own = labelsOf(paints, (paint) => paint.declared === colour);
    const thin = growTwo(findHolding(map, finest, own), map.width);
    strays = each((renderer) => countStray(before[renderer], after[renderer], { ...sets, thin }));
  }
  return {
    colour,
    next,
    share: shareOf(map, paints, (paint) => paint.declared === colour && paint.flat),
    stray: {
      edge: each((renderer) => strays[renderer].edge),
      blended: each((renderer) => strays[renderer].blended),
      thin: each((renderer) => strays[renderer].thin),
      other: each((renderer) => strays[renderer].other),
    },
    covered: each((renderer) => unpainted[renderer].covered),
    unpainted: each((renderer) => unpainted[renderer].wrong),
    restored:
      evenOut(writeDrawing(change(resolveDrawing(redesign), next, colour))) ===
      evenOut(writeDrawing(resolved.drawing)),
    settled: writeDrawing(change(resolveDrawing(redesign), colour, next)) === writeDrawing(redesign),
  };
}

function change(resolved: ResolvedDrawing, replace: Hex, next: Hex): Drawing {
  return recolour(resolved, { replace, with: next });
}

interface StraySets {
  readonly own: PixelSet;
  readonly blended: PixelSet;
  readonly edges: PixelSet;
  readonly thin?: PixelSet;
}

function countStray(
  before: Picture,
  after: Picture,
  sets: StraySets,
): { readonly [cause in keyof Stray]: number } {
  const count = { edge: 0, blended: 0, thin: 0, other: 0 };
  for (let at = 0; at < sets.own.length; at += 1) {
    if (sets.own[at] === 1 || differenceAt(before, after, at) <= seen) continue;
    if (sets.edges[at] === 1) count.edge += 1;
    else if (sets.blended[at] === 1) count.blended += 1;
    else if (sets.thin?.[at] === 1) count.thin += 1;
    else count.other += 1;
  }
  return count;
}

/** `covered`: the pixel did not show exactly the old colour either, so something lies over the paint. */
function countUnpainted(before: Picture, after: Picture, inside: PixelSet, colour: Hex, next: Hex) {
  let wrong = 0;
  let covered = 0;
  const [old, fresh] = [bytesOf(colour), bytesOf(next)];
  for (let at = 0; at < inside.length; at += 1) {
    if (inside[at] === 0 || shows(after, at, fresh, seen)) continue;
    if (shows(before, at, old, 0)) wrong += 1;
    else covered += 1;
  }
  return { wrong, covered };
}

/** Red, green, blue and opacity from 0 to 255. */
function bytesOf(hex: Hex): readonly number[] {
  const { r, g, b } = toRgb(hex);
  return [r, g, b, 1].map((value) => Math.round(255 * value));
}

function shows({ rgba }: Picture, pixel: number, bytes: readonly number[], within: number): boolean {
  return bytes.every((byte, channel) => Math.abs((rgba[4 * pixel + channel] as number) - byte) <= within);
}

const candidates: readonly Hex[] = [
  "#ff00fe",
  "#00fefd",
  "#7cff01",
  "#fe7b00",
  "#5a00ff",
  "#014d40",
  "#fefe7f",
  "#7f0140",
];

/** Returns a colour that is new to the drawing and as far from `colour` and from all its paints as may be, in sRGB bytes. */
function chooseNew(text: string, paints: PaintedShapes["paints"], colour: Hex): Hex {
  const distance = (a: Hex, b: Hex): number => {
    const [one, other] = [toRgb(a), toRgb(b)];
    return Math.max(Math.abs(one.r - other.r), Math.abs(one.g - other.g), Math.abs(one.b - other.b));
  };
  const all = [colour, ...paints.flatMap((paint) => (paint.declared === null ? [] : [paint.declared]))];
  const fresh = candidates.filter((candidate) => !text.toLowerCase().includes(candidate));
  const ranked = fresh.map((hex) => ({
    hex,
    far: Math.min(...all.map((other) => distance(hex, other))),
  }));
  const best = ranked.sort((a, b) => b.far - a.far)[0];
  if (best === undefined) throw new Error("no colour is new to the drawing");
  return best.hex;
}

function labelsOf(paints: PaintedShapes["paints"], test: (paint: Paint) => boolean): ReadonlySet<number> {
  return new Set(paints.flatMap((paint, at) => (test(paint) ? [labelOf(at)] : [])));
}

function shareOf(map: LabelMap, paints: PaintedShapes["paints"], test: (paint: Paint) => boolean): number {
  const labels = labelsOf(paints, test);
  return map.labels.reduce((count, label) => count + (labels.has(label) ? 1 : 0), 0) / map.labels.length;
}

async function label(
  shapes: PaintedShapes,
  width: number,
  height: number,
  renderer: Renderer,
): Promise<LabelMap> {
  const picture = await draw(renderer, writeLabels(shapes, width, height));
  return readLabels(
    picture,
    shapes.paints.map((_, index) => codeOf(index)),
  );
}

async function measureAgreement(shapes: PaintedShapes, drawing: Drawing): Promise<number> {
  const size = measuringSize(drawing.viewBox.width, drawing.viewBox.height);
  const one = await label(shapes, size.width, size.height, "librsvg");
  const other = await label(shapes, size.width, size.height, "resvg");
  let same = 0;
  for (let at = 0; at < one.labels.length; at += 1) if (one.labels[at] === other.labels[at]) same += 1;
  return same / one.labels.length;
}

/** A point is 4/3 px (CSS Values 4, section 6.2), as in a browser and in resvg; librsvg takes 72 pixels to the inch. */
function evenPoints(svg: string): string {
  return svg.replace(/="([\d.]+)pt"/g, (_, points: string) => `="${(Number(points) * 4) / 3}"`);
}

async function countChanged(raw: string, written: string, heightPixels: number): Promise<Count> {
  const before = await drawAll(sizeText(evenPoints(raw), widthPixels, heightPixels));
  const after = await drawAll(sizeText(written, widthPixels, heightPixels));
  return each((renderer) => {
    let count = 0;
    for (let at = 0; at < widthPixels * heightPixels; at += 1)
      if (differenceAt(before[renderer], after[renderer], at) > 0) count += 1;
    return count;
  });
}

async function drawAll(svg: string): Promise<Readonly<Record<Renderer, Picture>>> {
  return {
    librsvg: await draw("librsvg", svg),
    resvg: await draw("resvg", svg),
  };
}

function each<T>(compute: (renderer: Renderer) => T): Readonly<Record<Renderer, T>> {
  return { librsvg: compute("librsvg"), resvg: compute("resvg") };
}
