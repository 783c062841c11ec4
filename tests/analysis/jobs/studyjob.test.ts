// What a child is told of a study, and how its answer becomes one about the study as it stands.
import { describe, expect, test } from "vitest";
import type { Line } from "../../../src/analysis/jobs/pool.ts";
import { measureStudy, rankChanges } from "../../../src/analysis/jobs/studyjob.ts";
import { fingerprint } from "../../../src/analysis/store/fingerprint.ts";
import { defaultGallery } from "../../../src/content/gallery/galleryfile.ts";
import type { Gallery, Study } from "../../../src/content/study/study.ts";
import { parseStudy } from "../../../src/content/study/studyfile.ts";
import type { Problem } from "../../../src/problem/problem.ts";
import { drawing } from "../../content/folder.ts";
import { origin, writeStudy } from "../fixture.ts";
import { here } from "../here.ts";

const bytes = new TextEncoder().encode(drawing);

function read(text: string, at: Partial<typeof origin> = {}): Study {
  const { value, problems } = parseStudy({ ...origin, ...at }, new TextEncoder().encode(text), new Map());
  if (value === undefined) throw new Error(JSON.stringify(problems));
  return value;
}

/** What a child would be asked, as the store finds it again. */
async function listen(ask: (line: Line) => Promise<unknown>): Promise<string> {
  let asked = "";
  const run: Line["run"] = async (_kind, _file, input) => {
    asked = fingerprint(input);
    return { value: undefined, problems: [] };
  };
  await ask({ run });
  return asked;
}

const askedOf = (study: Study, gallery: Gallery = defaultGallery, drawn = bytes): Promise<string> =>
  listen((line) => measureStudy(line, study, drawn, gallery));

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
  ])("by %s", async (_, text) => {
    expect(await askedOf(read(text))).toBe(await askedOf(plain));
  });

  test("by where the folder lies, what it is called and how it is shown", async () => {
    const moved = read(writeStudy(), { slug: "boat", file: "x/boat/study.md", studyFolder: "/else/boat" });
    expect(await askedOf(moved)).toBe(await askedOf(plain));
  });

  test("by words of the gallery", async () => {
    const gallery = {
      ...defaultGallery,
      title: "x",
      description: "y",
      address: "https://a.example/",
      language: "de",
    };
    expect(await askedOf(plain, gallery)).toBe(await askedOf(plain));
  });

  test("by the note of an option, in the ranking", async () => {
    const ask = async (note: string): Promise<string> => {
      const study = read(writeStudy(`options: [{ replace: "#7a1020", with: "#000000"${note} }]`));
      const { value } = await measureStudy(here, study, bytes, defaultGallery);
      if (value === undefined) throw new Error("not measured");
      return listen((line) => rankChanges(line, value, bytes, defaultGallery));
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
  ])("for %s", async (_, text) => {
    expect(await askedOf(read(text))).not.toBe(await askedOf(plain));
  });

  test.each<[string, Partial<Gallery>]>([
    ["the viewing distance", { viewingDistance: 41 }],
    ["the cloth", { cloth: { black: 5, white: 84 } }],
    ["the palette", { palette: new Map([["gold", "#f4c430"]]) }],
  ])("for %s", async (_, change) => {
    expect(await askedOf(plain, { ...defaultGallery, ...change })).not.toBe(await askedOf(plain));
  });

  test("for one byte of the drawing", async () => {
    const changed = bytes.slice();
    changed[changed.length - 3] = (changed[changed.length - 3] ?? 0) ^ 1;
    expect(await askedOf(plain, defaultGallery, changed)).not.toBe(await askedOf(plain));
  });
});

describe("the answer", () => {
  test("has the study as it stands, and the drawing's own name", async () => {
    const { value } = await measureStudy(here, plain, bytes, defaultGallery);
    expect(value?.study).toBe(plain);
    expect(value?.comparison.before.file).toBe("ferry/original.svg");
    expect(value?.comparison.after.file).toBe("ferry/original.svg");
  });

  test.each([
    ["of the colour", writeStudy('change: { replace: "#123456", with: "#f4c430" }'), "#123456"],
    ["of the part", writeStudy('change: { replace: "#ffffff", with: "#f4c430", only: "#whele" }'), "#whele"],
    ["of the focus, further down", writeStudy("tags: [a]", 'focus: { colour: "#123456" }'), "#123456"],
    ["of a name", writeStudy('names: { "#123456": navy }'), "navy"],
    ["in lines of its own", writeStudy('change:\n  with: "#f4c430"\n  replace: "#123456"'), "#123456"],
  ])("has problems %s where they stand in this study.md", async (_, text, value) => {
    const { problems } = await measureStudy(here, read(text), bytes, defaultGallery);
    expect(problems).toMatchObject([{ file: "ferry/study.md" }]);
    expect(problems[0]).not.toHaveProperty("at");
    const line = text.split("\n")[(problems[0]?.place?.line ?? 0) - 1];
    expect(problems[0]?.sourceLine).toBe(line);
    expect(line).toContain(value);
  });

  test("has problems of the drawing under its name, and of the pool as they are", async () => {
    const problem: Problem = { rule: "svg/text", severity: "warning", file: "", reason: "x" };
    const slow = { ...problem, rule: "study/too-slow", file: "ferry/study.md" };
    const line: Line = { run: async () => ({ value: undefined, problems: [problem, slow] }) };
    expect((await measureStudy(line, plain, bytes, defaultGallery)).problems).toEqual([
      { ...problem, file: "ferry/original.svg" },
      slow,
    ]);
  });

  test("of the ranking has each note at its own option, though one before it could not be measured", async () => {
    const study = read(
      writeStudy(
        'options: [{ replace: "#123456", with: "#000000", note: one }, { replace: "#7a1020", with: "#000000", note: two }, { replace: "#ffffff", with: "#000000" }]',
      ),
    );
    const measured = (await measureStudy(here, study, bytes, defaultGallery)).value;
    if (measured === undefined) throw new Error("not measured");
    const outcome = await rankChanges(here, measured, bytes, defaultGallery);
    expect(outcome.value?.noted.map(({ replace, note }) => [replace, note])).toEqual([
      ["#7a1020", "two"],
      ["#ffffff", undefined],
    ]);
    expect(outcome.value?.report.file).toBe("ferry/original.svg");
    expect(outcome.problems).toMatchObject([
      { rule: "study/colour-absent", file: "ferry/study.md", place: { line: 5 } },
    ]);
  });
});
