import { describe, expect, test } from "vitest";
import { checkVote, readVote } from "../../../src/content/vote/ballot.ts";

const right = { ballot: "70ccec313571810a", series: "quay", study: "ferry", choice: "redesign", why: "" };

test("a right vote has nothing wrong", () => {
  expect(checkVote(right, "quay", ["ferry"])).toBeUndefined();
});

test.each([
  [{ ballot: "70CCEC313571810A" }, "vote/row", "ballot"],
  [{ ballot: "__proto__" }, "vote/row", "ballot"],
  [{ series: "season" }, "vote/other-series", "series"],
  [{ study: "fery" }, "vote/unknown-study", "study"],
  [{ choice: "constructor" }, "vote/unknown-choice", "choice"],
] as const)("%j → %s", (change, rule, at) => {
  expect(checkVote({ ...right, ...change }, "quay", ["ferry"])).toMatchObject({ rule, at });
});

describe("the words of a voter", () => {
  const whyOf = (why: string) => readVote({ ...right, why }).why;

  test("stand in one line, without what nobody sees, and no longer than 200 characters", () => {
    expect(whyOf(" gold\n on\u202e the\u0000 water ")).toBe("gold on the water");
    expect([...(whyOf("🏴".repeat(300)) ?? "")]).toHaveLength(200);
    expect(whyOf(" \u200b ")).toBeUndefined();
  });

  test("lose the apostrophe that kept a spreadsheet from computing them", () => {
    expect(whyOf("'=1+1")).toBe("=1+1");
    expect(whyOf("'tis gold")).toBe("'tis gold");
  });
});
