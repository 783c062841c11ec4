import { expect, test } from "vitest";
import { sides, tellStep } from "../../../src/views/show/step.ts";

test("a step says what it is told to; what stands under a redesign says that it is unofficial", () => {
  const picture = { kind: "strip", plates: [] } as const;
  expect(tellStep("after", "Red becomes gold.", picture, sides.redesign, "And now.")).toEqual({
    name: "after",
    heading: "Red becomes gold.",
    picture,
    says: "The redesign, an unofficial study",
    speech: "And now.",
  });
  expect(sides.both).toContain("unofficial");
});
