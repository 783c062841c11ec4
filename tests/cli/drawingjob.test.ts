import { join } from "node:path";
import { afterEach, expect, test, vi } from "vitest";
import { Desk } from "../../src/cli/drawingjob.ts";
import { makeFolder } from "../content/folder.ts";
import { halved } from "./flag.ts";

vi.setConfig({ testTimeout: 60_000 });

const desks: Desk[] = [];
const open = (focus?: string): Desk => {
  const desk = new Desk({ distance: 0, ...(focus === undefined ? {} : { focus }) });
  desks.push(desk);
  return desk;
};
afterEach(() => {
  for (const desk of desks.splice(0)) desk.close();
});

// By hand: the palette's dark blue, #16285c, has luminance 0.0246 and reflects 6.97 %; with white 125 · 78.03 / 116.97 is
// 83.39, which is 3.57 less than the 86.96 of black and white: the same, since both are beyond 60.
test("a file has numbers, and after a change it has two of each", async () => {
  const file = join(await makeFolder({ "halved.svg": halved }), "halved.svg");
  const desk = open();
  const { value: measure } = await desk.measure(file);
  expect(measure).toMatchObject({ file, distance: 0, proportions: [2, 3] });
  const { value: compared } = await desk.compare(file, { replace: "#000000", with: "dark blue" });
  expect(compared?.comparison).toMatchObject({ before: { distance: 0 }, edges: [{ outcome: "same" }] });
  expect((await desk.rank(file)).value).toMatchObject({ file, changeFirst: null });
  expect((await desk.survey(file)).value).toMatchObject({ file, clarity: 100 });
  expect((await desk.sift(file)).value).toContain("<svg");
});

test("a focus as typed is named", async () => {
  const file = join(await makeFolder({ "halved.svg": halved }), "halved.svg");
  // The fly is a third of the flag.
  for (const focus of ["#fly", "black", "#000"]) {
    const { value } = await open(focus).measure(file);
    expect(value?.focus.source).toBe("named");
    expect(value?.focus.share).toBeCloseTo(1 / 3, 3);
  }
});

test("a file that is not there has one problem, and is not measured", async () => {
  const desk = open();
  const file = "/nowhere/a.svg";
  const outcomes = [
    desk.measure(file),
    desk.compare(file, { replace: "red", with: "blue" }),
    desk.rank(file),
    desk.survey(file),
    desk.sift(file),
  ];
  for (const { value, problems } of await Promise.all(outcomes)) {
    expect(value).toBeUndefined();
    expect(problems.map(({ rule }) => rule)).toEqual(["study/drawing-missing"]);
  }
});
