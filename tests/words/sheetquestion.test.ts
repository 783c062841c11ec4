import { expect, test } from "vitest";
import type { Comparison } from "../../src/measure/comparison.ts";
import { createFormat } from "../../src/words/format.ts";
import { askClass } from "../../src/words/sheetquestion.ts";
import { comparison } from "../publish/sample.ts";

const format = createFormat("en");
const [first, second] = comparison.edges;
if (first === undefined || second === undefined) throw new Error("the sample has two edges");
const ask = (changed: Partial<Comparison>) => askClass({ ...comparison, ...changed }, format);

// The numbers are those typed in the sample: red on dark blue 24.6 %, yellow on dark blue 67.2 %.
test("the hardest edge, the grade of the longest that moved, and what the change brought", () => {
  const [hardest, grade, change] = ask({});
  expect(hardest.answer).toBe("Dark blue / red: contrast 25%, weak.");
  expect(grade.ask).toContain("dark blue beside yellow has a contrast of 67%");
  expect(grade.answer).toBe("Strong: 60% and over.");
  expect(change.ask).toBe("Clarity was 74% and is 100% after the change. Where does the contrast grow most?");
  expect(change.answer).toBe(
    "Dark blue / red, from contrast 25% (weak) to 67% (strong) as dark blue / yellow.",
  );
});

test("of edges that moved the longest is asked for its grade, and of the original's none that became one colour", () => {
  const longer = { ...first, length: 9, contrast: [84.2, 46] as const, outcome: "worse" as const };
  const [, grade] = ask({ edges: [second, longer] });
  expect(grade.ask).toContain("dark blue beside white has a contrast of 46%");
  expect(grade.answer).toBe("Clear: 45% to under 60%.");
  const [, other] = ask({ edges: [second, { ...longer, outcome: "merged" }] });
  expect(other.ask).toContain("dark blue beside yellow");
});

test("where two edges are as hard to see, both are the answer; a clear one is said to be clear", () => {
  const edges = comparison.before.edges.map((edge) => ({ ...edge, contrast: 71.2 }));
  const [{ answer }] = ask({ before: { ...comparison.before, edges } });
  expect(answer).toBe("Dark blue / red and dark blue / white: contrast 71%, strong. Even that is clear.");
});

test("a price is asked about before a gain, and the answer is no number of the price, which stands above", () => {
  const price = [{ ...first, contrast: [84.2, 27] as const, outcome: "lost" as const }];
  const [, , { ask: asked, answer }] = askClass(
    { ...comparison, price },
    format,
    "The best is red to white.",
  );
  expect(asked).toMatch(/^The change has a price, told above\. Would you pay it\?/);
  expect(answer).toMatch(/^The best is red to white\. Whether the price is too much, no number says/);
  expect(`${asked} ${answer}`).not.toMatch(/84|27/);
  expect(ask({ price })[2].answer).toMatch(/^Whether /);
});

test("without gain and price it is asked for a reason; a flag of one edge has no hardest", () => {
  const edges = [{ ...first, outcome: "same" as const }];
  const before = { ...comparison.before, edges: comparison.before.edges.slice(1) };
  const [area, , change] = ask({
    edges,
    before,
    clarity: [100, 100],
    verdict: "no gain",
    strength: [100, 100],
  });
  expect(area.answer).toBe("Dark blue: 73% of the flag.");
  expect(change.ask).toMatch(/^Clarity stays at 100%.* Can there be a reason/);
});

test("a flag of one colour is asked what it lacks", () => {
  const [paint] = comparison.before.colours;
  if (paint === undefined) throw new Error("the sample has colours");
  const bare = {
    ...comparison.before,
    edges: [],
    weakestEdge: null,
    clarity: null,
    colours: [{ ...paint, share: 1 }],
  };
  const asked = ask({
    edges: [],
    before: bare,
    after: bare,
    price: [],
    clarity: [null, null],
    verdict: "no gain",
  });
  expect(asked.map(({ ask: text }) => text).join(" ")).not.toMatch(/contrast|edge of|undefined|NaN/);
  expect(asked[0].answer).toBe("Dark blue: 100% of the flag.");
  expect(asked[2].answer).toContain("than dark blue");
});
