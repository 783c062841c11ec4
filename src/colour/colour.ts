// Floor 1. The one way a colour is written between modules: an sRGB hex string.

/** An opaque sRGB colour as `#rrggbb`, lower case. */
export type Hex = `#${string}`;

/** Encoded sRGB components, each 0 to 1. */
export interface Rgb {
  readonly r: number;
  readonly g: number;
  readonly b: number;
}

/** Linear-light sRGB components, each 0 to 1. Never mixed up with {@link Rgb}: the names of the fields differ. */
export interface LinearRgb {
  readonly linearR: number;
  readonly linearG: number;
  readonly linearB: number;
}
