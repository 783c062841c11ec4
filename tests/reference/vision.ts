// Colours as others say that colour-blind eyes see them.

/**
 * Original, protan and deutan by Machado 2009 at severity 1, tritan by Brettel 1997: in linear light, clamped, rounded.
 * Source: worked out, apart from this project's code, from the matrices of Machado, Oliveira, Fernandes 2009 and from
 * the figures for Brettel, Viénot, Mollon 1997 in libDaltonLens.
 */
export const seenRows: readonly (readonly [
  `#${string}`,
  protan: string,
  deutan: string,
  tritanBrettel: string,
  tritanMachado: string,
])[] = [
  ["#ff0000", "#6d5f00", "#a39000", "#ff004e", "#ff000f"],
  ["#00ff00", "#ffe500", "#efd63a", "#79e9ff", "#00f7d9"],
  ["#0000ff", "#0059ff", "#003dfb", "#006288", "#006b96"],
  ["#c8102e", "#544c2d", "#7e7127", "#c90440", "#dd0020"],
];

/**
 * Deficiency, severity, encoded sRGB before and after (0 to 1).
 * Source: colorspacious, gold_values.py (linear light, matrices interpolated); made by that library, not measured.
 */
export const fractionalRows: readonly (readonly [
  "protan" | "deutan",
  severity01: number,
  before: readonly [number, number, number],
  after: readonly [number, number, number],
])[] = [
  ["deutan", 0.5, [0.1, 0.2, 0.3], [0.12440528, 0.19103024, 0.29911687]],
  ["deutan", 0.5, [0.9, 0.5, 0.3], [0.76726301, 0.59528358, 0.29263454]],
  ["protan", 0.95, [0.1, 0.2, 0.3], [0.15588987, 0.2038791, 0.30416046]],
  ["protan", 0.95, [0.9, 0.5, 0.3], [0.62151883, 0.55237436, 0.27997229]],
];

/**
 * The three matrices of full severity, and one of an in-between step, row by row.
 * Source: Machado, Oliveira, Fernandes 2009, doi:10.1109/TVCG.2009.113, matrices at
 * https://www.inf.ufrgs.br/~oliveira/pubs_files/CVD_Simulation/CVD_Simulation.html
 */
export const machadoRows: readonly (readonly [
  "protan" | "deutan" | "tritan",
  step: number,
  rows: readonly (readonly [number, number, number])[],
])[] = [
  [
    "protan",
    10,
    [
      [0.152286, 1.052583, -0.204868],
      [0.114503, 0.786281, 0.099216],
      [-0.003882, -0.048116, 1.051998],
    ],
  ],
  [
    "deutan",
    10,
    [
      [0.367322, 0.860646, -0.227968],
      [0.280085, 0.672501, 0.047413],
      [-0.01182, 0.04294, 0.968881],
    ],
  ],
  [
    "tritan",
    10,
    [
      [1.255528, -0.076749, -0.178779],
      [-0.078411, 0.930809, 0.147602],
      [0.004733, 0.691367, 0.3039],
    ],
  ],
  [
    "protan",
    1,
    [
      [0.856167, 0.182038, -0.038205],
      [0.029342, 0.955115, 0.015544],
      [-0.00288, -0.001563, 1.004443],
    ],
  ],
];
