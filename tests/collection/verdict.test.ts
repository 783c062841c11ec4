import { join } from "node:path";
import { expect, test } from "vitest";
import { listCollection } from "./files.ts";
import { formatVerdicts, judgeFile } from "./verdict.ts";

const at = (path: string): { name: string; path: string } => ({
  name: path,
  path: join(import.meta.dirname, "..", path),
});

test("a table says of each file whether it is accepted, and why not", async () => {
  const [real] = listCollection().slice(0, 1);
  const files = [
    ...(real === undefined ? [] : [{ ...real, name: "real.svg" }]),
    at("svg/exports/sketch.svg"),
    at("hostile/svg/effect-recolour.svg"),
    at("hostile/svg/effect-blend.svg"),
  ];
  const verdicts = [];
  for (const file of files) verdicts.push(await judgeFile(file));
  expect(formatVerdicts(verdicts).split("\n")).toEqual([
    "accepted       1   25.0 %",
    "warned         1   25.0 %",
    "               1  svg/effect: <use> is measured and shown without what its author gave it: a shadow.",
    "                  svg/exports/sketch.svg",
    "refused        2   50.0 %",
    expect.stringMatching(/^ {15}1 {2}study\/effect: Without what is left out of it, .* N % of the flag/),
    "                  hostile/svg/effect-recolour.svg",
    expect.stringMatching(/^ {15}1 {2}study\/effect: Without what is left out of it, colours mixed with/),
    "                  hostile/svg/effect-blend.svg",
  ]);
});
