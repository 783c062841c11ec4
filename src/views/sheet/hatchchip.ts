// Floor 8. A colour as a sheet shows it: in colour, and beside that in the lines that stand for it in grey print.
import type { Hex } from "../../colour/colour.ts";
import { type Hatching, type HatchLine, hatchingOf } from "../../colour/hatching.ts";
import type { Swatch } from "../../words/paintname.ts";

/** Lines as SVG path data in a field of {@link chipSize}. */
export interface Sign {
  readonly path: string;
  readonly isToned: boolean;
}

export interface Chip extends Swatch {
  readonly sign: Sign;
}

/** Units of the field, and from one line to the next. */
export const chipSize = { width: 48, height: 30 } as const;
const step = 6;

/** A colour with its lines. */
export function presentChip(hex: Hex, name: string): Chip {
  return { hex, name, sign: drawSign(hatchingOf(hex)) };
}

/** The lines of one hatching; what reaches beyond the field is cut off. */
export function drawSign({ lines, isDotted, isToned }: Hatching): Sign {
  return { path: isDotted ? drawDots() : lines.map(drawLines).join(""), isToned: isToned === true };
}

function drawLines(line: HatchLine): string {
  const { width, height } = chipSize;
  if (line === "vertical") return each(step / 2, width, step, (x) => `M${x} 0V${height}`);
  if (line === "horizontal") return each(step / 2, height, step, (y) => `M0 ${y}H${width}`);
  const [top, bottom] = line === "down" ? [-height, 0] : [0, -height];
  // As far apart as upright lines, across.
  return each(0, width + height, 8, (x) => `M${x + top} 0L${x + bottom} ${height}`);
}

/** A dot is a line of no length with round ends. */
function drawDots(): string {
  return each(step / 2, chipSize.height, step, (y) =>
    each(((y - step / 2) / step) % 2 === 0 ? step / 2 : step, chipSize.width, step, (x) => `M${x} ${y}h0`),
  );
}

function each(from: number, to: number, by: number, draw: (at: number) => string): string {
  let drawn = "";
  for (let at = from; at < to; at += by) drawn += draw(at);
  return drawn;
}
