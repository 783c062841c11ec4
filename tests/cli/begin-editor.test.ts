// What an editor makes of the files that begin writes: asked of the language server itself.
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { makeFolder } from "../content/folder.ts";
import { startServer } from "./languageserver.ts";
import { runHere } from "./run.ts";

const flag =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 60 40"><path fill="#15244a" d="M0 0h60v40H0z"/><circle cx="30" cy="20" r="10" fill="#701c2b"/></svg>';
const drawn = ["dark blue", '"#15244a"', "dark red", '"#701c2b"'];

test("colours are offered by name, in study.yaml and in front matter, and hex is right as well", async () => {
  const root = await makeFolder({
    "gallery.yaml": 'title: x\naddress: https://flags.example/\npalette: { chalk: "#fefefe" }\n',
    "a.svg": flag,
  });
  const begin = (slug: string, ...more: readonly string[]) =>
    runHere(root, "begin", slug, "--original", "a.svg", ...more);
  expect([(await begin("a", "--yaml")).status, (await begin("b")).status]).toEqual([0, 0]);
  // What it wrote beside the study is nobody's mistake.
  expect(await runHere(root, "check")).toMatchObject({
    status: 0,
    messages: "0 errors, 0 warnings; 2 good studies.\n",
  });
  const open = await startServer(root);
  const yaml = await readFile(join(root, "studies/a/study.yaml"), "utf8");
  const whole = await readFile(join(root, "studies/b/study.md"), "utf8");
  const change = (text: string) =>
    text.replace(/^change: .*$/m, (line) => line.replace(/with: "[^"]*"/, 'with: "|"'));
  for (const [path, text, language] of [
    ["studies/a/study.yaml", yaml, "yaml"],
    ["studies/b/study.md", whole, "markdown"],
  ] as const) {
    const { offered } = await open(path, change(text), language);
    expect(offered).toEqual(expect.arrayContaining([...drawn, "chalk", "gold", "rebeccapurple"]));
    // The gallery has a palette of its own, in which there is no such name.
    expect(offered).not.toContain("dark green");
    const replace = await open(
      path,
      text.replace(/^change: \{ replace: "[^"]*"/m, 'change: { replace: "|"'),
      language,
    );
    expect(replace.offered).toEqual(drawn);
    const focus = await open(path, text.replace(/^status: .*$/m, 'focus: { colour: "|" }'), language);
    expect(focus.offered).toEqual(drawn);
    const option = await open(
      path,
      text.replace(/^status: .*$/m, "options:\n  - replace: |\n    with: gold"),
      language,
    );
    expect(option.offered).toEqual(drawn);
    // As it was written there is nothing to tell of the keys, hex and all.
    const end = text.split("\n").indexOf("---", 1) + 1 || Number.POSITIVE_INFINITY;
    const written = (told: readonly string[]) => told.filter((one) => Number.parseInt(one, 10) <= end);
    expect(written((await open(path, `${text}|`, language)).told)).toEqual([]);
    const wrong = await open(path, text.replace(/^status: open/m, "status: opne|"), language);
    expect(written(wrong.told).join()).toMatch(/^\d+ Value is not accepted. Valid values: "draft", "open"/);
  }
});

test("the other files of a gallery, by the line that begin writes or that the guide tells to write", async () => {
  const root = await makeFolder({ "a.svg": flag });
  expect((await runHere(root, "begin", "a", "--original", "a.svg")).status).toBe(0);
  const open = await startServer(root);
  const settings = await readFile(join(root, "gallery.yaml"), "utf8");
  expect(await open("gallery.yaml", `${settings}viewing|`)).toMatchObject({
    offered: expect.arrayContaining(["viewingDistance", "palette", "terms"]),
  });
  expect((await open("gallery.yaml", `${settings}adress: x|`)).told.join()).toMatch(/adress is not allowed/);
  const guide = await readFile(join(import.meta.dirname, "../../content/pages/guide/gallery.md"), "utf8");
  const line = (name: string) => guide.match(new RegExp(`\`\`\`yaml ${name}\\.yaml\\n(# .*\\n)`))?.[1] ?? "";
  expect((await open("theme.yaml", `${line("theme")}text: |`)).offered).toEqual([
    "Source Serif 4",
    "Source Sans 3",
  ]);
  const words = await open("words.yaml", `${line("words")}edges.where: Where\nverdict.|`);
  expect(words.offered).toEqual(expect.arrayContaining(["verdict.change"]));
  expect((await open("words.yaml", `${line("words")}edges.were: Where|`)).told.join()).toMatch(
    /edges.were is not allowed/,
  );
});
