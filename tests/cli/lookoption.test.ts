import { expect, test } from "vitest";
import { UsageError } from "../../src/cli/command.ts";
import { readLooking } from "../../src/cli/lookoption.ts";

const given = (values: Record<string, string>) => ({ operands: [], values, switches: new Set<string>() });

test("40 flag heights away unless told otherwise; a focus as it was typed", () => {
  expect(readLooking(given({}))).toEqual({ distance: 40 });
  expect(readLooking(given({ distance: "0", focus: "#wheel" }))).toEqual({ distance: 0, focus: "#wheel" });
  expect(() => readLooking(given({ distance: "1001" }))).toThrow(UsageError);
});
