import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { expect, test, vi } from "vitest";
import { makeFolder } from "../content/folder.ts";
import { halved, plain } from "./flag.ts";
import { runHere } from "./run.ts";
import { findFaults } from "./schema.ts";

vi.setConfig({ testTimeout: 60_000 });

// By hand: cloth of 5 to 85 %, so black reflects 5, white 85; contrast 125 · 80 / (90 + 25) = 86.96; ratio and ΔE00 of
// black and white are 21 and 100 by definition; the line is one flag height long.
test("the table of a flag that can be worked out by hand", async () => {
  const root = await makeFolder({ "halved.svg": halved });
  const { status, messages, data } = await runHere(root, "measure", "halved.svg");
  expect([status, messages]).toEqual([0, ""]);
  // What stands behind the last of these columns is another measure's.
  const shown = data.split("\n").map((line, at) => (at < 9 ? line : line.slice(0, 64)));
  expect(shown.join("\n")).toBe(`\
halved.svg: 2:3, seen from 40 flag heights away (a model of sight)

  Clarity 100.0 %, strength 100.0 %, weakest edge 87.0 % (white / black)
  No emblem found: nothing has to be seen before the rest.

  id  colour  hex       share  reflectance  tincture
  p1  white   #ffffff  66.7 %       85.0 %  metal
  p2  black   #000000  33.3 %        5.0 %  colour

  edge           length  contrast  grade   contrast ratio   ΔE00
  white / black    1.00    87.0 %  strong           21.00  100.0
`);
});

test("one colour has no edges", async () => {
  const root = await makeFolder({ "plain.svg": plain });
  const { status, data } = await runHere(root, "measure", "plain.svg", "--distance", "0");
  expect(status).toBe(0);
  expect(data).toContain("plain.svg: 1:2, the full drawing\n");
  expect(data).toContain("One colour: no edges to measure.");
});

test("JSON of one file is an object, of several an array, and both fit the schema", async () => {
  const root = await makeFolder({ "halved.svg": halved, "plain.svg": plain });
  const one = await runHere(root, "measure", "halved.svg", "--json");
  expect([one.status, one.messages, findFaults("measure", one.data)]).toEqual([0, "", []]);
  const measure = JSON.parse(one.data);
  expect(measure.schemaVersion).toBe(2);
  expect(measure).toMatchObject({ file: "halved.svg", proportions: [2, 3], distance: 40, clearEdgeShare: 1 });
  expect(measure.edges[0]).toMatchObject({ a: "p1", b: "p2", names: ["white", "black"], grade: "strong" });
  expect(measure.edges[0].contrast).toBeCloseTo((125 * 80) / 115, 6);

  const two = await runHere(root, "measure", "halved.svg", "plain.svg", "--json");
  expect(findFaults("measure", two.data)).toEqual([]);
  expect(JSON.parse(two.data)).toMatchObject([
    { schemaVersion: 2, file: "halved.svg" },
    { schemaVersion: 2, file: "plain.svg", edges: [], clarity: null, weakestEdge: null },
  ]);
});

test("a schema fault is found", async () => {
  expect(findFaults("measure", "[]")).toEqual([]);
  expect(findFaults("measure", '{"file":"a"}').length).toBeGreaterThan(0);
});

test("a broken drawing is status 1, and the others are measured", async () => {
  const root = await makeFolder({ "halved.svg": halved, "broken.svg": "<svg" });
  const { status, data, messages } = await runHere(root, "measure", "broken.svg", "halved.svg", "--json");
  expect(status).toBe(1);
  expect(JSON.parse(data)).toMatchObject([{ file: "halved.svg" }]);
  expect(messages).toMatch(/^broken\.svg(:\d+:\d+)? {2}error {2}/);
});

test("a file that is not there, or is a folder, is wrong use", async () => {
  const root = await makeFolder({ "halved.svg": halved });
  await mkdir(join(root, "folder.svg"));
  expect(await runHere(root, "measure", "halfed.svg")).toEqual({
    status: 2,
    data: "",
    messages: `\
halfed.svg  error  There is no such file.  study/drawing-missing
    Looked for ${root}/halfed.svg
    A drawing that is there: halved.svg
`,
  });
  expect(await runHere(root, "measure", "folder.svg")).toEqual({
    status: 2,
    data: "",
    messages: `\
folder.svg  error  This is a folder; name the SVG files in it.  study/folder-named
    Type, for example: folder.svg/flag.svg
    Every flag of a folder: npm run -s cli -- survey folder.svg
`,
  });
});

test("a drawing over 512 KB is refused before it is read", async () => {
  const root = await makeFolder({ "big.svg": halved + " ".repeat(512 * 1024) });
  const { status, messages } = await runHere(root, "measure", "big.svg");
  expect([status, messages]).toEqual([
    1,
    `\
big.svg  error  The drawing has 513 KB; a drawing may have 512 KB.  study/drawing-size
    Export it again with fewer points: a flag rarely needs more than 50 KB.
`,
  ]);
});

test("several files stand in the order in which they were named, whatever is wrong with some", async () => {
  const root = await makeFolder({
    "halved.svg": halved,
    "plain.svg": plain,
    "picture.svg": Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0xff),
  });
  const words = ["plain.svg", "picture.svg", "halved.svg", "plain.svg", "missing.svg"];
  const { status, data, messages } = await runHere(root, "measure", ...words);
  expect(status).toBe(2);
  expect(data.match(/^\S+\.svg:/gm)).toEqual(["plain.svg:", "halved.svg:", "plain.svg:"]);
  expect(data).toMatch(/metal\n\nhalved\.svg/);
  expect(messages.match(/^\S+\.svg {2}error/gm)).toEqual(["missing.svg  error", "picture.svg  error"]);
});

test("a focus that is named: by colour, by name, by selector; what is not there is said", async () => {
  const root = await makeFolder({ "halved.svg": halved });
  for (const focus of ["#000", "black", "#fly"]) {
    const { status, data } = await runHere(root, "measure", "halved.svg", "--focus", focus);
    expect(status).toBe(0);
    expect(data).toContain(
      "Focus (named): 33.3 % of the flag, clarity 100.0 %, lasts to 320 or more flag heights",
    );
  }
  const absent = await runHere(root, "measure", "halved.svg", "--focus", "pink");
  expect([absent.status, absent.data]).toEqual([1, ""]);
  expect(absent.messages).toContain("The drawing has no colour “pink”.");
  const nothing = await runHere(root, "measure", "halved.svg", "--focus", "#mast");
  expect(nothing.messages).toContain("“#mast” matches nothing in the drawing.");
});
