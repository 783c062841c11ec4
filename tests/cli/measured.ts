// Test support. A measured drawing typed by hand: three colours, one edge, a focus.
import type { Measure } from "../../src/measure/measurement.ts";
import { anyFigures } from "../measure/build.ts";

const vision = { contrast: 10, grade: "weak", deltaE00: 30 } as const;
const colour = {
  tincture: "colour",
  share: 0.5,
  touchesBorder: true,
  reflectance: 10,
  vanishes: false,
  uneven: null,
} as const;

export const measure: Measure = {
  file: "a.svg",
  proportions: [1, 1.618],
  distance: 320,
  colours: [
    { ...colour, id: "p1", hex: "#800000", name: "dark red" },
    {
      ...colour,
      id: "p2",
      hex: "#008000",
      name: "green",
      vanishes: true,
      uneven: { lightest: "#009000", darkest: "#007000" },
    },
    { ...colour, id: "p3", hex: "#777777", name: "grey", tincture: "unclassed", share: 0 },
  ],
  edges: [
    {
      a: "p1",
      b: "p2",
      names: ["dark red", "green"],
      length: 1.234,
      focusLength: 0.5,
      ...anyFigures,
      contrast: 12.34,
      grade: "weak",
      nearLine: true,
      contrastRatio: 1.2,
      deltaE00: 60,
      hueOnly: true,
      tincture: "both colours",
      vision: { protan: vision, deutan: vision, tritan: vision, grey: { deltaE00: 5 } },
    },
  ],
  clearEdgeShare: 0,
  clarity: 27.4,
  strength: 20.6,
  weakestEdge: { a: "p1", b: "p2", contrast: 12.34 },
  focus: {
    source: "named",
    share: 0.1,
    clarity: 27.4,
    from: [
      { distance: 10, left: 1, clarity: 27.4, outlineClear: 0 },
      { distance: 20, left: 0.9999, clarity: 27.4, outlineClear: 0 },
      { distance: 40, left: 0.95, clarity: 27.4, outlineClear: 0 },
      { distance: 80, left: 0.6, clarity: null, outlineClear: null },
      { distance: 160, left: 0.1, clarity: 30, outlineClear: 0 },
      { distance: 320, left: 0, clarity: null, outlineClear: null },
    ],
    lastsTo: 320,
  },
  warnings: [{ about: "nearLimit", names: ["green"] }],
};
