import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test, vi } from "vitest";
import { makeFolder } from "../content/folder.ts";
import { halved } from "./flag.ts";
import { runHere } from "./run.ts";
import { findFaults } from "./schema.ts";

vi.setConfig({ testTimeout: 60_000 });

const change = ["--replace", "#000000", "--with", "#808080"];

// By hand: #808080 has luminance 0.2159, so it reflects 5 + 80 · 0.2159 = 22.27 %;
// contrast 125 · (85 − 22.27) / (85 + 22.27 + 25) = 59.28; strength 59.28 / 60 = 98.8 %. Beyond 60 nothing counts, and from
// 60 to 59.28 is under 3 points: the edge is the same.
test("the table of a change that can be worked out by hand", async () => {
  const root = await makeFolder({ "halved.svg": halved });
  expect(await runHere(root, "try", "halved.svg", ...change)).toEqual({
    status: 0,
    messages: "",
    data: `\
halved.svg: #000000 → #808080, seen from 40 flag heights away (a model of sight)

  Clarity 100.0 % → 100.0 %, strength 100.0 % → 98.8 %
  No gain.
  No emblem found: nothing has to be seen before the rest.

  edge                          length  before  grade    after  grade                 outcome
  white / black → white / grey    1.00  87.0 %  strong  59.3 %  clear, near the line  same
`,
  });
});

test("JSON fits the schema, with and without only", async () => {
  const root = await makeFolder({ "halved.svg": halved });
  for (const only of [[], ["--only", "#fly"]]) {
    const { status, data, messages } = await runHere(root, "try", "halved.svg", ...change, ...only, "--json");
    expect([status, messages, findFaults("try", data)]).toEqual([0, "", []]);
    const compared = JSON.parse(data);
    expect(compared.schemaVersion).toBe(2);
    expect(compared.change).toEqual({
      replace: "#000000",
      with: "#808080",
      ...(only.length > 0 ? { only: "#fly" } : {}),
    });
    expect(compared.edges).toHaveLength(1);
    expect(compared.edges[0].contrast[1]).toBeCloseTo(59.28, 1);
  }
});

test("--out writes the redesign, says that it is unofficial, and never overwrites", async () => {
  const root = await makeFolder({ "halved.svg": halved });
  const first = await runHere(root, "try", "halved.svg", ...change, "--out", "grey.svg");
  expect([first.status, first.messages]).toEqual([0, "The redesign is in grey.svg.\n"]);
  const written = await readFile(join(root, "grey.svg"), "utf8");
  expect(written).toContain("#808080");
  expect(written).not.toContain("#000000");
  expect(written).toMatch(/unofficial/i);

  const again = await runHere(
    root,
    "try",
    "halved.svg",
    "--replace",
    "#000000",
    "--with",
    "red",
    "--out",
    "grey.svg",
  );
  expect(again).toEqual({
    status: 2,
    data: "",
    messages: `\
“grey.svg” is there already, and nothing is overwritten.
    Choose another name for --out.
`,
  });
  expect(await readFile(join(root, "grey.svg"), "utf8")).toBe(written);
});

test.each<[string[], string]>([
  [
    [...change, "--out", "grey.png"],
    `\
--out is “grey.png”; the redesign is an SVG file.
    Choose a name that ends in .svg
`,
  ],
  [
    [...change, "--out", "no/such/folder.svg"],
    `\
The folder of “no/such/folder.svg” does not exist.
    Make the folder first.
`,
  ],
])("%j is wrong use", async (words, messages) => {
  const root = await makeFolder({ "halved.svg": halved });
  expect(await runHere(root, "try", "halved.svg", ...words)).toEqual({ status: 2, data: "", messages });
});

