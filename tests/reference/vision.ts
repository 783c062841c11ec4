// Colours as others say that colour-blind eyes see them.

/**
 * Original, protan and deutan by Machado 2009 at severity 1, tritan by Brettel 1997: in linear light, clamped, rounded.
 * Source: worked out, apart from this project's code, from the matrices of Machado, Oliveira, Fernandes 2009 and from
 * the figures for Brettel, Viénot, Mollon 1997 in libDaltonLens.
 */
export const seenRows: readonly (readonly [`#${string}`, protan: string, deutan: string, tritan: string])[] =
  [
    ["#ff0000", "#6d5f00", "#a39000", "#ff004e"],
    ["#00ff00", "#ffe500", "#efd63a", "#79e9ff"],
    ["#0000ff", "#0059ff", "#003dfb", "#006288"],
    ["#c8102e", "#544c2d", "#7e7127", "#c90440"],
  ];

/**
 * The matrices of full severity, row by row.
 * Source: Machado, Oliveira, Fernandes 2009, doi:10.1109/TVCG.2009.113, matrices at
 * https://www.inf.ufrgs.br/~oliveira/pubs_files/CVD_Simulation/CVD_Simulation.html
 */
export const machadoRows: readonly (readonly [
  "protan" | "deutan",
  rows: readonly (readonly [number, number, number])[],
])[] = [
  [
    "protan",
    [
      [0.152286, 1.052583, -0.204868],
      [0.114503, 0.786281, 0.099216],
      [-0.003882, -0.048116, 1.051998],
    ],
  ],
  [
    "deutan",
    [
      [0.367322, 0.860646, -0.227968],
      [0.280085, 0.672501, 0.047413],
      [-0.01182, 0.04294, 0.968881],
    ],
  ],
];
