// What a child is told of a study, and how its answer becomes one about the study as it stands.
import { describe, expect, test } from "vitest";
import { bareJob } from "../../../src/analysis/jobs/barejob.ts";
import { runners } from "../../../src/analysis/jobs/job.ts";
import { fingerprint } from "../../../src/analysis/store/fingerprint.ts";
import { defaultGallery } from "../../../src/content/gallery/galleryfile.ts";
import type { Gallery, Study } from "../../../src/content/study/study.ts";
import { parseStudy } from "../../../src/content/study/studyfile.ts";
import type { Problem } from "../../../src/problem/problem.ts";
import { drawing } from "../../content/folder.ts";
import { origin, writeStudy } from "../fixture.ts";

const bytes = new TextEncoder().encode(drawing);

function read(text: string, at: Partial<typeof origin> = {}): Study {
  const { value, problems } = parseStudy({ ...origin, ...at }, new TextEncoder().encode(text), new Map());
  if (value === undefined) throw new Error(JSON.stringify(problems));
  return value;
}

const askedOf = (study: Study, gallery: Gallery = defaultGallery, drawn = bytes): string =>
  fingerprint(bareJob("study", { study, bytes: drawn, gallery }).input);

const plain = read(writeStudy());

describe("nothing is asked anew", () => {
  test.each([
    ["the title", writeStudy("title: Another wheel")],
    ["authors, tags, date", writeStudy("authors: [Ines]", "tags: [wheel]", "date: 2026-01-02")],
    ["the decision", writeStudy("status: adopted", "decision: It reads.")],
    ["credit and symbolism", writeStudy("credit: { licence: CC0-1.0 }", "symbolism: Gold is for grain.")],
    ["the prose", writeStudy().replace("The wheel is dark.", "One could hardly see it.")],
    ["lines before the change", writeStudy().replace("---\n", "---\n# a note\n\n")],
    ["the author's other options", writeStudy('options: [{ replace: "#ffffff", with: "#000000" }]')],
  ])("by %s", (_, text) => {
    expect(askedOf(read(text))).toBe(askedOf(plain));
  });

  test("by where the folder lies, what it is called and how it is shown", () => {
    const moved = read(writeStudy(), { slug: "boat", file: "x/boat/study.md", studyFolder: "/else/boat" });
    expect(askedOf(moved)).toBe(askedOf(plain));
  });

  test("by words of the gallery", () => {
    const gallery = {
      ...defaultGallery,
      title: "x",
      description: "y",
      address: "https://a.example/",
      language: "de",
    };
    expect(askedOf(plain, gallery)).toBe(askedOf(plain));
  });

  test("by the note of an option, in the ranking", async () => {
    const ask = async (note: string): Promise<string> => {
      const study = read(writeStudy(`options: [{ replace: "#7a1020", with: "#000000"${note} }]`));
      const { value } = await runners.study({ study, bytes, gallery: defaultGallery });
      if (value === undefined) throw new Error("not measured");
      const input = { study, comparison: value.comparison, bytes, gallery: defaultGallery };
      return fingerprint(bareJob("rank", input).input);
    };
    expect(await ask(', note: "Too close."')).toBe(await ask(""));
  });
});

describe("it is asked anew", () => {
  test.each([
    ["the new colour", writeStudy('change: { replace: "#7a1020", with: "#f4c431" }')],
    ["the replaced colour", writeStudy('change: { replace: "#ffffff", with: "#f4c430" }')],
    ["the part", writeStudy('change: { replace: "#ffffff", with: "#f4c430", only: "#wheel" }')],
    ["the focus", writeStudy('focus: { select: "#wheel" }')],
  ])("for %s", (_, text) => {
    expect(askedOf(read(text))).not.toBe(askedOf(plain));
  });

  test.each<[string, Partial<Gallery>]>([
    ["the viewing distance", { viewingDistance: 41 }],
    ["the cloth", { cloth: { black: 5, white: 84 } }],
    ["the palette", { palette: new Map([["gold", "#f4c430"]]) }],
  ])("for %s", (_, change) => {
    expect(askedOf(plain, { ...defaultGallery, ...change })).not.toBe(askedOf(plain));
  });

  test("for one byte of the drawing", () => {
    const changed = bytes.slice();
    changed[changed.length - 3] = (changed[changed.length - 3] ?? 0) ^ 1;
    expect(askedOf(plain, defaultGallery, changed)).not.toBe(askedOf(plain));
  });
});

