import { join } from "node:path";
import { expect, test } from "vitest";
import { compareFile, measureFile } from "../../src/cli/drawing.ts";
import { makeFolder } from "../study/folder.ts";
import { halved } from "./flag.ts";

// By hand: the palette's dark blue, #16285c, has luminance 0.0246 and reflects 6.97 %; with white 125 · 78.03 / 116.97 is
// 83.39, which is 3.57 less than the 86.96 of black and white: worse, since it is 3 points or more.
test("a file has numbers, and after a change it has two of each", async () => {
  const file = join(await makeFolder({ "halved.svg": halved }), "halved.svg");
  const { value: measure } = await measureFile(file, 0);
  expect(measure).toMatchObject({ file, distance: 0, proportions: [2, 3] });
  const { value: compared } = await compareFile(file, { replace: "#000000", with: "dark blue" }, 0);
  expect(compared?.comparison).toMatchObject({ before: { distance: 0 }, edges: [{ outcome: "worse" }] });
});

test("a file that is not there has one problem, and is not measured", async () => {
  for (const { value, problems } of [
    await measureFile("/nowhere/a.svg", 40),
    await compareFile("/nowhere/a.svg", { replace: "red", with: "blue" }, 40),
  ]) {
    expect(value).toBeUndefined();
    expect(problems.map(({ rule }) => rule)).toEqual(["study/drawing-missing"]);
  }
});
