import { expect, test } from "vitest";
import { tellStep } from "../../../src/views/show/step.ts";

test("a step says what it is told to", () => {
  const picture = { kind: "strip", plates: [] } as const;
  expect(tellStep("after", "Red becomes gold.", picture, "An unofficial study", "And now.")).toEqual({
    name: "after",
    heading: "Red becomes gold.",
    picture,
    says: "An unofficial study",
    speech: "And now.",
  });
});
