import { expect, test } from "vitest";
import { formatTable } from "../../../src/cli/text/texttable.ts";

test("columns stand under one another, wide characters included, and lines have no space at their ends", () => {
  const columns = [
    { head: "name", align: "left" },
    { head: "length", align: "right" },
    { head: "", align: "left" },
  ] as const;
  const rows = [
    ["旗", "1.00", ""],
    ["a longer name", "10.00", "hue only"],
  ];
  expect(formatTable(columns, rows)).toBe(`\
  name           length
  旗               1.00
  a longer name   10.00  hue only`);
});

test("what would steer a terminal is not printed", () => {
  expect(formatTable([{ head: "x", align: "left" }], [["\u001b[2J"]])).toBe("  x\n  \\u001b[2J");
});
