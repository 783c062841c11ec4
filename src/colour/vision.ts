// Floor 1. A colour as another eye sees it: the three colour-vision deficiencies at full strength, and grey print.

import culori from "culori/require";
import { measureLuminance } from "./cloth.ts";
import type { LinearRgb } from "./colour.ts";
import { checkLinear } from "./range.ts";

const { filterDeficiencyDeuter, filterDeficiencyProt } = culori;

export type Vision = "protan" | "deutan" | "tritan" | "grey";

export const visions: readonly Vision[] = ["protan", "deutan", "tritan", "grey"];

/**
 * The matrices of severity 1, which culori multiplies with whatever it is given: here with linear light, as the model asks.
 *
 * Source: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, “A Physiologically-based Model for Simulation of Color
 * Vision Deficiency”, IEEE Transactions on Visualization and Computer Graphics 15(6), 2009, 1291–1298,
 * doi:10.1109/TVCG.2009.113.
 */
const machado = { protan: filterDeficiencyProt(1), deutan: filterDeficiencyDeuter(1) };

/** Three rows of three: multiplied with a column of linear red, green, blue. */
type Matrix = readonly [Row, Row, Row];
type Row = readonly [number, number, number];

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
 * Source: the notes of the two figures; grey: WCAG relative luminance.
 */
export function simulate(linear: LinearRgb, vision: Vision): LinearRgb {
  switch (vision) {
    case "protan":
    case "deutan":
      return simulateMachado(linear, vision);
    case "tritan":
      return simulateBrettel(linear, brettelTritan);
    case "grey": {
      const luminance = measureLuminance(linear);
      return { linearR: luminance, linearG: luminance, linearB: luminance };
    }
  }
}

function simulateMachado(linear: LinearRgb, deficiency: keyof typeof machado): LinearRgb {
  const { linearR, linearG, linearB } = checkLinear(linear);
  const { r, g, b } = machado[deficiency]({ mode: "rgb", r: linearR, g: linearG, b: linearB });
  return clampLinear({ linearR: r, linearG: g, linearB: b });
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
