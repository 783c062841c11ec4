// The contact sheet of a study, from typed rankings: what it says, what it marks, which files it needs.
import { describe, expect, test } from "vitest";
import type { RankedOption } from "../../../src/measure/rank.ts";
import { linkFrom } from "../../../src/site/address.ts";
import { createFormat } from "../../../src/site/present/format.ts";
import { listOptionDrawings, presentOptions } from "../../../src/site/present/options.ts";
import type { StudyRanking } from "../../../src/study/ranking.ts";
import type { StudyResult } from "../../../src/study/result.ts";
import { makeOption } from "../../measure/ranked.ts";
import { studyResult as result } from "../sample.ts";

const format = createFormat("en");
const replaced = result.change.replace;

const option = (more: Partial<RankedOption>): RankedOption => makeOption({ replace: replaced, ...more });

function ranked(more: Partial<StudyRanking>, report: Partial<StudyRanking["report"]> = {}): StudyResult {
  const ranking: StudyRanking = {
    report: {
      file: "a.svg",
      clarity: 40,
      changeFirst: null,
      reason: "Change red first.",
      options: [],
      vanishing: [],
      shades: [],
      notes: [],
      ...report,
    },
    sheet: [],
    standing: {
      place: 3,
      total: 58,
      level: 0,
      behindBest: 2,
      says: "3rd of 58 in clarity, within 2 points of the best; no edge is lost or merged.",
    },
    noted: [],
    ...more,
  };
  return { ...result, ranking };
}

const view = (study: StudyResult) => {
  const shown = presentOptions(study, linkFrom("studies/a/"), format);
  if (shown === undefined) throw new Error("no options");
  return shown;
};

describe("presentOptions", () => {
  test("is left out where nothing was ranked, and where there is no edge", () => {
    expect(presentOptions(result, linkFrom("studies/a/"), format)).toBeUndefined();
    expect(presentOptions(ranked({}, { clarity: null }), linkFrom("studies/a/"), format)).toBeUndefined();
  });

  test("says the colour to change first and where the study stands", () => {
    const { first, standing } = view(ranked({}));
    expect(first).toBe("Change red first.");
    expect(standing).toBe(
      "This study: 3rd of 58 in clarity, within 2 points of the best; no edge is lost or merged.",
    );
  });

  test("equals stand behind one drawing and are named", () => {
    const head = { ...option({}), drawing: "<svg/>" };
    const [shown] = view(
      ranked({
        sheet: [
          {
            head,
            others: [option({ name: "yellow", with: "#ffee00" }), option({ name: "grey", with: "#999999" })],
          },
        ],
      }),
    ).best;
    expect(shown?.figures).toBe("Clarity 99.6%, clear edges 100%");
    expect(shown?.details[0]).toBe("As clear, and further from today’s colour: yellow and grey.");
    expect(shown?.isChosen).toBe(false);
  });

  test("what is gained, lost and merged is told, and what the colour can be taken for", () => {
    const head = {
      ...option({
        gained: [{ a: "p1", b: "p2", names: ["blue", "red"] }],
        merged: [{ a: "p2", b: "p3", names: ["red", "white"] }],
        confusable: [{ a: "p2", b: "p3", names: ["red", "white"] }],
      }),
      drawing: "<svg/>",
    };
    expect(view(ranked({ sheet: [{ head, others: [] }] })).best[0]?.details).toEqual([
      "Gained: blue / red.",
      "Merged: red / white.",
      "ΔE00 from today’s colour: 41.",
      "Easily taken for another colour of the flag: red and white.",
    ]);
  });

  test("the study's own change is marked where it is among the best, and added where it is not", () => {
    const own = { ...option({ with: result.change.with }), drawing: "<svg/>" };
    const marked = view(ranked({ sheet: [{ head: own, others: [] }] })).best;
    expect(marked.map(({ isChosen }) => isChosen)).toEqual([true]);
    const other = { ...option({}), drawing: "<svg/>" };
    const added = view(ranked({ sheet: [{ head: other, others: [] }] })).best;
    expect(added.map(({ isChosen }) => isChosen)).toEqual([false, true]);
    expect(added[1]?.plate.src).toMatch(/redesign\.svg$/);
  });

  test("changes that make the charge vanish are named once each, six at the most", () => {
    const vanishing = ["a", "b", "c", "d", "e", "f", "g", "a"].map((name) =>
      option({ name, vanishes: true }),
    );
    const shades = [{ id: "p2", hex: replaced, name: "red", isClear: false, lighter: null, darker: null }];
    expect(view(ranked({}, { vanishing, shades })).vanishing).toBe(
      "Not ranked, because the charge or a part of it would vanish: red to a, red to b, red to c, red to d, red to e, red to f, and 1 other.",
    );
  });
});

describe("listOptionDrawings", () => {
  test("a file for each drawing, the author's own with their number", () => {
    const head = { ...option({}), drawing: "<svg>1</svg>" };
    const noted = {
      index: 0,
      replace: replaced,
      with: "#123456" as const,
      name: "navy",
      clarity: 1,
      clearEdgeShare: 0,
      gained: [],
      lost: [],
      merged: [],
      standing: null,
      drawing: "<svg>2</svg>",
    };
    expect(listOptionDrawings(ranked({ sheet: [{ head, others: [] }], noted: [noted] }))).toEqual([
      { file: `option-${replaced.slice(1)}-fafafa.svg`, drawing: "<svg>1</svg>" },
      { file: `tried-1-${replaced.slice(1)}-123456.svg`, drawing: "<svg>2</svg>" },
    ]);
    expect(listOptionDrawings(result)).toEqual([]);
  });
});
