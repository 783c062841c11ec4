// Test support. One gallery with one study, every number typed by hand: no measuring code has touched it.

import type { GalleryResult, StudyResult } from "../../src/analysis/result.ts";
import type { Series } from "../../src/content/series/series.ts";
import type { Gallery, Study } from "../../src/content/study/study.ts";
import type { Comparison } from "../../src/measure/comparison.ts";
import type { Measure, MeasuredColour, MeasuredEdge } from "../../src/measure/measurement.ts";
import { anyFigures } from "../measure/build.ts";

const drawing = (red: string) =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 200"><path fill="#12235c" d="M0 0h300v200H0z"/><path fill="${red}" d="M100 50h100v100H100z"/><path fill="#ffffff" d="M0 180h300v20H0z"/></svg>`;

export const gallery: Gallery = {
  title: "Flags of the Sound",
  description: "Studies of flags around the Sound.",
  address: "https://flags.example/sound",
  language: "en",
  society: "Sound Flag Circle",
  viewingDistance: 40,
  cloth: { black: 5, white: 85 },
  palette: new Map([["straw", "#f4c430"]]),
};

export const study: Study = {
  slug: "a-square",
  file: "content/studies/a-square/study.md",
  title: "A lighter square",
  originalFile: "content/studies/a-square/original.svg",
  originalPath: "/content/studies/a-square/original.svg",
  original: "original.svg",
  change: { replace: "#c8202f", with: "straw" },
  status: "adopted",
  decision: { why: "Adopted, because it can be seen." },
  authors: ["Ines Valcourt", "Tobin Arkwell"],
  date: "2026-04-02",
  tags: ["charge"],
  options: [{ replace: "#c8202f", with: "straw", note: "Too close to the harbour flag." }],
  credit: {
    title: "The square",
    author: "Ines Valcourt",
    source: "https://flags.example/square",
    licence: "CC0-1.0",
  },
  symbolism: "Straw for the harvest.",
  body: "First words.\n",
  bodyLine: 20,
  places: new Map(),
};

const paint = (
  id: string,
  hex: MeasuredColour["hex"],
  name: string,
  share: number,
  reflectance: number,
  tincture: MeasuredColour["tincture"],
): MeasuredColour => ({
  id,
  hex,
  name,
  share,
  reflectance,
  tincture,
  touchesBorder: true,
  vanishes: false,
  uneven: null,
});

const seen = (contrast: number, grade: MeasuredEdge["grade"], grey: number): MeasuredEdge["vision"] => {
  const figures = { contrast, grade, deltaE00: 30 };
  return { protan: figures, deutan: figures, tritan: figures, grey: { deltaE00: grey } };
};

const edge = (
  [a, b]: readonly [string, string],
  names: readonly [string, string],
  length: number,
  contrast: number,
  grade: MeasuredEdge["grade"],
  grey: number,
): MeasuredEdge => ({
  a,
  b,
  names,
  length,
  focusLength: 0,
  ...anyFigures,
  contrast,
  grade,
  nearLine: false,
  contrastRatio: 3,
  deltaE00: 40,
  hueOnly: false,
  tincture: null,
  vision: seen(contrast, grade, grey),
});

const before: Measure = {
  file: "original.svg",
  proportions: [2, 3],
  distance: 0,
  colours: [
    paint("p1", "#12235c", "dark blue", 0.73, 6.5, "colour"),
    paint("p2", "#c8202f", "red", 0.17, 15.8, "colour"),
    paint("p3", "#ffffff", "white", 0.1, 85, "metal"),
  ],
  edges: [
    edge(["p1", "p2"], ["dark blue", "red"], 2, 24.6, "weak", 14),
    edge(["p1", "p3"], ["dark blue", "white"], 1.5, 84.2, "strong", 80),
  ],
  clearEdgeShare: 0.4286,
  clarity: 74.1,
  strength: 66.3,
  weakestEdge: { a: "p1", b: "p2", contrast: 24.6 },
  focus: { source: "none", share: 0, clarity: null, from: [], lastsTo: null },
  warnings: [],
};

const after: Measure = {
  ...before,
  file: "redesign.svg",
  colours: [
    paint("p1", "#12235c", "dark blue", 0.73, 6.5, "colour"),
    paint("p2", "#f4c430", "yellow", 0.17, 50.7, "metal"),
    paint("p3", "#ffffff", "white", 0.1, 85, "metal"),
  ],
  edges: [
    edge(["p1", "p2"], ["dark blue", "yellow"], 2, 67.2, "strong", 55),
    edge(["p1", "p3"], ["dark blue", "white"], 1.5, 84.2, "strong", 80),
  ],
  clearEdgeShare: 1,
  clarity: 100,
  strength: 100,
  weakestEdge: { a: "p1", b: "p2", contrast: 67.2 },
};

export const comparison: Comparison = {
  change: { replace: "#c8202f", with: "straw" },
  before,
  after,
  edges: [
    {
      a: "p1",
      b: "p3",
      names: [
        ["dark blue", "white"],
        ["dark blue", "white"],
      ],
      length: 1.5,
      contrast: [84.2, 84.2],
      outcome: "same",
    },
    {
      a: "p1",
      b: "p2",
      names: [
        ["dark blue", "red"],
        ["dark blue", "yellow"],
      ],
      length: 2,
      contrast: [24.6, 67.2],
      outcome: "gained",
    },
  ],
  clearEdgeShare: [0.4286, 1],
  clarity: [74.1, 100],
  strength: [66.3, 100],
  verdict: "clearer",
  price: [],
};

const drawings = { original: drawing("#c8202f"), redesign: drawing("#f4c430") };
const inGrey = (svg: string) => svg.replace(/#(?:12235c|c8202f|f4c430)/g, "#555555");
const grey = { original: inGrey(drawings.original), redesign: inGrey(drawings.redesign) };

export const studyResult: StudyResult = {
  study,
  change: { replace: "#c8202f", with: "#f4c430" },
  comparison,
  edgeLines: [
    { a: "p1", b: "p2", points: [0.5, 0.25, 1, 0.25, 1, 0.75, 0.5, 0.75, 0.5, 0.25], focusShare: 0 },
    { a: "p1", b: "p3", points: [0, 0.9, 1.5, 0.9], focusShare: 0 },
  ],
  construction: {
    width: 1.5,
    shapes: [
      { kind: "rectangle", hex: "#12235c", sizes: [0, 0, 1.5, 1] },
      { kind: "rectangle", hex: "#f4c430", sizes: [0.5, 0.25, 0.5, 0.5] },
      { kind: "rectangle", hex: "#ffffff", sizes: [0, 0.9, 1.5, 0.1] },
    ],
    left: 0,
  },
  drawings: { ...drawings, seen: { protan: drawings, deutan: drawings, tritan: drawings, grey } },
};

export const galleryResult: GalleryResult = { gallery, studies: [studyResult], problems: [] };

/** The series of this study and of one that a test may add, `second`. */
export const series: Series = {
  slug: "quay",
  file: "series/quay.md",
  title: "From the quay",
  authors: ["Ines Valcourt", "Nobody Here"],
  date: "2026-06-24",
  entries: [{ study: "second" }, { study: study.slug }],
  closing: "Which would you change?",
  body: "Look *twice*.\n\n<b>No</b>\n",
  bodyLine: 8,
  places: [],
};
