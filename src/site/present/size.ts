// Floor 6. Both flags at true size in pixels: flags live as icons too.
import type { Linker } from "../address.ts";

export interface SizeRow {
  readonly label: string;
  readonly pictures: readonly SizedPicture[];
}

/** In CSS pixels. */
export interface SizedPicture {
  readonly src: string;
  readonly alt: string;
  readonly width: number;
  readonly height: number;
}

/** Heights of icons, in lists and in headings. Source: common practice, no standard. */
export const trueSizes = [16, 24, 32, 64, 128] as const;

/** A row for the original and one for the redesign. `proportions` are height and width. */
export function presentSizes(
  [high, wide]: readonly [number, number],
  link: Linker,
  path: string,
): readonly [SizeRow, SizeRow] {
  const row = (label: string, name: string): SizeRow => ({
    label,
    pictures: trueSizes.map((height) => ({
      src: link(`${path}${name}.svg`),
      alt: `${label}, ${height} pixels high`,
      width: Math.max(1, Math.round((height * wide) / high)),
      height,
    })),
  });
  return [row("Original", "original"), row("Redesign", "redesign")];
}
