import { expect, test } from "vitest";
import { describeDecision } from "../../src/words/decisionphrase.ts";
import { createFormat } from "../../src/words/format.ts";

const format = createFormat("en-GB");

test("with a day: what became of it, when, by whom, with how many votes, and why", () => {
  const decision = { date: "2026-05-02", by: "the spring meeting", for: 11, against: 2, why: "it reads." };
  expect(describeDecision(decision, "adopted", format)).toBe(
    "Adopted on 2 May 2026 by the spring meeting, 11 for and 2 against. It reads.",
  );
  expect(describeDecision({ date: "2026-05-02", abstained: 1, why: "No." }, "declined", format)).toBe(
    "Declined on 2 May 2026, 1 abstained. No.",
  );
});

test("a sentence alone stays as it was written", () => {
  expect(describeDecision({ why: "adopted by eleven." }, "adopted", format)).toBe("adopted by eleven.");
});
