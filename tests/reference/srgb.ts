// sRGB worked out a second time, straight from the standards' text, to check conversions against.

type Triple = readonly [number, number, number];

/**
 * Encoded to linear, 0 to 1. The threshold can be set to what WCAG printed before May 2021.
 * Source: WCAG 2.2, definition of relative luminance.
 */
export function decode(encoded: number, threshold = 0.04045): number {
  return encoded <= threshold ? encoded / 12.92 : ((encoded + 0.055) / 1.055) ** 2.4;
}

/** Linear to encoded, 0 to 1. Source: IEC 61966-2-1, as printed in CSS Color Module Level 4, section 18. */
export function encode(linear: number): number {
  return linear > 0.0031308 ? 1.055 * linear ** (1 / 2.4) - 0.055 : 12.92 * linear;
}

/**
 * CIE XYZ under D65 (Y 0 to 1) of linear sRGB.
 * Source: CSS Color Module Level 4, sample code conversions.js: the matrix as fractions.
 */
export function xyzOf([r, g, b]: Triple): Triple {
  return [
    (506752 / 1228815) * r + (87881 / 245763) * g + (12673 / 70218) * b,
    (87098 / 409605) * r + (175762 / 245763) * g + (12673 / 175545) * b,
    (7918 / 409605) * r + (87881 / 737289) * g + (1001167 / 1053270) * b,
  ];
}

/** CIELAB under D65 of XYZ. Source: CIE 15:2004; white x 0.3127, y 0.3290 as in CSS Color Module Level 4. */
export function labFromXyz([x, y, z]: Triple): Triple {
  const f = (t: number): number => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116);
  const fx = f(x / (0.3127 / 0.329));
  const fy = f(y);
  const fz = f(z / ((1 - 0.3127 - 0.329) / 0.329));
  return [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)];
}

/** OKLab of XYZ under D65. Source: B. Ottosson, “A perceptual color space for image processing”, 2020: M1 and M2. */
export function oklabFromXyz([x, y, z]: Triple): Triple {
  const l = Math.cbrt(0.8189330101 * x + 0.3618667424 * y - 0.1288597137 * z);
  const m = Math.cbrt(0.0329845436 * x + 0.9293118715 * y + 0.0361456387 * z);
  const s = Math.cbrt(0.0482003018 * x + 0.2643662691 * y + 0.633851707 * z);
  return [
    0.2104542553 * l + 0.793617785 * m - 0.0040720468 * s,
    1.9779984951 * l - 2.428592205 * m + 0.4505937099 * s,
    0.0259040371 * l + 0.7827717662 * m - 0.808675766 * s,
  ];
}

/** XYZ and the OKLab it must give, to three decimals. Source: Ottosson 2020, table of test values. */
export const oklabRows: readonly (readonly [xyz: Triple, oklab: Triple])[] = [
  [
    [0.95, 1, 1.089],
    [1, 0, 0],
  ],
  [
    [1, 0, 0],
    [0.45, 1.236, -0.019],
  ],
  [
    [0, 1, 0],
    [0.922, -0.671, 0.263],
  ],
  [
    [0, 0, 1],
    [0.153, -1.415, -0.449],
  ],
];
