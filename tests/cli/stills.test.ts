import { readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import sharp from "sharp";
import { expect, test, vi } from "vitest";
import { makeFolder } from "../content/folder.ts";
import { rightDrawing, rightGallery, rightSeries, rightStudy } from "../content/mistakes.ts";
import { runHere } from "./run.ts";

vi.setConfig({ testTimeout: 120_000 });

const content = {
  "content/gallery.yaml": rightGallery,
  "content/studies/ferry/study.md": rightStudy,
  "content/studies/ferry/original.svg": rightDrawing,
  "content/series/quay.md": rightSeries,
};
const small = ["--size", "640x360"];

test("a study has a folder of its own; what is there is never overwritten", async () => {
  const root = await makeFolder(content);
  const first = await runHere(root, "stills", "ferry", ...small);
  expect([first.status, first.messages]).toEqual([0, ""]);
  const folder = join(root, "stills/ferry");
  const names = await readdir(folder);
  expect(first.data).toContain(`${names.length - 1} pictures and script.md: stills/ferry`);
  expect(names.slice(0, 2)).toEqual(["01-the-flag.png", "02-what-has-to-be-seen.png"]);
  expect(names).toEqual(expect.arrayContaining(["swap.webp", "thumbnail.png", "ruler.svg", "script.md"]));
  const { width, height } = await sharp(join(folder, "01-the-flag.png")).metadata();
  expect([width, height]).toEqual([640, 360]);

  await writeFile(join(folder, "script.md"), "mine");
  const again = await runHere(root, "stills", "ferry", ...small);
  expect(again.status).toBe(2);
  expect(again.messages).toContain("is there already, and nothing is overwritten");
  expect(await readFile(join(folder, "script.md"), "utf8")).toBe("mine");
});

test("a series in short, with what goes with each study", async () => {
  const root = await makeFolder(content);
  const { status } = await runHere(root, "stills", "--series", "quay", "--out", "lesson", ...small);
  expect(status).toBe(0);
  const names = await readdir(join(root, "lesson/quay"));
  expect(names).toEqual(
    expect.arrayContaining(["01-the-opening.png", "06-ferry-the-price.png", "ferry-swap.webp", "script.md"]),
  );
  expect(await readFile(join(root, "lesson/quay/script.md"), "utf8")).toMatch(
    /Say: Which of these changes would you make\?\n$/,
  );
});

test("what cannot be made is said before anything is written", async () => {
  const root = await makeFolder({
    ...content,
    "content/studies/lost/study.md": rightStudy.replace("original.svg", "gone.svg"),
  });
  const ask = async (...words: readonly string[]) => {
    const { status, messages } = await runHere(root, "stills", ...words);
    return [status, messages.split("\n")[0]];
  };
  expect(await ask()).toEqual([2, "stills needs a study or a series."]);
  expect(await ask("ferry", "--series", "quay")).toEqual([2, "stills takes studies or a series, not both."]);
  expect(await ask("fery", ...small)).toEqual([2, "There is no study “fery”."]);
  expect(await ask("--series", "quai", ...small)).toEqual([2, "There is no series “quai”."]);
  expect((await ask("lost", ...small))[0]).toBe(1);
  expect((await ask("ferry", "--size", "20x10"))[0]).toBe(2);
  expect((await ask("ferry", "--out", "content/stills"))[0]).toBe(2);
  expect(await readdir(root)).toEqual(["content"]);
});
