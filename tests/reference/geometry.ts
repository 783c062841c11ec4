// Flags whose geometry a law or an official sheet fixes: the figures as they are given there, in the law's own units,
// with the shares of the area and the lengths of the inner lines that follow from them in closed form.

/** A pair of colours and how long they meet, in the units of the law. */
export interface LawEdge {
  readonly pair: readonly [string, string];
  readonly length: number;
}

export interface LawFlag {
  readonly flag: string;
  readonly source: string;
  /** In the units of the law. */
  readonly height: number;
  readonly width: number;
  /** What is drawn, back to front: SVG in the units of the law. */
  readonly body: string;
  /** Colour as drawn → fraction of the area. */
  readonly shares: Readonly<Record<string, number>>;
  readonly edges: readonly LawEdge[];
  /** Relative tolerance of lengths: a star's tips fall below a pixel. */
  readonly lengthTolerance: number;
}

const red = "#c8102e";
const white = "#ffffff";
const blue = "#003580";
const yellow = "#ffcd00";

const rect = (x: number, y: number, width: number, height: number, fill: string): string =>
  `<rect x="${x}" y="${y}" width="${width}" height="${height}" fill="${fill}"/>`;
const disc = (cx: number, cy: number, r: number, fill: string): string =>
  `<circle cx="${cx}" cy="${cy}" r="${r}" fill="${fill}"/>`;

/** A five-pointed star of circumradius `r` with one point `turn` degrees from straight up. */
function star(cx: number, cy: number, r: number, turn: number): string {
  // The inner corners of a regular pentagram lie at sin 18° / sin 126° of the circumradius.
  const inner = (r * Math.sin(Math.PI / 10)) / Math.sin((7 * Math.PI) / 10);
  const points = Array.from({ length: 10 }, (_, index) => {
    const angle = ((turn - 90 + 36 * index) * Math.PI) / 180;
    const radius = index % 2 === 0 ? r : inner;
    return `${cx + radius * Math.cos(angle)},${cy + radius * Math.sin(angle)}`;
  });
  return `<polygon points="${points.join(" ")}" fill="${yellow}"/>`;
}

/** Perimeter and area of a pentagram of circumradius 1: 10 sides of length 2 sin 36° / (1 + 1/φ)… in figures. */
const starPerimeter = 7.265425280053609;
const starArea = 1.1225699414489634;

/** The turn that points a small star of the last flag at the middle of the large one, in degrees from straight up. */
const towards = (x: number, y: number): number => (Math.atan2(5 - y, 5 - x) * 180) / Math.PI + 90;

