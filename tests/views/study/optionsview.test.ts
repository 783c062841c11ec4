// Other single changes of a study, from typed rankings: what the section says, colour by colour, and which files it needs.
import { describe, expect, test } from "vitest";
import type { StudyResult } from "../../../src/analysis/result.ts";
import type { RankedOption } from "../../../src/measure/options/rank.ts";
import { linkFrom } from "../../../src/views/address.ts";
import {
  listTriedDrawings,
  presentOptions,
  presentOptionsLine,
} from "../../../src/views/study/optionsview.ts";
import { createFormat } from "../../../src/words/format.ts";
import { makeOption } from "../../measure/ranked.ts";
import { matrix, noted, ranked } from "../../publish/ranked.ts";
import { studyResult as result } from "../../publish/sample.ts";

const format = createFormat("en");

const option = (more: Partial<RankedOption>): RankedOption =>
  makeOption({ id: "p2", replace: "#c8202f", ...more });

const shade = { isClear: false, least: null, lighter: null, darker: null, demands: [] };
const shades = [
  { id: "p2", hex: "#c8202f", name: "red", ...shade },
  { id: "p1", hex: "#12235c", name: "dark blue", ...shade },
] as const;

/** The sample flag with something to see: the square. */
const withFocus = (study: StudyResult): StudyResult => {
  const { before } = study.comparison;
  const focus = { ...before.focus, source: "found" as const };
  return { ...study, comparison: { ...study.comparison, before: { ...before, focus } } };
};

const view = (study: StudyResult) => {
  const shown = presentOptions(study, linkFrom("/studies/a-square/"), format);
  if (shown === undefined) throw new Error("no options");
  return shown;
};

describe("presentOptions", () => {
  test("is left out where nothing was ranked, and where there is no edge", () => {
    expect(presentOptions(result, linkFrom("/studies/a-square/"), format)).toBeUndefined();
    expect(
      presentOptions(ranked({}, { clarity: null }), linkFrom("/studies/a-square/"), format),
    ).toBeUndefined();
  });

  test("says the colour to change first and where the study stands", () => {
    const best = option({ with: "#ffffff", name: "white", share: 0.17 });
    const { first, standing } = view(ranked({}, { options: [best], shades }));
    expect(first).toBe(
      "Change red first (17% of the flag): with white in its place clarity rises from 74% to 99.6%.",
    );
    expect(standing).toBe("This study: 2 of 58 changes of one colour are clearer.");
  });

  test("each colour has its best with its equals, and both marks before and after", () => {
    const best = option({ with: "#ffffff", name: "white", clarity: 99.6, focusClarity: 100, share: 0.17 });
    const options = [
      best,
      option({ with: "#ffee00", name: "yellow" }),
      option({ with: "#444444", name: "grey", place: 3, placeInColour: 3 }),
    ];
    expect(view(withFocus(ranked({ matrix }, { options, shades }))).colours).toEqual([
      {
        id: "p2",
        hex: "#c8202f",
        name: "red",
        share: "17%",
        best: {
          hex: "#ffffff",
          name: "white",
          cell: "#change-c8202f-ffffff",
          short: undefined,
          equals: "yellow does as well",
          clarity: ["74%", "99.6%"],
          focus: ["55%", "100%"],
          worse: [],
        },
      },
    ]);
  });

  test.each([
    [74.4, "No change helps; as clear as today:"],
    [73.4, "No change helps; nearest:"],
    [75, undefined],
  ])("of a best that comes from 74.1 to %d: %s", (clarity, short) => {
    const { colours } = view(ranked({}, { options: [option({ clarity })], shades }));
    expect(colours[0]?.best?.short).toBe(short);
  });

  test("without a focus there is no focus clarity, and without a matrix no cell", () => {
    const [colour] = view(ranked({}, { options: [option({})], shades })).colours;
    expect(colour?.best).toMatchObject({ focus: undefined, cell: undefined });
  });

  test("a colour of which no change has a place comes last, once", () => {
    const blue = { id: "p1", replace: "#12235c", mergedOutline: 0.5 } as const;
    const vanishing = [option({ ...blue }), option({ ...blue, with: "#c8202f", name: "red" })];
    const { colours, unranked } = view(ranked({}, { options: [option({})], vanishing, shades }));
    expect(colours.map(({ name, best }) => [name, best?.name])).toEqual([
      ["red", "white"],
      ["dark blue", undefined],
    ]);
    expect(unranked).toBe(
      "Not ranked: dark blue to white and dark blue to red; each would merge a third of a charge’s outline or more.",
    );
  });

  test("the author's others have an anchor, both marks, the verdict with its price, and the note", () => {
    const price = [
      {
        a: "p1",
        b: "p2",
        names: [
          ["dark blue", "red"],
          ["dark blue", "navy"],
        ],
        length: 2,
        contrast: [24.6, 3.2],
        outcome: "worse",
      },
    ] as const;
    const [one] = view(withFocus(ranked({ noted: [noted({ price, note: "Too near." })] }))).noted;
    expect(one).toMatchObject({
      id: "tried-1",
      number: 1,
      change: "Red becomes navy.",
      figures: "Clarity 46%, of what has to be seen 12%",
      verdict: "Less clear: navy on dark blue has contrast 3% (weak), where red on dark blue had 25% (weak).",
      note: "Too near.",
    });
    expect(one?.plate).toMatchObject({
      src: "tried-1-c8202f-123456.svg",
      alt: "The flag where red is navy",
    });
    expect(view(ranked({ noted: [noted({})] })).noted[0]?.figures).toBe("Clarity 46%");
  });
});

