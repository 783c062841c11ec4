// Floor 1. A colour as another eye sees it: the three colour-vision deficiencies at full strength, and grey print.

import { measureLuminance } from "./cloth.ts";
import type { LinearRgb } from "./colour.ts";
import { type Matrix, machadoMatrices } from "./machado.ts";
import { checkLinear, checkRange } from "./range.ts";

export type Vision = "protan" | "deutan" | "tritan" | "grey";

export const visions: readonly Vision[] = ["protan", "deutan", "tritan", "grey"];

/** Brettel's two half-planes of the colours a tritan eye tells apart, and the normal of the plane between them. */
interface HalfPlanes {
  readonly first: Matrix;
  readonly second: Matrix;
  readonly normal: readonly [number, number, number];
}

/**
 * Source: H. Brettel, F. Viénot, J. D. Mollon, “Computerized simulation of color appearance for dichromats”, Journal of
 * the Optical Society of America A 14(10), 1997, 2647–2655; worked out for linear-light sRGB and the cone fundamentals
 * of Smith and Pokorny 1975 in libDaltonLens (public domain).
 */
const brettelTritan: HalfPlanes = {
  first: [
    [1.01277, 0.13548, -0.14826],
    [-0.01243, 0.86812, 0.14431],
    [0.07589, 0.805, 0.11911],
  ],
  second: [
    [0.93678, 0.18979, -0.12657],
    [0.06154, 0.81526, 0.1232],
    [-0.37562, 1.12767, 0.24796],
  ],
  normal: [0.03901, -0.02788, -0.01113],
};

/**
 * How `vision` sees a linear-light sRGB colour, in linear light and clamped to 0 to 1.
 *
 * Protan and deutan by Machado 2009 at severity 1; tritan by Brettel 1997, because Machado's tritan is a shift that does
 * not reach tritanopia; grey has the luminance of the colour. Greys stay as they are.
 *
 * Throws RangeError where a component is not 0 to 1. Example: `#ff0000`, protan → `#6d5f00`.
 *
 * Source: the notes of {@link simulateMachado} and of the table of Brettel's figures; grey: WCAG relative luminance.
 */
export function simulate(linear: LinearRgb, vision: Vision): LinearRgb {
  switch (vision) {
    case "protan":
    case "deutan":
      return simulateMachado(linear, vision, 1);
    case "tritan":
      return simulateBrettel(linear, brettelTritan);
    case "grey": {
      const luminance = measureLuminance(linear);
      return { linearR: luminance, linearG: luminance, linearB: luminance };
    }
  }
}

/**
 * How an eye with a deficiency of `severity01`, 0 (none) to 1 (full), sees a linear-light sRGB colour, in linear light
 * and clamped to 0 to 1. Between the published severities, steps of 0.1, the two nearest matrices are interpolated.
 *
 * Throws RangeError where a component or the severity is not 0 to 1.
 *
 * Source: Machado, Oliveira, Fernandes 2009, doi:10.1109/TVCG.2009.113. The model works on linear light.
 */
export function simulateMachado(
  linear: LinearRgb,
  deficiency: "protan" | "deutan" | "tritan",
  severity01: number,
): LinearRgb {
  const step = checkRange("severity", severity01, 0, 1) * 10;
  const below = Math.min(9, Math.floor(step));
  const matrices = machadoMatrices[deficiency];
  const lower = matrices[below];
  const upper = matrices[below + 1];
  if (lower === undefined || upper === undefined) {
    throw new RangeError(`no published matrix of ${deficiency} for severity ${severity01}`);
  }
  const from = applyMatrix(lower, linear);
  const to = applyMatrix(upper, linear);
  // The matrix is linear in its entries: mixing the two results is mixing the two matrices.
  const share = step - below;
  return clampLinear({
    linearR: from.linearR + share * (to.linearR - from.linearR),
    linearG: from.linearG + share * (to.linearG - from.linearG),
    linearB: from.linearB + share * (to.linearB - from.linearB),
  });
}

function simulateBrettel(linear: LinearRgb, planes: HalfPlanes): LinearRgb {
  const [normalR, normalG, normalB] = planes.normal;
  const side = normalR * linear.linearR + normalG * linear.linearG + normalB * linear.linearB;
  return clampLinear(applyMatrix(side >= 0 ? planes.first : planes.second, linear));
}

/** Not clamped: the result of a matrix may leave sRGB. */
function applyMatrix(matrix: Matrix, linear: LinearRgb): LinearRgb {
  const { linearR, linearG, linearB } = checkLinear(linear);
  const [r, g, b] = matrix;
  return {
    linearR: r[0] * linearR + r[1] * linearG + r[2] * linearB,
    linearG: g[0] * linearR + g[1] * linearG + g[2] * linearB,
    linearB: b[0] * linearR + b[1] * linearG + b[2] * linearB,
  };
}

function clampLinear(linear: LinearRgb): LinearRgb {
  return {
    linearR: Math.min(1, Math.max(0, linear.linearR)),
    linearG: Math.min(1, Math.max(0, linear.linearG)),
    linearB: Math.min(1, Math.max(0, linear.linearB)),
  };
}
