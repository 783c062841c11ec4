// The proof that reading, writing and recolouring are faithful to one real drawing: what is to hold of it, measured in
// two renderers. Nothing is asserted here; the figures come back as data.
import { readFileSync } from "node:fs";
import type { Hex } from "../../src/colour/colour.ts";
import { toRgb } from "../../src/colour/parse.ts";
import { type LabelMap, readLabels } from "../../src/regions/label.ts";
import { measuringSize } from "../../src/regions/raster.ts";
import { readDrawing } from "../../src/svg/gate.ts";
import { type ResolvedDrawing, resolveDrawing } from "../../src/svg/instance.ts";
import { codeOf, writeLabels } from "../../src/svg/label.ts";
import { findPaints, type Paint, type PaintedShapes } from "../../src/svg/paint.ts";
import { recolour } from "../../src/svg/recolour.ts";
import type { Drawing } from "../../src/svg/tree.ts";
import { writeDrawing, writeSized } from "../../src/svg/write.ts";
import type { CollectionFile } from "./files.ts";
import { differenceAt, draw, type Picture, type Renderer, sizeText } from "./picture.ts";
import { findEdges, findFilled, findHolding, growTwo, type PixelSet, shrinkTwo } from "./region.ts";
import { evenOut } from "./spelling.ts";

/** Pixels of one renderer that break a rule. */
export type Count = Readonly<Record<Renderer, number>>;

