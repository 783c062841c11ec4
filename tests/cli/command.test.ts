import { expect, test } from "vitest";
import { UsageError } from "../../src/cli/command.ts";

test("wrong use says what is wrong and what to type", () => {
  const error = new UsageError("There is no command “x”.", "Type: check");
  expect([error.message, error.hint, error instanceof Error]).toEqual([
    "There is no command “x”.",
    "Type: check",
    true,
  ]);
});