test("a colour that the drawing does not have is status 1, and nothing is written", async () => {
  const root = await makeFolder({ "halved.svg": halved });
  const words = ["--replace", "#123456", "--with", "red", "--out", "out.svg"];
  const { status, data, messages } = await runHere(root, "try", "halved.svg", ...words);
  expect([status, data]).toEqual([1, ""]);
  expect(messages).toContain("#123456");
  await expect(readFile(join(root, "out.svg"))).rejects.toThrow("ENOENT");
});

test("a focus that is named stands first and is compared", async () => {
  const root = await makeFolder({ "halved.svg": halved });
  const { status, data } = await runHere(root, "try", "halved.svg", ...change, "--focus", "#fly");
  expect(status).toBe(0);
  expect(data).toContain("  edge                          length  focus  before");
  expect(data).toContain("  white / black → white / grey    1.00   1.00  87.0 %");
  expect(data).toContain("Focus (named): clarity 100.0 % → 100.0 %, lasts to 320 or more flag heights");
});

// A dark disc on black: contrast of #282828 (luminance 0.0212, 6.70 %) and black is 125 · 1.70 / 36.70 = 5.78.
const dark = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><path fill="#000000" d="M0 0h3v2H0z"/><circle cx="1.5" cy="1" r=".6" fill="#282828"/></svg>`;

test("without a change: what to change and why, then by the colour that is changed", async () => {
  const root = await makeFolder({ "dark.svg": dark });
  const { status, data, messages } = await runHere(root, "try", "dark.svg");
  expect([status, messages]).toEqual([0, ""]);
  // The area of the disc is π · 0.6², of 6: 19 %.
  expect(data).toMatch(/^Change off-black \(19 % of the flag\) or black \(81 %\) first: with /);
  expect(data).toContain("\ndark.svg: clarity 13 %, focus clarity 13 %\n  seen from 40 flag heights away");
  expect(data).toMatch(
    /\n {2}change +share +best in its place +clarity +focus clarity\n {2}[a-z -]+ #282828 +19 % /,
  );
  expect(data).toMatch(/ #[0-9a-f]{6} +13 → 100 % +13 → 100 %\n/);
  expect(data).toMatch(/\nNot ranked, since a charge would merge: /);
  expect(data).not.toContain("\u001b");
});

test("with more colours than have room it stays under 30 lines of 100 columns", async () => {
  const stripes = Array.from(
    { length: 24 },
    (_, n) => `<path fill="hsl(${n * 15} 60% ${[22, 45, 70][n % 3]}%)" d="M${n} 0h1v16h-1z"/>`,
  ).join("");
  const root = await makeFolder({
    "stripes.svg": `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 24 16">${stripes}</svg>`,
  });
  const { status, data } = await runHere(root, "try", "stripes.svg");
  expect(status).toBe(0);
  const lines = data.trimEnd().split("\n");
  expect(lines.length).toBeLessThan(30);
  expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(100);
  expect(data).toMatch(/\n {2}and \d+ more colours: --json has all\n/);
});

test("the JSON of a ranking fits its schema", async () => {
  const root = await makeFolder({ "dark.svg": dark, "halved.svg": halved });
  for (const file of ["dark.svg", "halved.svg"]) {
    const { status, data, messages } = await runHere(root, "try", file, "--json");
    expect([status, messages, findFaults("options", data)]).toEqual([0, "", []]);
  }
  // Nothing can be better than clear.
  expect(JSON.parse((await runHere(root, "try", "halved.svg", "--json")).data)).toMatchObject({
    schemaVersion: 2,
    changeFirst: null,
    reason: "The flag is clear as it is, at a clarity of 100 %.",
  });
});

test("a colour that only CSS knows by a near name is proposed", async () => {
  const root = await makeFolder({ "halved.svg": halved });
  const { status, messages } = await runHere(
    root,
    "try",
    "halved.svg",
    "--replace",
    "black",
    "--with",
    "glod",
  );
  expect([status, messages]).toEqual([
    1,
    `\
halved.svg  error  “glod” is neither a name of the palette nor a CSS colour.  study/wrong-colour
    Type “gold”, if that is meant.
`,
  ]);
});