/** What changing one flat opaque paint did. */
export interface PaintProof {
  readonly colour: Hex;
  readonly next: Hex;
  /** Share of the picture. */
  readonly share: number;
  /** Pixels that changed further than 2 px from the paint; those near a gradient or pattern are counted apart. */
  readonly stray: Count;
  readonly strayAtEdge: Count;
  readonly strayInServer: Count;
  readonly faint: boolean;
  /** Pixels 2 px or more inside the paint that do not show the new colour; those that did not show the old one apart. */
  readonly unpainted: Count;
  readonly covered: Count;
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
  const large = shapes.paints.filter((paint) => shareOf(map, shapes.paints, (other) => other === paint) >= leastShare);
  const paints: PaintProof[] = [];
  for (const paint of large) {
    if (!paint.flat || paint.declared === null) continue;
    paints.push(await provePaint(resolved, shapes, paint.declared, { map, fine, edges, before, heightPixels }));
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
  readonly edges: PixelSet;
  readonly fine: LabelMap;
  readonly before: Readonly<Record<Renderer, Picture>>;
  readonly heightPixels: number;
}

async function provePaint(
  resolved: ResolvedDrawing,
  shapes: PaintedShapes,
  colour: Hex,
  setting: Setting,
): Promise<PaintProof> {
  const { map, fine, before, heightPixels } = setting;
  const next = chooseNew(writeDrawing(resolved.drawing), shapes.paints, colour);
  const redesign = change(resolved, colour, next);
  const after = await drawAll(writeSized(redesign, widthPixels, heightPixels));
  const own = labelsOf(shapes.paints, (paint) => paint.declared === colour);
  const flat = labelsOf(shapes.paints, (paint) => paint.declared === colour && paint.flat);
  const near = growTwo(findHolding(map, fine, own), map.width);
  const nearServer = growTwo(findHolding(map, fine, labelsOf(shapes.paints, (paint) => paint.declared === null)), map.width);
  const inside = shrinkTwo(findFilled(map, fine, flat), map.width);
  const stray = each((renderer) => countStray(before[renderer], after[renderer], near));
  const strayAnywhere = each((renderer) => countStray(before[renderer], after[renderer], near, nearServer));
  const strayInside = each((renderer) => countStray(before[renderer], after[renderer], near, nearServer.map((n,i)=>n|(setting.edges[i] as number))));
  const unpainted = each((renderer) => countUnpainted(before[renderer], after[renderer], inside, colour, next));
  return {
    colour,
    next,
    share: shareOf(map, shapes.paints, (paint) => paint.declared === colour && paint.flat),
    stray: strayInside,
    strayAtEdge: each((renderer) => strayAnywhere[renderer] - strayInside[renderer]),
    faint: resolved.instances.some((i)=>i.shown&&(["fill","stroke"] as const).some((p)=>{const s=i[p];const o=p==="fill"?i.fillOpacity:i.strokeOpacity;return s.kind==="colour"&&s.hex===colour&&o>0&&o<0.5;})),
    strayInServer: each((renderer) => stray[renderer] - strayAnywhere[renderer]),
    unpainted: each((renderer) => unpainted[renderer].wrong),
    covered: each((renderer) => unpainted[renderer].covered),
    restored: evenOut(writeDrawing(change(resolveDrawing(redesign), next, colour))) === evenOut(writeDrawing(resolved.drawing)),
    settled: writeDrawing(change(resolveDrawing(redesign), colour, next)) === writeDrawing(redesign),
  };
}

function change(resolved: ResolvedDrawing, replace: Hex, next: Hex): Drawing {
  const { value, problems } = recolour(resolved, { replace, with: next });
  if (value === undefined) throw new Error(`${resolved.drawing.file}: ${problems[0]?.reason}`);
  return value;
}

function countStray(before: Picture, after: Picture, near: PixelSet, alsoNear?: PixelSet): number {
  let count = 0;
  for (let at = 0; at < near.length; at += 1)
    if (near[at] === 0 && alsoNear?.[at] !== 1 && differenceAt(before, after, at) > seen) count += 1;
  return count;
}

function countUnpainted(before: Picture, after: Picture, inside: PixelSet, colour: Hex, next: Hex) {
  let wrong = 0;
  let covered = 0;
  for (let at = 0; at < inside.length; at += 1) {
    if (inside[at] === 0 || shows(after, at, next)) continue;
    if (shows(before, at, colour)) wrong += 1;
    else covered += 1;
  }
  return { wrong, covered };
}

function shows({ rgba }: Picture, pixel: number, hex: Hex): boolean {
  const { r, g, b } = toRgb(hex);
  return [r * 255, g * 255, b * 255, 255].every((value, channel) => Math.abs((rgba[4 * pixel + channel] as number) - value) <= seen);
}

const candidates: readonly Hex[] = ["#ff00fe", "#00fefd", "#7cff01", "#fe7b00", "#5a00ff", "#014d40", "#fefe7f", "#7f0140"];

/** Returns a colour that is new to the drawing and as far from `colour` and from all its paints as may be, in sRGB bytes. */
function chooseNew(text: string, paints: readonly Paint[], colour: Hex): Hex {
  const distance = (a: Hex, b: Hex): number => {
    const [one, other] = [toRgb(a), toRgb(b)];
    return Math.max(Math.abs(one.r - other.r), Math.abs(one.g - other.g), Math.abs(one.b - other.b));
  };
  const all = [colour, ...paints.flatMap((paint) => (paint.declared === null ? [] : [paint.declared]))];
  const fresh = candidates.filter((candidate) => !text.toLowerCase().includes(candidate));
  const ranked = fresh.map((hex) => ({ hex, far: Math.min(...all.map((other) => distance(hex, other))) }));
  const best = ranked.sort((a, b) => b.far - a.far)[0];
  if (best === undefined) throw new Error("no colour is new to the drawing");
  return best.hex;
}

function labelsOf(paints: readonly Paint[], test: (paint: Paint) => boolean): ReadonlySet<number> {
  return new Set(paints.flatMap((paint, index) => (test(paint) ? [index + 1] : [])));
}

function shareOf(map: LabelMap, paints: readonly Paint[], test: (paint: Paint) => boolean): number {
  const labels = labelsOf(paints, test);
  return map.labels.reduce((count, label) => count + (labels.has(label) ? 1 : 0), 0) / map.labels.length;
}

async function label(shapes: PaintedShapes, width: number, height: number, renderer: Renderer): Promise<LabelMap> {
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

async function countChanged(raw: string, written: string, heightPixels: number): Promise<Count> {
  const before = await drawAll(sizeText(raw, widthPixels, heightPixels));
  const after = await drawAll(sizeText(written, widthPixels, heightPixels));
  return each((renderer) => {
    let count = 0;
    for (let at = 0; at < widthPixels * heightPixels; at += 1) if (differenceAt(before[renderer], after[renderer], at) > 0) count += 1;
    return count;
  });
}

async function drawAll(svg: string): Promise<Readonly<Record<Renderer, Picture>>> {
  return { librsvg: await draw("librsvg", svg), resvg: await draw("resvg", svg) };
}

function each<T>(compute: (renderer: Renderer) => T): Readonly<Record<Renderer, T>> {
  return { librsvg: compute("librsvg"), resvg: compute("resvg") };
}
