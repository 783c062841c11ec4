import { symlink } from "node:fs/promises";
import { join } from "node:path";
import { expect, test, vi } from "vitest";
import { farStripes } from "../colour/farcolours.ts";
import { makeFolder } from "../content/folder.ts";
import { halved, plain } from "./flag.ts";
import { runHere } from "./run.ts";
import { findFaults } from "./schema.ts";

vi.setConfig({ testTimeout: 60_000 });

const dark = halved.replace("#ffffff", "#303030");
const files = {
  "flags/halved.svg": halved,
  "flags/more/dark.svg": dark,
  "flags/plain.SVG": plain,
  "flags/broken.svg": "<svg",
  "flags/notes.txt": "x",
  "flags/.hidden/a.svg": halved,
  "flags/mine/.counterchange-site": "{}",
  "flags/mine/studies/a.svg": halved,
};

test("every flag of a folder and the folders in it, least clear first; broken ones are named, never fatal", async () => {
  const root = await makeFolder(files);
  await symlink(join(root, "flags/halved.svg"), join(root, "flags/link.svg"));
  const { status, data, messages } = await runHere(root, "survey", "flags");
  expect(status).toBe(1);
  expect(data.match(/^ {2}\S+\.svg/gim)).toEqual([
    "  flags/more/dark.svg",
    "  flags/halved.svg",
    "  flags/plain.SVG",
  ]);
  expect(data).toMatch(/\n\n3 flags of 4 files\.\n$/);
  expect(messages).toMatch(/^flags\/broken\.svg\S* {2}error/);
});

test("the same from inside the folder", async () => {
  const root = await makeFolder({ "halved.svg": halved });
  const { status, data } = await runHere(root, "survey", ".");
  expect(status).toBe(0);
  expect(data).toMatch(/^ {2}halved\.svg {2}100\.0 %/m);
  expect(data).toContain("1 flag of 1 file.\n");
});

test("JSON fits the schema, with what is broken", async () => {
  const root = await makeFolder(files);
  const { status, data } = await runHere(root, "survey", "flags", "--json");
  expect([status, findFaults("survey", data)]).toEqual([1, []]);
  expect(JSON.parse(data)).toMatchObject({
    flags: [
      { file: "flags/more/dark.svg" },
      { file: "flags/halved.svg", changeFirst: null },
      { clarity: null },
    ],
    failed: [{ file: "flags/broken.svg", problem: { rule: "svg/not-well-formed", severity: "error" } }],
  });
});

test("CSV has a line for each file", async () => {
  const root = await makeFolder(files);
  const { status, data } = await runHere(root, "survey", "flags", "--csv");
  expect(status).toBe(1);
  const lines = data.split("\r\n");
  expect(lines[0]).toMatch(/^file,clarity,clearEdgeShare,/);
  expect(lines.slice(1, -1).map((line) => line.split(",")[0])).toEqual([
    "flags/more/dark.svg",
    "flags/halved.svg",
    "flags/plain.SVG",
    "flags/broken.svg",
  ]);
  expect(lines.at(-1)).toBe("");
});

test("a flag of sixty paints is surveyed like any other, and both survey and try say how many of them were tried", async () => {
  const root = await makeFolder({
    "flags/sixty.svg": `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 200">${farStripes(60, 300)}</svg>`,
  });
  const { status, data, messages } = await runHere(root, "survey", "flags", "--json");
  expect([status, messages, findFaults("survey", data)]).toEqual([0, "", []]);
  expect(JSON.parse(data).flags).toMatchObject([{ tried: { paints: 24, of: 48 } }]);
  const table = await runHere(root, "survey", "flags");
  expect(table.data).toContain(
    "\n  flags/sixty.svg: of 48 colours only the 24 largest were tried.\n\n1 flag of",
  );
  const tried = await runHere(root, "try", "flags/sixty.svg");
  expect(tried.data).toContain(
    "Note: 48 colours: only the 24 largest were tried, with each other's colours.\n",
  );
});
