import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { checkStudyFiles, type Entry } from "../../src/content/folder/listing.ts";
import { loadGallery } from "../../src/content/folder/loadgallery.ts";
import { defaultPalette } from "../../src/content/gallery/palette.ts";
import { checkProse } from "../../src/content/study/prosecheck.ts";
import { parseStudy } from "../../src/content/study/studyfile.ts";
import { origin, parseText } from "../analysis/fixture.ts";
import { startClock } from "../clock.ts";
import { drawing, harbour, makeFolder } from "./folder.ts";

interface Case {
  readonly file: string;
  readonly attack: string;
  readonly expected: "reject" | "accept" | "strip";
}

const hostile = join(import.meta.dirname, "../hostile");
const manifest: readonly Case[] = JSON.parse(readFileSync(join(hostile, "manifest.json"), "utf8"));
const files = manifest.filter(({ file }) => file.startsWith("md/"));
const rules = (text: string | Uint8Array) => parseText(text).problems.map(({ rule }) => rule);

/** The hostile file with what every study needs added, so that nothing is refused for what is missing. */
function complete(file: string): string {
  const text = readFileSync(join(hostile, file), "utf8");
  const keys = ["original: original.svg", 'change: { replace: "#7a1020", with: "#f4c430" }'];
  if (!/^title:/m.test(text)) keys.push("title: Harbour");
  return text.replace(/^---\n([\s\S]*?)^---$/m, (_, front: string) => `---\n${front}${keys.join("\n")}\n---`);
}

/** A study file cut in two at its second fence. */
function parseSplit(text: string) {
  const [, keys = "", prose = ""] = /^---\n([\s\S]*?)^---\n?([\s\S]*)$/m.exec(text) ?? [];
  const bytes = (part: string) => new TextEncoder().encode(part);
  return parseStudy({ ...origin, file: "ferry/study.yaml" }, bytes(keys), defaultPalette, {
    file: "ferry/prose.md",
    bytes: bytes(prose),
  });
}

/** Why each file must be refused, as a rule: written from the attack that the manifest names. */
const reasons: Readonly<Record<string, string>> = {
  "md/fm-js-engine.md": "study/front-matter-language",
  "md/fm-javascript-engine.md": "study/front-matter-language",
  "md/fm-json.md": "study/front-matter-language",
  "md/fm-unterminated.md": "study/front-matter-unclosed",
  "md/fm-not-map.md": "study/yaml-syntax",
  "md/fm-tabs.md": "study/yaml-tab",
  "md/fm-dup-key.md": "study/duplicate-key",
  "md/fm-alias-cycle.md": "study/yaml-feature",
  "md/fm-merge-key.md": "study/yaml-feature",
  "md/fm-constructor.md": "study/unknown-key",
  "md/fm-hex-number.md": "study/unknown-key",
  "md/fm-hash-colour.md": "study/quote-hash",
  "md/fm-binary-tag.md": "study/yaml-feature",
  "md/fm-huge-int.md": "study/unknown-key",
  "md/fm-permalink-hijack.md": "study/unknown-key",
  "md/fm-permalink-template.md": "study/unknown-key",
  "md/fm-engine-override.md": "study/unknown-key",
  "md/fm-computed.md": "study/unknown-key",
  "md/fm-import.md": "study/wrong-tag",
  "md/fm-svg-traversal.md": "study/unknown-key",
  "md/fm-svg-windows.md": "study/unknown-key",
  "md/fm-svg-encoded.md": "study/unknown-key",
  "md/fm-title-long.md": "study/too-long",
  "md/inv-title-zwsp.md": "study/no-value",
  "md/inv-title-shy.md": "study/no-value",
  "md/inv-title-lrm.md": "study/no-value",
  "md/inv-title-rlm.md": "study/no-value",
  "md/inv-title-alm.md": "study/no-value",
  "md/inv-title-zwj.md": "study/no-value",
  "md/inv-title-wj.md": "study/no-value",
  "md/inv-title-hangul.md": "study/no-value",
  "md/inv-title-halfwidth.md": "study/no-value",
  "md/inv-title-jamo.md": "study/no-value",
  "md/inv-title-tags.md": "study/no-value",
  "md/inv-title-variant.md": "study/no-value",
  "md/inv-title-late-variant.md": "study/no-value",
  "md/inv-title-reserved.md": "study/no-value",
  "md/inv-title-mixed.md": "study/no-value",
  "md/inv-title-braille.md": "study/no-value",
  "md/inv-title-marks.md": "study/no-value",
  "md/inv-title-escape.md": "study/no-value",
  "md/inv-title-nbsp.md": "study/no-value",
  "md/inv-author-blank.md": "study/no-value",
  "md/inv-decision-blank.md": "study/no-value",
  "md/inv-author-zwsp.md": "study/invisible",
  "md/inv-author-rlm.md": "study/invisible",
  "md/inv-author-tags.md": "study/invisible",
  "md/inv-author-zwj.md": "study/invisible",
  "md/inv-tag-filler.md": "study/invisible",
  "md/inv-tag-variant.md": "study/invisible",
  "md/inv-name.md": "study/invisible",
  "md/inv-part.md": "study/invisible",
  "md/inv-note.md": "study/invisible",
  "md/inv-decision.md": "study/invisible",
  "md/inv-symbolism.md": "study/invisible",
  "md/inv-credit-title.md": "study/invisible",
  "md/inv-credit-author.md": "study/invisible",
  "md/inv-credit-source.md": "study/invisible",
  "md/inv-credit-licence.md": "study/invisible",
  "md/inv-formerly.md": "study/invisible",
  "md/inv-status.md": "study/invisible",
  "md/inv-date.md": "study/invisible",
  "md/inv-title-zwnj.md": "study/invisible",
  "md/inv-title-annotation.md": "study/invisible",
  "md/inv-title-separator.md": "study/invisible",
  "md/inv-title-note.md": "study/invisible",
  "md/inv-title-flag.md": "study/invisible",
  "md/inv-title-key.md": "study/invisible",
  "md/inv-title-grapheme.md": "study/invisible",
  "md/inv-title-persian-end.md": "study/invisible",
  "md/date-9999.md": "study/wrong-date",
  "md/date-9999-quoted.md": "study/wrong-date",
  "md/date-2999.md": "study/wrong-date",
  "md/date-0000.md": "study/wrong-date",
  "md/date-plus.md": "study/wrong-date",
  "md/date-last.md": "study/wrong-date",
  "md/date-digits.md": "study/wrong-date",
  "md/date-time.md": "study/wrong-date",
};