describe("the answer", () => {
  test("has the study as it stands, and the drawing's own name wherever one stands", async () => {
    const input = { study: plain, bytes, gallery: defaultGallery };
    const bare = bareJob("study", input);
    const outcome = bare.restore(await runners.study(bare.input));
    expect(outcome.value?.study).toBe(plain);
    expect(outcome.value?.comparison.before.file).toBe("ferry/original.svg");
    expect(JSON.stringify(outcome)).not.toContain("\\u0000");
    expect(outcome).toEqual(await runners.study(input));
  });

  test.each([
    ["of the colour", writeStudy('change: { replace: "#123456", with: "#f4c430" }')],
    ["of the part", writeStudy('change: { replace: "#ffffff", with: "#f4c430", only: "#whele" }')],
    ["of the focus, further down", writeStudy("tags: [a]", 'focus: { colour: "#123456" }')],
    ["in lines of its own", writeStudy('change:\n  with: "#f4c430"\n  replace: "#123456"')],
  ])("has problems %s where they stand in this study.md", async (_, text) => {
    const study = read(text);
    const input = { study, bytes, gallery: defaultGallery };
    const bare = bareJob("study", input);
    const { problems } = bare.restore(await runners.study(bare.input));
    expect(problems).toEqual((await runners.study(input)).problems);
    expect(problems[0]).toMatchObject({ file: "ferry/study.md" });
    const line = text.split("\n")[(problems[0]?.place?.line ?? 0) - 1];
    expect(problems[0]?.sourceLine).toBe(line);
  });

  test("has problems of the drawing under its name", () => {
    const bare = bareJob("study", { study: plain, bytes, gallery: defaultGallery });
    const problem: Problem = {
      rule: "svg/text",
      severity: "warning",
      file: bare.input.study.originalFile,
      reason: "x",
    };
    expect(bare.restore({ value: undefined, problems: [problem] }).problems).toEqual([
      { ...problem, file: "ferry/original.svg" },
    ]);
  });

  test("of the ranking has each note at its own option, though one before it could not be measured", async () => {
    const study = read(
      writeStudy(
        'options: [{ replace: "#123456", with: "#000000", note: one }, { replace: "#7a1020", with: "#000000", note: two }, { replace: "#ffffff", with: "#000000" }]',
      ),
    );
    const measured = (await runners.study({ study, bytes, gallery: defaultGallery })).value;
    if (measured === undefined) throw new Error("not measured");
    const input = { study, comparison: measured.comparison, bytes, gallery: defaultGallery };
    const bare = bareJob("rank", input);
    const outcome = bare.restore(await runners.rank(bare.input));
    expect(outcome.value?.noted.map(({ replace, note }) => [replace, note])).toEqual([
      ["#7a1020", "two"],
      ["#ffffff", undefined],
    ]);
    expect(outcome.problems).toMatchObject([
      { rule: "study/colour-absent", file: "ferry/study.md", place: { line: 5 } },
    ]);
    expect(outcome).toEqual(await runners.rank(input));
  });

  test("of a drawing alone has its file in the value and in problems", async () => {
    const options = { cloth: defaultGallery.cloth, distance: 40, palette: defaultGallery.palette };
    const texted = new TextEncoder().encode(drawing.replace("<circle", "<text>a</text><circle"));
    const input = { file: "flags/a.svg", bytes: texted, options };
    const { input: bared, restore } = bareJob("survey", input);
    expect(fingerprint(bared)).toBe(fingerprint(bareJob("survey", { ...input, file: "b.svg" }).input));
    expect(restore(await runners.survey(bared))).toEqual(await runners.survey(input));
    const flag = bareJob("flag", input);
    expect(flag.restore(await runners.flag(flag.input))).toEqual(await runners.flag(input));
    const ranked = bareJob("options", input);
    expect(ranked.restore(await runners.options(ranked.input))).toEqual(await runners.options(input));
  });
});
