import { expect, test } from "vitest";
import { catchFault } from "../../../src/analysis/jobs/catchfault.ts";

test("what the work returns comes back as it is", async () => {
  const outcome = { value: 1, problems: [] };
  expect(await catchFault("a.svg", async () => outcome)).toBe(outcome);
});

test("a fault of ours is a problem with a name, the message and the beginning of the trace", async () => {
  const { value, problems } = await catchFault("a.svg", async () => {
    throw new RangeError("edge 3 has no length");
  });
  expect(value).toBeUndefined();
  expect(problems).toMatchObject([{ rule: "study/fault", severity: "error", file: "a.svg" }]);
  expect(problems[0]?.hint).toMatch(/^Please report it .*:\nRangeError: edge 3 has no length\nat /);
  expect(problems[0]?.hint?.split("\n").length).toBeLessThanOrEqual(7);
});

test("whatever is thrown", async () => {
  const { problems } = await catchFault("a.svg", () => Promise.reject("no reason"));
  expect(problems[0]?.hint).toContain("no reason");
});
