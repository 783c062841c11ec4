// Floor 9. A picture as plain data: what lies where, from the lowest to the highest, in pixels. A child process paints it.
import type { Crop } from "../../views/edge/linepiece.ts";

/** A drawing that we wrote, or a part of it, or as it looks from so many flag heights away. */
export interface Source {
  readonly drawing: string;
  /** Height and width of the whole drawing. */
  readonly proportions: readonly [number, number];
  readonly crop?: Crop;
  readonly distance?: number;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Text whose upper edge is at `y`; it is made smaller until it is no higher than `most`. `x` is where it is anchored. */
export interface SceneText {
  readonly kind: "text";
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly pixels: number;
  readonly family: "serif" | "sans";
  readonly isQuiet?: boolean;
  readonly anchor: "start" | "middle" | "end";
  readonly width: number;
  readonly most: number;
}

export type SceneItem =
  /** SVG text of our own: no drawing of an author, no letters. */
  | { readonly kind: "shape"; readonly svg: string }
  | ({ readonly kind: "flag"; readonly source: Source; readonly opacity?: number } & Box)
  /** Per pale: the original on the side that lines begin on. */
  | ({ readonly kind: "split"; readonly sources: readonly [Source, Source] } & Box)
  | SceneText;

export interface PictureScene {
  readonly width: number;
  readonly height: number;
  readonly direction: "ltr" | "rtl";
  readonly items: readonly SceneItem[];
}

/** A box as SVG text, filled. */
export function drawBox({ x, y, width, height }: Box, fill: string): SceneItem {
  return {
    kind: "shape",
    svg: `<rect x="${Math.round(x)}" y="${Math.round(y)}" width="${Math.round(width)}" height="${Math.round(height)}" fill="${fill}"/>`,
  };
}

/** The largest whole box in `room` of a source with its proportions, in the middle. */
export function fitSource({ crop, proportions: [high, wide] }: Source, room: Box): Box {
  const [height, width] = crop === undefined ? [high, wide] : [crop.height, crop.width];
  const scale = Math.min(room.width / width, room.height / height);
  const size = {
    width: Math.max(1, Math.round(width * scale)),
    height: Math.max(1, Math.round(height * scale)),
  };
  return {
    x: Math.round(room.x + (room.width - size.width) / 2),
    y: Math.round(room.y + (room.height - size.height) / 2),
    ...size,
  };
}
