// Test support. A survey typed by hand: one flag, one without an edge and with an odd name, one file that is broken.
import type { Survey, SurveyedFlag } from "../../src/analysis/survey/surveyflags.ts";
import { makeOption } from "../measure/ranked.ts";

const best = makeOption({
  replace: "#701c2b",
  with: "#e6b436",
  name: "yellow",
  clarity: 98.76543,
  deltaE00: 40,
});

const flag: SurveyedFlag = {
  file: "a.svg",
  clarity: 12.345678,
  clearEdgeShare: 0.25,
  weakestEdge: { a: "p1", b: "p2", names: ["dark blue", "dark red"], contrast: 6.3 },
  changeFirst: [{ id: "p2", hex: "#701c2b", name: "dark red" }],
  bestOption: best,
  focus: { source: "found", clarity: 98.5, lastsTo: 320 },
};
const plain: SurveyedFlag = {
  file: "=b.svg",
  clarity: null,
  clearEdgeShare: null,
  weakestEdge: null,
  changeFirst: null,
  bestOption: null,
  focus: { source: "none", clarity: null, lastsTo: null },
};
const problem = {
  rule: "svg/empty",
  severity: "error",
  file: 'c "d", e.svg',
  reason: "It is empty, it is.",
} as const;
export const survey: Survey = { flags: [flag, plain], failed: [{ file: problem.file, problem }] };
