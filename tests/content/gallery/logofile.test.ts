import { expect, test } from "vitest";
import { loadLogo } from "../../../src/content/gallery/logofile.ts";
import { drawing } from "../folder.ts";
import { type Files, inFolder } from "../rules/making.ts";

const load = (files: Files) =>
  inFolder(files, async (root) => {
    const { value, problems } = await loadLogo(root, "content");
    const text = value && [value.file, Buffer.from(value.bytes).toString()];
    return [text, problems.map(({ rule, severity, file, hint }) => [rule, severity, file, hint])];
  });

test("no file, no logo; a logo in studies and flags is none of the gallery's", async () => {
  expect(await load({ "gallery.yaml": "", "flags/logo.svg": drawing })).toEqual([undefined, []]);
});

test("the bytes of logo.svg, whatever they are; other files beside it are the author's", async () => {
  expect(await load({ "logo.svg": drawing, "logo.png": "" })).toEqual([["content/logo.svg", drawing], []]);
  expect(await load({ "logo.svg": "<svg" })).toEqual([["content/logo.svg", "<svg"], []]);
});

test("a logo under another name is told how it is called", async () => {
  const name = (file: string, hint: string) => ["site/logo-name", "warning", `content/${file}`, hint];
  const files = { "Logo.SVG": drawing, "logo.png": "", "logo.md": "", "logotype.svg": "", "logo.": "" };
  const save = "Save the logo as SVG beside gallery.yaml: logo.svg";
  expect(await load({ "Logo.SVG": drawing, "logo.png": "", "logotype.svg": "", "logo.": "" })).toEqual([
    undefined,
    [name("Logo.SVG", "Rename it to: logo.svg"), name("logo.png", save)],
  ]);
  expect((await load({ ...files, "logo.svg": drawing }))[1]).toEqual([]);
});

test("a link, a folder and a file that is too large are no logo", async () => {
  const rules = async (files: Files) => {
    const [value, problems] = await load(files);
    return [value, (problems as string[][]).map(([rule, , file]) => [rule, file])];
  };
  const told = (rule: string) => [undefined, [[rule, "content/logo.svg"]]];
  expect(await rules({ "secret.svg": drawing, "logo.svg": "→secret.svg" })).toEqual(told("study/link"));
  expect(await rules({ "logo.svg/a.txt": "" })).toEqual(told("study/not-a-file"));
  expect(await rules({ "logo.svg": " ".repeat(512 * 1024 + 1) })).toEqual(told("study/drawing-size"));
});
