import { expect, test } from "vitest";
import { describeSurvey, listPartlyTried } from "../../../src/cli/text/surveytext.ts";
import { survey } from "../../analysis/surveyed.ts";

test("a table, everything in it where there is room", () => {
  expect(describeSurvey(survey, { hasColour: false })).toBe(`\
  flag     clarity  weakest  edge                      focus     lasts to  change first  best change                clarity
  a.svg     12.3 %    6.3 %  dark blue / dark red     98.5 %  320 or more  dark red      dark red → yellow #e6b436   98.8 %
  =b.svg  no edges                                 no emblem`);
});

test("the most telling columns where there is little", () => {
  expect(describeSurvey(survey, { hasColour: false, columns: 80 })).toBe(`\
  flag     clarity      focus  best change                clarity
  a.svg     12.3 %     98.5 %  dark red → yellow #e6b436   98.8 %
  =b.svg  no edges  no emblem`);
});

test("a focus that lasts to no step, and all colours to change first", () => {
  const [flag] = survey.flags;
  if (flag === undefined) throw new Error("the survey has a flag");
  const changed = {
    ...flag,
    changeFirst: [...(flag.changeFirst ?? []), { id: "p3", hex: "#ffffff", name: "white" } as const],
    focus: { source: "named", clarity: 14.5, lastsTo: null } as const,
  };
  expect(describeSurvey({ flags: [changed], failed: [] }, { hasColour: false })).toContain(
    "  14.5 %  under 10  dark red or white  dark red → yellow",
  );
});

test("blocks of colour where they show", () => {
  const [, first] = describeSurvey(survey, { hasColour: true }).split("\n");
  // #701c2b is 112, 28, 43; #e6b436 is 230, 180, 54.
  expect(first).toContain("\u001b[48;2;112;28;43m  \u001b[0m \u001b[48;2;230;180;54m  \u001b[0m a.svg");
});

test("a flag of which not every colour was tried is named under the table, and no other", () => {
  const [flag] = survey.flags;
  expect(listPartlyTried(survey)).toEqual([]);
  if (flag === undefined) throw new Error("the survey has a flag");
  const partly = { ...flag, tried: { paints: 24, of: 60 } };
  expect(listPartlyTried({ flags: [flag, partly], failed: [] })).toEqual([
    "  a.svg: of 60 colours only the 24 largest were tried.",
  ]);
});
