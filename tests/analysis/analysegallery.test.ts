import { unlinkSync } from "node:fs";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { analyseGallery, type RunOptions } from "../../src/analysis/analysegallery.ts";
import { type Line, Pool } from "../../src/analysis/jobs/pool.ts";
import { drawing, harbour, makeFolder } from "../content/folder.ts";
import { writeStudy } from "./fixture.ts";

const slow = {
  rule: "study/too-slow",
  severity: "error",
  file: "a.svg",
  reason: "It took too long.",
} as const;

// Each test computes whole galleries, which takes its time on a busy machine.
describe("analyseGallery", { timeout: 30_000 }, () => {
  // One pool for all, so that not every test has to start children.
  const line = new Pool();
  afterAll(() => line.close());
  const analyse = (folder: string, options: RunOptions = {}) => analyseGallery(folder, { line, ...options });

  test("computes every study", async () => {
    const { gallery, studies, problems } = await analyse(await makeFolder(harbour));
    expect(problems).toEqual([]);
    expect(gallery.title).toBe("Flags of the Sound");
    expect(studies.map(({ study, change }) => [study.slug, change])).toEqual([
      ["ferry", { replace: "#7a1020", with: "#f4c430" }],
    ]);
  });

  test("a logo is judged as a drawing; a bad one is named with its place and costs nothing else", async () => {
    const logo = drawing.replace("<circle", '<text x="1">a</text><circle');
    const shown = await analyse(await makeFolder({ ...harbour, "logo.svg": logo }));
    expect(shown.problems).toMatchObject([{ rule: "svg/text", file: expect.stringMatching(/\/logo\.svg$/) }]);
    expect(shown.gallery.logo).toMatchObject({ width: 3, height: 2 });
    expect(shown.gallery.logo?.drawing).not.toContain("text");
    const bad = logo.replace("<text", '<use href="https://flags.example/a.svg#b"/><text');
    const without = await analyse(await makeFolder({ ...harbour, "logo.svg": bad }));
    expect([without.gallery.logo, without.studies.length]).toEqual([undefined, 1]);
    const [problem] = without.problems.filter(({ severity }) => severity === "error");
    expect(problem).toMatchObject({ rule: "svg/reference", place: { line: 1 } });
  });

  test("the drawings that pages show are measured; a bad one is left out", async () => {
    const show = (name: string) => `::figure{drawing="${name}"}\n\n`;
    const page = `---\ntitle: A\n---\n${["own.svg", "torn.svg", "/flags/a.svg"].map(show).join("")}`;
    const own = { "pages/own.svg": drawing, "pages/torn.svg": "<svg", "pages/unseen.svg": drawing };
    const folder = await makeFolder({ ...harbour, ...own, "pages/a.md": page, "flags/a.svg": drawing });
    const { drawings, problems } = await analyse(folder);
    expect([...(drawings ?? [])].map(([path, { measure }]) => [path, measure.clarity])).toEqual([
      ["flags/a.svg", 100],
      ["pages/own.svg", 100],
    ]);
    expect(problems.filter(({ file }) => file.endsWith("torn.svg"))).toMatchObject([{ severity: "warning" }]);
  });

  test("leaves a bad study out, names it and goes on with the rest", async () => {
    const folder = await makeFolder({
      ...harbour,
      "studies/absent/study.md": writeStudy('change: { replace: "#123456", with: "#f4c430" }'),
      "studies/absent/original.svg": drawing,
      "studies/broken/study.md": writeStudy(),
      "studies/broken/original.svg": "<svg",
      "studies/empty/study.md": writeStudy(),
      "studies/empty/original.svg": '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"/>',
    });
    const { studies, problems } = await analyse(folder);
    expect(studies.map(({ study }) => study.slug)).toEqual(["ferry"]);
    const rulesBy = new Map(
      problems.map(({ file, rule }) => [/(absent|broken|empty)/.exec(file)?.[1], rule]),
    );
    expect(rulesBy).toEqual(
      new Map([
        ["absent", "study/colour-absent"],
        ["broken", "svg/not-well-formed"],
        ["empty", "study/nothing-drawn"],
      ]),
    );
    expect(problems.map(({ file }) => file)).toEqual(problems.map(({ file }) => file).sort());
  });

  test("a warning does not leave a study out", async () => {
    const folder = await makeFolder({
      ...harbour,
      "studies/ferry/original.svg": drawing.replace("<circle", "<text>a</text><circle"),
    });
    const { studies, problems } = await analyse(folder);
    expect(studies).toHaveLength(1);
    expect(problems.map(({ rule, severity }) => [rule, severity])).toEqual([["svg/text", "warning"]]);
  });

  test("drafts are computed only when asked for", async () => {
    const folder = await makeFolder({
      ...harbour,
      "studies/ferry/study.md": writeStudy("status: draft"),
    });
    expect((await analyse(folder)).studies).toEqual([]);
    expect((await analyse(folder, { drafts: true })).studies).toHaveLength(1);
  });

  test("a drawing that goes after it was found leaves its own study out, and stops no other", async () => {
    const folder = await makeFolder({
      ...harbour,
      "studies/zeal/study.md": writeStudy(),
      "studies/zeal/original.svg": drawing,
    });
    // The others are opened once the first is measured: then the drawing of one of them is gone.
    const { studies, leftOut, problems } = await analyse(folder, {
      first: "ferry",
      onMeasured: (result) => {
        if (result?.study.slug === "ferry") unlinkSync(join(folder, "studies/zeal/original.svg"));
      },
    });
    expect([studies.map(({ study }) => study.slug), leftOut]).toEqual([["ferry"], ["zeal"]]);
    expect(problems).toMatchObject([
      { rule: "study/unreadable", severity: "error", file: expect.stringMatching(/zeal\/original\.svg$/) },
    ]);
  });

  test("the figures of a study do not depend on what stands beside it", async () => {
    const alone = await analyse(await makeFolder(harbour));
    const among = await analyse(
      await makeFolder({
        ...harbour,
        "studies/another/study.md": writeStudy('change: { replace: "#ffffff", with: "#f4c430" }'),
        "studies/another/original.svg": drawing,
      }),
    );
    const ferry = among.studies.find(({ study }) => study.slug === "ferry");
    // The two galleries lie in folders of their own; nothing but their names may differ.
    const plain = (value: unknown): string => JSON.stringify(value).replaceAll(/counterchange-test-\w+/g, "");
    expect(plain(ferry?.comparison)).toBe(plain(alone.studies[0]?.comparison));
    expect(ferry?.drawings).toEqual(alone.studies[0]?.drawings);
  });

  test("the folders that are left out are named, good ones and drafts are not", async () => {
    const folder = await makeFolder({
      ...harbour,
      "studies/bad/study.md": writeStudy("status: x"),
      "studies/Capital/study.md": writeStudy(),
      "studies/draft/study.md": writeStudy("status: draft"),
      "studies/draft/original.svg": drawing,
      "studies/notes.txt": "x",
      "studies/torn/study.md": writeStudy(),
      "studies/torn/original.svg": "<svg",
    });
    expect((await analyse(folder)).leftOut).toEqual(["Capital", "bad", "torn"]);
  });

  test("what the page will leave out of the prose is a problem here, a figure only where there are edges", async () => {
    const prose = '\n::figure{edge="white / pink"}\n\n![x](y)\n';
    const folder = await makeFolder({
      ...harbour,
      "studies/ferry/study.md": writeStudy() + prose,
      "studies/torn/study.md": writeStudy() + prose,
      "studies/torn/original.svg": "<svg",
    });
    const { studies, problems } = await analyse(folder);
    expect(studies).toHaveLength(1);
    const seen = problems.map(({ file, rule }) => `${/(ferry|torn)/.exec(file)?.[1]} ${rule}`);
    expect(seen.sort()).toEqual([
      "ferry study/figure",
      "ferry study/image",
      "torn study/image",
      "torn svg/not-well-formed",
    ]);
  });

  test("an option that the drawing cannot follow leaves the study out", async () => {
    const folder = await makeFolder({
      ...harbour,
      "studies/ferry/study.md": writeStudy('options: [{ replace: "#999999", with: white }]'),
    });
    const { studies, leftOut, problems } = await analyse(folder);
    expect([studies, leftOut]).toEqual([[], ["ferry"]]);
    expect(problems).toMatchObject([{ rule: "study/colour-absent", place: { line: 5 } }]);
  });

  test.each([
    ["stopped", () => Promise.resolve({ value: undefined, problems: [slow] })],
    ["a fault of ours", () => Promise.reject(new Error("a fault"))],
  ])("a study whose options cannot be ranked is published without them: %s", async (_, answer) => {
    const pool = new Pool();
    const run = (...job: Parameters<Line["run"]>) => (job[0] === "rank" ? answer() : pool.run(...job));
    try {
      const line = { run: run as Line["run"] };
      const { studies, leftOut, problems } = await analyse(await makeFolder(harbour), { line });
      expect([studies.length, leftOut]).toEqual([1, []]);
      expect(studies[0]).not.toHaveProperty("ranking");
      expect(problems.map(({ severity }) => severity)).toEqual(["warning"]);
      expect(problems[0]?.reason).toMatch(/^The other single changes were not ranked\. /);
    } finally {
      pool.close();
    }
  });

  test("the survey has the originals and the flags beside them; a broken flag costs nothing", async () => {
    const folder = await makeFolder({
      ...harbour,
      "flags/pale.svg": drawing.replace("#7a1020", "#fcfcd0"),
      "flags/torn.svg": "<svg",
    });
    const { studies, survey, problems } = await analyse(folder);
    expect(studies).toHaveLength(1);
    expect(survey?.entries.map(({ flag }) => flag.file)).toEqual([
      "flags/pale.svg",
      "studies/ferry/original.svg",
    ]);
    expect(survey?.failed.map(({ file }) => file)).toEqual(["flags/torn.svg"]);
    expect(problems.map(({ rule, severity }) => [rule, severity])).toEqual([
      ["svg/not-well-formed", "warning"],
    ]);
    expect(studies[0]?.ranking?.report.options.length).toBeGreaterThan(10);
    expect(studies[0]?.likeness?.nearest.map(({ file }) => file)).toEqual(["flags/pale.svg"]);
  });

  test("the study that is asked for is measured before any other is begun; each is told of before its options", async () => {
    const folder = await makeFolder({
      ...harbour,
      "studies/anchor/study.md": writeStudy(),
      "studies/anchor/original.svg": drawing,
      "studies/broken/study.md": writeStudy(),
      "studies/broken/original.svg": "<svg",
    });
    const told: [string | undefined, boolean, number][] = [];
    const onMeasured: RunOptions["onMeasured"] = (result, { gallery }, left) => {
      expect(gallery.title).toBe("Flags of the Sound");
      told.push([result?.study.slug, result?.ranking !== undefined, left]);
    };
    const { studies } = await analyse(folder, { first: "ferry", onMeasured });
    expect(told[0]).toEqual(["ferry", false, 2]);
    expect(told.map(([slug]) => String(slug)).sort()).toEqual(["anchor", "ferry", "undefined"]);
    expect(told.map(([, , left]) => left)).toEqual([2, 1, 0]);
    expect(studies.map(({ study }) => study.slug)).toEqual(["anchor", "ferry"]);
  });

  test("the first may be one that is not there, or that cannot be measured: the others go on", async () => {
    const folder = await makeFolder({
      ...harbour,
      "studies/broken/study.md": writeStudy(),
      "studies/broken/original.svg": "<svg",
    });
    for (const first of ["none", "broken"])
      expect((await analyse(folder, { first })).studies.map(({ study }) => study.slug)).toEqual(["ferry"]);
  });

  test("tells how many studies are done", async () => {
    const told: string[] = [];
    const onProgress = (done: number, total: number) => void told.push(`${done}/${total}`);
    await analyse(
      await makeFolder({
        ...harbour,
        "studies/another/study.md": writeStudy(),
        "studies/another/original.svg": drawing,
      }),
      { onProgress },
    );
    expect(told).toEqual(["1/2", "2/2"]);
  });

  test("compares with a folder that the gallery names: a near one is told of, a broken one stops nothing", async () => {
    const folder = await makeFolder({
      ...harbour,
      "gallery.yaml": `${harbour["gallery.yaml"]}compareWith: old flags\n`,
      // What the study turns its field into, a shade away, and something else altogether.
      "old flags/Their Ferry.svg": drawing.replace("#7a1020", "#f2c62c"),
      "old flags/plain.svg": drawing.replace("#7a1020", "#0b7a3b"),
      "old flags/torn.svg": "<svg",
    });
    const { studies, survey, problems } = await analyse(folder);
    expect(studies[0]?.likeness).toMatchObject({
      compared: 2,
      nearest: [
        { file: "old flags/Their Ferry.svg", origin: "collection", orientation: "as it is" },
        { file: "old flags/plain.svg", origin: "collection" },
      ],
    });
    // It is compared with and never published: the survey does not know of it.
    expect(survey?.entries.map(({ flag }) => flag.file)).toEqual(["studies/ferry/original.svg"]);
    expect(problems.map(({ rule, severity }) => `${severity} ${rule}`).sort()).toEqual([
      "warning study/likeness",
      "warning svg/not-well-formed",
    ]);
  });
});
