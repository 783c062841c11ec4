// Label maps and pictures drawn by a rule instead of a renderer, so that their geometry is known in closed form.
import type { LabelMap } from "../../src/regions/labelmap.ts";
import type { Raster } from "../../src/regions/raster.ts";

/** A map in which each pixel has the label that `labelAt` gives for its centre. */
export function drawMap(width: number, height: number, labelAt: (x: number, y: number) => number): LabelMap {
  const labels = new Uint16Array(width * height);
  for (let at = 0; at < labels.length; at += 1) {
    labels[at] = labelAt((at % width) + 0.5, Math.floor(at / width) + 0.5);
  }
  return { width, height, labels, exactShare: 1 };
}

/** A map written as rows of digits. */
export function readMap(...rows: readonly string[]): LabelMap {
  const width = rows[0]?.length ?? 0;
  return drawMap(width, rows.length, (x, y) => Number(rows[Math.floor(y)]?.[Math.floor(x)]));
}

/** A picture written as rows of pixels, each `rrggbbaa`. */
export function readPicture(...rows: readonly string[]): Raster {
  const pixels = rows.map((row) => row.split(" "));
  return {
    width: pixels[0]?.length ?? 0,
    height: rows.length,
    rgba: Uint8Array.from(Buffer.from(pixels.flat().join(""), "hex")),
  };
}

/** A picture in which each pixel has the opaque colour (`#rrggbb`) that `colourAt` gives for its column and row. */
export function drawPicture(
  width: number,
  height: number,
  colourAt: (column: number, row: number) => string,
): Raster {
  const pixels = Array.from({ length: width * height }, (_, at) =>
    colourAt(at % width, Math.floor(at / width)).slice(1),
  );
  return { width, height, rgba: Uint8Array.from(Buffer.from(`${pixels.join("ff")}ff`, "hex")) };
}
