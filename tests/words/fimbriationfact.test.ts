import { expect, test } from "vitest";
import { listLines, presentFimbriations } from "../../src/words/fimbriationfact.ts";
import { createFormat } from "../../src/words/format.ts";
import { compared, type Paint } from "../publish/compared.ts";

const format = createFormat("en-GB");
const sea: Paint = { name: "blue", hex: "#1b6375", more: { share: 0.5, reflectance: 13 } };
const star: Paint = { name: "dark red", hex: "#701c2b", more: { share: 0.45, reflectance: 9 } };
const line = (becomes?: Paint["becomes"]): Paint => ({
  name: "brown",
  hex: "#86683a",
  ...(becomes ? { becomes } : {}),
  more: { share: 0.05 },
});

function starred(paint: Paint, before: readonly [number, number], after: readonly [number, number]) {
  return compared(
    [sea, star, paint],
    [
      { between: ["p1", "p3"], length: 2, contrast: [before[0], after[0]], outcome: "same" },
      { between: ["p2", "p3"], length: 1.8, contrast: [before[1], after[1]], outcome: "same" },
    ],
  );
}

test("says what the line does now, and that it did not before", () => {
  const white = line({ name: "white", hex: "#f7f3e8" });
  expect(presentFimbriations(starred(white, [9, 21], [69, 77]), format)).toEqual([
    {
      key: "p3-p1-p2",
      lead: "The white line parts blue from dark red",
      // 125 · (13 − 9) / (13 + 9 + 25), by hand: 10.6.
      direct: "11%",
      across: "69%",
      rest: "In the original the brown line did not: 9% in place of 11%.",
    },
  ]);
});

test("a line that the change leaves alone is told once", () => {
  expect(presentFimbriations(starred(line(), [69, 77], [69, 77]), format)[0]).toMatchObject({
    lead: "The brown line parts blue from dark red",
    rest: undefined,
  });
});

test("a line that is weaker than the pair itself does not part it", () => {
  const view = presentFimbriations(
    starred(line({ name: "black", hex: "#000000" }), [69, 77], [5, 8]),
    format,
  )[0];
  expect(view?.lead).toBe("The black line between blue and dark red does not part them");
  expect(view?.rest).toBe("In the original the brown line did: 69% in place of 11%.");
});

test("lines are known by the id of their paint", () => {
  expect([...listLines(starred(line(), [1, 2], [1, 2]).before)]).toEqual(["p3"]);
});
