import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { checkFree, writeNew } from "../../src/cli/writenew.ts";
import { makeFolder } from "../content/folder.ts";

test("a new file is written, and never written again", async () => {
  const file = join(await makeFolder({}), "a.svg");
  await checkFree(file, "the drawing");
  await writeNew(file, "one");
  await expect(checkFree(file, "the drawing")).rejects.toThrow(
    "is there already, and nothing is overwritten",
  );
  await expect(writeNew(file, "two")).rejects.toThrow("is there already, and nothing is overwritten");
  expect(await readFile(file, "utf8")).toBe("one");
});

test("a link is there too, wherever it leads", async () => {
  const folder = await makeFolder({});
  const { symlink } = await import("node:fs/promises");
  await symlink("nowhere", join(folder, "a.svg"));
  await expect(checkFree(join(folder, "a.svg"), "the drawing")).rejects.toThrow("is there already");
});

test("what cannot be", async () => {
  const folder = await makeFolder({ file: "x" });
  await expect(checkFree("a.png", "the redesign")).rejects.toThrow(
    "--out is “a.png”; the redesign is an SVG file.",
  );
  await expect(writeNew(join(folder, "no/a.svg"), "x")).rejects.toThrow("does not exist");
  await expect(writeNew(join(folder, "file/a.svg"), "x")).rejects.toThrow("does not exist");
});