describe("study files of the manifest", () => {
  test("the table names every file that must be refused, and the folder holds every file of the manifest", () => {
    expect(Object.keys(reasons).sort()).toEqual(
      files
        .filter(({ expected }) => expected === "reject")
        .map(({ file }) => file)
        .sort(),
    );
    expect(
      readdirSync(join(hostile, "md"))
        .map((name) => `md/${name}`)
        .sort(),
    ).toEqual(files.map(({ file }) => file).sort());
  });

  test.each(files.filter(({ expected }) => expected === "reject"))(
    "$file is refused as it is: $attack",
    ({ file }) => {
      const bytes = readFileSync(join(hostile, file));
      expect(parseText(bytes).value).toBeUndefined();
      expect(rules(bytes).length).toBeGreaterThan(0);
    },
  );

  test.each(Object.entries(reasons))("%s, otherwise complete, is refused for %s", (file, rule) => {
    const { value, problems } = parseText(complete(file));
    expect(value).toBeUndefined();
    const found = new Set(problems.map((problem) => problem.rule));
    // Some of these files use a key of their own for the attack, which is one more reason.
    if (rule !== "study/unknown-key") found.delete("study/unknown-key");
    expect(found).toEqual(new Set([rule]));
    for (const problem of problems)
      expect(problem).toMatchObject({ place: expect.anything(), hint: expect.any(String) });
  });

  // The key `country` is not one of ours, so the value is tried where text may stand: see the next test.
  test.each(files.filter(({ file, expected }) => expected !== "reject" && file !== "md/fm-norway.md"))(
    "$file, otherwise complete, is kept: $attack",
    ({ file }) => {
      const { value, problems } = parseText(complete(file));
      expect(problems.filter(({ severity }) => severity === "error")).toEqual([]);
      expect(value?.body).toBeDefined();
      expect(value?.body).not.toContain("\0");
      expect(value?.title).not.toMatch(/[\u202a-\u202e\u2066-\u2069]/);
    },
  );

  test.each(files.filter(({ file }) => /^md\/(?:ok|md-inv)-/.test(file)))(
    "$file says nothing, or one warning where something is taken out: $attack",
    ({ file, expected }) => {
      const { value, problems } = parseText(complete(file));
      expect(problems.map(({ rule }) => rule)).toEqual(expected === "strip" ? ["study/prose-invisible"] : []);
      if (expected === "strip") expect(value?.body).toMatch(/^The wheel is dark\.\n?$/);
      else expect(complete(file)).toContain(value?.title === "x" ? value.body : value?.title);
    },
  );

  test.each([
    ["md/alike-letters.md", new Array(5).fill("study/mixed-script")],
    ["md/alike-signs.md", new Array(2).fill("study/mixed-script")],
    ["md/link-text.md", ["study/link-text", "study/prose-link"]],
    ["md/link-site.md", new Array(2).fill("study/prose-link")],
  ])("%s is warned of: %s", (file, rules) => {
    const { value, problems } = parseText(complete(file));
    if (value === undefined) throw new Error("it was refused");
    const found = [...problems, ...checkProse(value)].map((problem) => problem.rule);
    expect(found).toEqual(rules);
  });

  // The same keys and prose in study.yaml and prose.md; what is about the fences has no meaning there.
  const fenceless = Object.entries(reasons).filter(([, rule]) => !rule.startsWith("study/front-matter-"));

  test.each(fenceless)("%s as study.yaml is refused too, for %s", (file, rule) => {
    const { value, problems } = parseSplit(complete(file));
    expect(value).toBeUndefined();
    expect(problems.map((problem) => problem.rule)).toContain(rule);
    for (const problem of problems) expect(problem.file).toBe("ferry/study.yaml");
  });

  test.each(files.filter(({ file, expected }) => expected !== "reject" && file.startsWith("md/md-")))(
    "$file as prose.md is kept: $attack",
    ({ file }) => {
      const { value, problems } = parseSplit(complete(file));
      expect(problems.filter(({ severity }) => severity === "error")).toEqual([]);
      expect(value?.body).not.toContain("\0");
      expect(value?.body).toBe(parseText(complete(file)).value?.body);
    },
  );

  test("no is the word no", () => {
    expect(
      parseText(complete("md/fm-norway.md").replace("country: no", "symbolism: no")).value?.symbolism,
    ).toBe("no");
  });

  test.each([
    ["../../../../etc/hostname"],
    ["'C:\\x.svg'"],
    ["'\\\\host\\share\\x.svg'"],
    ['"%2e%2e/x.svg"'],
    ['"a.svg\\0.png"'],
  ])("a path of these files is refused as a drawing too: %s", (path) => {
    const text = `---\ntitle: x\noriginal: ${path}\nchange: { replace: red, with: "#0000ff" }\n---\n`;
    expect(rules(text)).toEqual(["study/original-path"]);
  });

  test.each([
    ["0x00ff00", "study/wrong-type"],
    [".nan", "study/wrong-type"],
    ["1e400", "study/wrong-type"],
    ["#c00", "study/quote-hash"],
  ])("a colour of these files is refused as a colour too: %s", (colour, rule) => {
    const text = `---\ntitle: x\noriginal: a.svg\nchange:\n  with: "#ff0000"\n  replace: ${colour}\n---\n`;
    expect(rules(text)).toEqual([rule]);
  });

  test("a tab is called a tab", () => {
    expect(parseText(readFileSync(join(hostile, "md/fm-tabs.md"))).problems[0]?.reason).toContain("tab");
  });

  test("nothing has been added to every object of the program", () => {
    for (const { file } of files) parseText(complete(file));
    expect(Object.keys(Object.prototype)).toEqual([]);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  test("5 MB of front matter and 10 MB of prose are refused at once", () => {
    // As tests/hostile/generate.mjs writes them.
    const spent = startClock();
    expect(rules(`---\ntitle: x\nlist:\n${"  - x\n".repeat(1e6)}---\nBody\n`)).toEqual(["study/file-size"]);
    expect(rules(`---\ntitle: x\n---\n${"a*".repeat(5e6)}`)).toEqual(["study/file-size"]);
    expect(spent()).toBeLessThan(2000);
  });
});

describe("folders of the manifest", () => {
  const stored = manifest.filter(({ file }) => file.startsWith("tree/study/"));

  test.each(stored)("$file is refused: $attack", async ({ file }) => {
    const name = file.replace("tree/study/", "");
    const root = await makeFolder({
      ...harbour,
      [`studies/ferry/${name}`]: readFileSync(join(hostile, file)),
    });
    const { studies, problems } = await loadGallery(root);
    expect(studies).toEqual([]);
    expect(problems.map(({ rule, file }) => [rule, file])).toEqual([
      ["study/unexpected-file", `${root}/studies/ferry/${name}`],
    ]);
  });

  test("a folder called studies of their whole tree is refused too", async () => {
    const root = await makeFolder({
      "gallery.yaml": "title: x\naddress: https://flags.example/\n",
      "studies/study/page.njk": "x",
    });
    const { studies, problems } = await loadGallery(root);
    expect(studies).toEqual([]);
    expect(problems.map(({ rule }) => rule).sort()).toEqual(["study/study-missing", "study/unexpected-file"]);
  });

  const names = manifest.filter(({ file }) => file.startsWith("tree/names/"));

  test.each(names)("$file is refused: $attack", ({ file }) => {
    const name = file.replace("tree/names/", "");
    const twin = name === "Flag.svg" ? "flag.svg" : "Flag.svg";
    const entries: Entry[] = [name, twin, "study.md"].map((entry) => ({ name: entry, kind: "file" }));
    const problems = checkStudyFiles("ferry", entries).filter((problem) => problem.file === `ferry/${name}`);
    expect(problems).toHaveLength(1);
    expect(problems[0]?.severity).toBe("error");
  });

  test("a name of letters, a space, an emoji and signs gets a name proposed", async () => {
    const root = await makeFolder({ ...harbour, "studies/ferry/a b 🏴 #%23?.svg": drawing });
    const { problems } = await loadGallery(root);
    expect(problems.map(({ hint }) => hint)).toEqual(["Rename the file to: a-b-23.svg"]);
  });
});