test("where clarity is level, the number that decides the verdict stands beside it", () => {
  const say = (more: Parameters<typeof noted>[0]) => view(ranked({ noted: [noted(more)] })).noted[0]?.verdict;
  expect(say({ clarity: 74.3, strength: 72.4, verdict: "clearer" })).toBe(
    "Clearer: clarity stays, and strength, how far edges go beyond clear, rises from 61% to 72%.",
  );
  expect(say({ clarity: 74.3, strength: 50, verdict: "less clear" })).toMatch(/falls from 61% to 50%\.$/);
  expect(say({ clarity: 74.3, strength: 60, verdict: "no gain" })).toBe("No gain.");
  expect(say({ clarity: 80, strength: 72, verdict: "clearer" })).toBe("Clearer.");
});

describe("presentOptionsLine", () => {
  const line = (study: StudyResult) => presentOptionsLine(study, linkFrom("/studies/a-square/"), format);
  const third = "2 of 58 changes of one colour are clearer.";

  test("names the best with its clarity, and leads to all of them", () => {
    const options = [option({ with: "#ffffff", name: "white", clarity: 99.6 })];
    expect(line(ranked({}, { options, shades }))).toEqual({
      says: `${third} The clearest, red to white, reaches 99.6%.`,
      address: "changes/",
    });
  });

  test("tells of what the author tried where that is clearer, and not where it is level", () => {
    const options = [option({ with: "#ffffff", name: "white", clarity: 98.6 })];
    const say = (clarity: number) => line(ranked({ noted: [noted({ clarity })] }, { options, shades }))?.says;
    expect(say(100)).toContain("The clearest, red to navy, which the author tried, reaches 100%.");
    expect(say(99.4)).not.toContain("author");
  });

  test("says where that is the study's own, and why there is none", () => {
    const { replace, with: next } = result.change;
    const own = [option({ replace, with: next, name: "yellow", clarity: 100 })];
    expect(line(ranked({}, { options: own, shades }))?.says).toBe(third);
    expect(line(ranked({}))?.says).toBe(`${third} None of the colours could be tried.`);
  });

  test("a study that stands first is not told of a better one, nor a flag that is clear", () => {
    const options = [option({ with: "#ffffff", name: "white", clarity: 98 })];
    const first = { ...ranked({}).ranking?.standing, place: 1 } as never;
    expect(line(ranked({ standing: first }, { options, shades }))?.says).toBe(
      "None of 58 changes of one colour is clearer.",
    );
    expect(line(ranked({}, { options, shades, clarity: 100 }))?.says).toMatch(
      / The original has a clarity of 100%: no change can raise it\.$/,
    );
  });

  test("is left out where the page is", () => {
    expect(line(result)).toBeUndefined();
    expect(line(ranked({}, { clarity: null }))).toBeUndefined();
  });
});

test("the author's others are numbered as they are met: along the matrix, then what it does not have", () => {
  const others = [noted({}), noted({ with: "#ffffff" })];
  expect(view(ranked({ matrix, noted: others })).noted.map(({ number, id }) => [number, id])).toEqual([
    [1, "tried-2"],
    [2, "tried-1"],
  ]);
});

test("the author's others are files of their own, by their own order", () => {
  const drawings = [noted({ drawing: "<svg>1</svg>" }), noted({ with: "#ffffff", drawing: "<svg>2</svg>" })];
  expect(listTriedDrawings(ranked({ noted: drawings }))).toEqual([
    { file: "tried-1-c8202f-123456.svg", drawing: "<svg>1</svg>" },
    { file: "tried-2-c8202f-ffffff.svg", drawing: "<svg>2</svg>" },
  ]);
  expect(listTriedDrawings(result)).toEqual([]);
});
