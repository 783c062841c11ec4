import { expect, test } from "vitest";
import { parseGallery } from "../../../src/content/gallery/galleryfile.ts";
import { formatProblems } from "../../../src/problem/problemtext.ts";
import { printStudy } from "../../analysis/fixture.ts";

const printGallery = (text: string): string =>
  formatProblems(parseGallery("gallery.yaml", new TextEncoder().encode(text)).problems);

test("a tag with a hash, in brackets", () => {
  expect(printStudy("tags: [#charge, #dark]")).toContain('Put it in quotes: tags: ["#charge", "#dark"]');
});

test("a quote twice at the end", () => {
  expect(printStudy('title: "Heron""')).toContain('The " behind Heron ends the text.');
});

test("a gallery.yaml between lines of three hyphens", () => {
  const keys = "title: Flags of the Sound\naddress: https://flags.example/\n";
  expect(printGallery(`---\n${keys}`)).toBe("");
  expect(printGallery(`---\n${keys}---\n`)).toBe(`\
gallery.yaml:4:1  error  “---” would begin a second YAML document.  study/yaml-feature
    ---
    ^^^
    Delete the lines ---.`);
  expect(printGallery("---\n---\n")).toBe(`\
gallery.yaml:1:1  error  Lines of the form “key: value” belong here.  study/not-a-map
    ---
    ^^^
    Delete the lines ---.
    Begin, for example, with: title: Flags of the Sound`);
});

test("one message for an anchor without a value", () => {
  expect(printStudy("title: &Heron").match(/ {2}error {2}/g)).toHaveLength(1);
});