export const lawFlags: readonly LawFlag[] = [
  {
    flag: "Japan",
    source:
      "Act No. 127 of 1999, Appendix 1: height 2/3 of the width, disc 3/5 of the height across, in the middle",
    height: 2,
    width: 3,
    body: rect(0, 0, 3, 2, white) + disc(1.5, 1, 0.6, red),
    // π · 0.6² / 6
    shares: { [red]: 0.1884955592153876, [white]: 0.8115044407846124 },
    edges: [{ pair: [red, white], length: 2 * Math.PI * 0.6 }],
    lengthTolerance: 0.01,
  },
  {
    flag: "Sweden",
    source: "Lag (1982:269) 2 §: 10 by 16; the height 4 + 2 + 4, the width 5 + 2 + 9",
    height: 10,
    width: 16,
    body: rect(0, 0, 16, 10, blue) + rect(0, 4, 16, 2, yellow) + rect(5, 0, 2, 10, yellow),
    // Cross: 16 · 2 + 2 · 10 − 2 · 2 = 48 of 160. Lines: 2 · (5 + 9) + 2 · (4 + 4) = 44.
    shares: { [yellow]: 0.3, [blue]: 0.7 },
    edges: [{ pair: [blue, yellow], length: 44 }],
    lengthTolerance: 0.01,
  },
  {
    flag: "Finland",
    source: "Act 380/1978, 2 §: 11 by 18; the height 4 + 3 + 4, the width 5 + 3 + 10",
    height: 11,
    width: 18,
    body: rect(0, 0, 18, 11, white) + rect(0, 4, 18, 3, blue) + rect(5, 0, 3, 11, blue),
    // 18 · 3 + 3 · 11 − 9 = 78 of 198. Lines: 2 · (5 + 10) + 2 · (4 + 4) = 46.
    shares: { [blue]: 78 / 198, [white]: 120 / 198 },
    edges: [{ pair: [blue, white], length: 46 }],
    lengthTolerance: 0.01,
  },
  {
    flag: "Denmark",
    source: "Forordning of 11 July 1748, §1: cross 1/7 of the height; 3 + 1 + 3 by 3 + 1 + 4½",
    height: 7,
    width: 8.5,
    body: rect(0, 0, 8.5, 7, red) + rect(0, 3, 8.5, 1, white) + rect(3, 0, 1, 7, white),
    // 8.5 + 7 − 1 = 14.5 of 59.5. Lines: 2 · (3 + 4.5) + 2 · (3 + 3) = 27.
    shares: { [white]: 14.5 / 59.5, [red]: 45 / 59.5 },
    edges: [{ pair: [red, white], length: 27 }],
    lengthTolerance: 0.01,
  },
  {
    flag: "Norway",
    source: "Lov om Norges Flag (1898) §1: 16 by 22; 6 + 1 + 2 + 1 + 6 by 6 + 1 + 2 + 1 + 12",
    height: 16,
    width: 22,
    body:
      rect(0, 0, 22, 16, red) +
      rect(0, 6, 22, 4, white) +
      rect(6, 0, 4, 16, white) +
      rect(0, 7, 22, 2, blue) +
      rect(7, 0, 2, 16, blue),
    // Red fields 2 · 6 · (6 + 12) = 216 of 352; blue 44 + 32 − 4 = 72; white the rest.
    // Lines: red 2 · (6 + 12) + 4 · 6 = 60; blue 2 · (7 + 13) + 4 · 7 = 68.
    shares: { [red]: 216 / 352, [blue]: 72 / 352, [white]: 64 / 352 },
    edges: [
      { pair: [red, white], length: 60 },
      { pair: [white, blue], length: 68 },
    ],
    lengthTolerance: 0.01,
  },
  {
    flag: "Iceland",
    source: "Act 34/1944 art. 1: 18 by 25; red cross 1/9 of the height, white edges 1/18; 7 + 1 + 2 + 1 + 7",
    height: 18,
    width: 25,
    body:
      rect(0, 0, 25, 18, blue) +
      rect(0, 7, 25, 4, white) +
      rect(7, 0, 4, 18, white) +
      rect(0, 8, 25, 2, red) +
      rect(8, 0, 2, 18, red),
    // Blue 2 · 7 · (7 + 14) = 294 of 450; red 50 + 36 − 4 = 82. Lines: 2 · (7 + 14) + 4 · 7 = 70; 2 · (8 + 15) + 4 · 8 = 78.
    shares: { [blue]: 294 / 450, [white]: 74 / 450, [red]: 82 / 450 },
    edges: [
      { pair: [blue, white], length: 70 },
      { pair: [white, red], length: 78 },
    ],
    lengthTolerance: 0.01,
  },
  {
    flag: "Switzerland",
    // The rule of the arms was read in the law; 20 : 32 of the annex drawing was read in secondary sources.
    source:
      "SR 232.21 art. 1: arms one sixth longer than wide; Annex 2: cross 20 of 32 (the latter secondary)",
    height: 32,
    width: 32,
    body: rect(0, 0, 32, 32, red) + rect(6, 13, 20, 6, white) + rect(13, 6, 6, 20, white),
    // 2 · 20 · 6 − 36 = 204 of 1024. Lines: 4 ends of 6 and 8 flanks of 7 = 80.
    shares: { [white]: 204 / 1024, [red]: 820 / 1024 },
    edges: [{ pair: [red, white], length: 80 }],
    lengthTolerance: 0.01,
  },
  {
    flag: "Thailand",
    source: "Flag Act B.E. 2522 (1979): 6 by 9; stripes 1 + 1 + 2 + 1 + 1",
    height: 6,
    width: 9,
    body: rect(0, 0, 9, 6, red) + rect(0, 1, 9, 4, white) + rect(0, 2, 9, 2, blue),
    shares: { [red]: 1 / 3, [white]: 1 / 3, [blue]: 1 / 3 },
    edges: [
      { pair: [red, white], length: 18 },
      { pair: [white, blue], length: 18 },
    ],
    lengthTolerance: 0.01,
  },
  {
    flag: "Spain, without arms",
    // The rule of the stripes was read in the law; 2 : 3 was read in secondary sources.
    source: "Constitution of 1978 art. 4.1: yellow twice as wide as each red; 2 by 3 (secondary)",
    height: 2,
    width: 3,
    body: rect(0, 0, 3, 2, red) + rect(0, 0.5, 3, 1, yellow),
    shares: { [red]: 0.5, [yellow]: 0.5 },
    edges: [{ pair: [red, yellow], length: 6 }],
    lengthTolerance: 0.01,
  },
  {
    flag: "Canada, without the leaf",
    source: "Proclamation of 28 January 1965: two by one, in its middle a white square as wide as the flag",
    height: 1,
    width: 2,
    body: rect(0, 0, 2, 1, red) + rect(0.5, 0, 1, 1, white),
    shares: { [red]: 0.5, [white]: 0.5 },
    edges: [{ pair: [red, white], length: 2 }],
    lengthTolerance: 0.01,
  },
  {
    flag: "Laos",
    source: "Lao text of the flag rule: width 2/3 of the length, red half of blue, disc 4/5 of the blue",
    height: 4,
    width: 6,
    body: rect(0, 0, 6, 4, red) + rect(0, 1, 6, 2, blue) + disc(3, 2, 0.8, white),
    // Disc π · 0.8² = 2.0106 of 24.
    shares: { [red]: 0.5, [white]: (Math.PI * 0.64) / 24, [blue]: 0.5 - (Math.PI * 0.64) / 24 },
    edges: [
      { pair: [red, blue], length: 12 },
      { pair: [blue, white], length: 1.6 * Math.PI },
    ],
    lengthTolerance: 0.01,
  },
  {
    flag: "Czechia",
    source: "Act 3/1993 Coll. §4: 2 by 3, blue wedge from the hoist to half the length",
    height: 2,
    width: 3,
    body: `${rect(0, 0, 3, 1, white)}${rect(0, 1, 3, 1, red)}<polygon points="0,0 1.5,1 0,2" fill="${blue}"/>`,
    // Wedge 1.5 of 6; each side of it √(1.5² + 1²), at 33.690°.
    shares: { [blue]: 0.25, [white]: 0.375, [red]: 0.375 },
    edges: [
      { pair: [blue, white], length: Math.sqrt(3.25) },
      { pair: [blue, red], length: Math.sqrt(3.25) },
      { pair: [white, red], length: 1.5 },
    ],
    lengthTolerance: 0.01,
  },
  {
    flag: "Greenland",
    // The law itself was not seen: the figures come from secondary sources.
    source: "secondary: 12 by 18, disc of radius 4 about (7, 6), colours exchanged across the middle line",
    height: 12,
    width: 18,
    body:
      rect(0, 0, 18, 6, white) +
      rect(0, 6, 18, 6, red) +
      `<path d="M3,6 a4,4 0 0 1 8,0 z" fill="${red}"/><path d="M3,6 a4,4 0 0 0 8,0 z" fill="${white}"/>`,
    // The circle 8π; along the middle line the colours differ everywhere, inside the disc too: 18.
    shares: { [red]: 0.5, [white]: 0.5 },
    edges: [{ pair: [red, white], length: 8 * Math.PI + 18 }],
    lengthTolerance: 0.01,
  },
  {
    flag: "China",
    source:
      "Construction sheet (protocol.gov.hk): 20 by 30; star of radius 3 about (5, 5), four of radius 1 about (10, 2), (12, 4), (12, 7), (10, 9), each with a point towards the middle of the large one",
    height: 20,
    width: 30,
    body:
      rect(0, 0, 30, 20, red) +
      star(5, 5, 3, 0) +
      [
        [10, 2],
        [12, 4],
        [12, 7],
        [10, 9],
      ]
        .map(([x = 0, y = 0]) => star(x, y, 1, towards(x, y)))
        .join(""),
    shares: { [yellow]: (13 * starArea) / 600, [red]: 1 - (13 * starArea) / 600 },
    // 3 + 4 · 1 radii.
    edges: [{ pair: [red, yellow], length: 7 * starPerimeter }],
    lengthTolerance: 0.03,
  },
];

/** The flag as an SVG file in the units of the law. */
export function drawLawFlag({ height, width, body }: LawFlag): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}">${body}</svg>`;
}
