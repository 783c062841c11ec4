import { describe, expect, test } from "vitest";
import { measureStudy, rankChanges } from "../../../src/analysis/jobs/studyjob.ts";
import { defaultGallery } from "../../../src/content/gallery/galleryfile.ts";
import { disc, drawing, field } from "../drawing.ts";
import { parseText, writeStudy } from "../fixture.ts";
import { here } from "../here.ts";

const bytes = drawing(field("#141414") + disc("#c8202f"));

async function rankText(text: string, original = bytes) {
  const { value: study } = parseText(text);
  const analysed =
    study === undefined ? undefined : await measureStudy(here, study, original, defaultGallery);
  if (analysed?.value === undefined) throw new Error("the study could not be computed");
  return { result: analysed.value, ...(await rankChanges(here, analysed.value, original, defaultGallery)) };
}

describe("the ranking of a study", () => {
  test("says where the author's change stands", async () => {
    const { value, result } = await rankText(writeStudy('change: { replace: "#c8202f", with: "yellow" }'));
    const options = value?.report.options ?? [];
    const own = options.find(({ replace, name }) => replace === "#c8202f" && name === "yellow");
    expect(own).toBeDefined();
    expect(own?.clarity).toBeCloseTo(result.comparison.clarity[1] ?? Number.NaN, 6);
    expect(value?.standing).toMatchObject({ place: 1, total: options.length, behindBest: 0 });
    expect(value?.standing?.lost).toBe(0);
    expect(value?.standing?.level).toBeGreaterThan(1);
  });

  test("a colour that is none of the options is counted with them", async () => {
    const { value } = await rankText(writeStudy('change: { replace: "#c8202f", with: "#3a0a10" }'));
    const options = value?.report.options ?? [];
    expect(value?.standing?.total).toBe(options.length + 1);
    expect(value?.standing?.behindBest).toBeGreaterThan(1);
  });

  test("an option whose redesign shows what is not measured is left out, with its place", async () => {
    const white = field("#ffffff") + disc("#c8202f");
    const faint = `<rect x="1" y="1" width="7" height="18" fill="#fefefe" opacity="0.4"/>`;
    const { value, problems } = await rankText(
      writeStudy(
        'change: { replace: "#c8202f", with: "#000000" }',
        'options: [{ replace: "#ffffff", with: "#f1c40f", note: "Sunny." }, { replace: "#c8202f", with: "#1b2a5c" }]',
      ),
      drawing(white + faint),
    );
    expect(problems.map(({ rule, severity, place }) => [rule, severity, place?.line])).toEqual([
      ["study/colour-lost", "error", 5],
    ]);
    expect(value?.noted.map(({ name }) => name)).toEqual(["dark blue"]);
  });

  test("the author's other options are measured, with their notes and drawings", async () => {
    const { value, problems } = await rankText(
      writeStudy(
        'change: { replace: "#c8202f", with: "yellow" }',
        'options: [{ replace: "#141414", with: "#ffffff", note: "Too plain." }, { replace: "#c8202f", with: "#123456", only: circle }]',
      ),
    );
    expect(problems).toEqual([]);
    expect(value?.noted).toMatchObject([
      {
        replace: "#141414",
        with: "#ffffff",
        name: "white",
        note: "Too plain.",
        clarity: 100,
        verdict: "clearer",
        price: [],
      },
      { replace: "#c8202f", with: "#123456", only: "circle", name: "dark blue" },
    ]);
    expect(value?.noted[0]?.standing?.place).toBe(1);
    expect(value?.noted[1]).not.toHaveProperty("note");
    expect(value?.noted[0]?.drawing).toContain("Unofficial study");
    expect(value?.noted[0]?.verdict).toBe("clearer");
  });

  test("an option that cannot be measured is left out, its problem placed in study.md", async () => {
    const { value, problems } = await rankText(
      writeStudy(
        'change: { replace: "#c8202f", with: "yellow" }',
        'options: [{ replace: "#00ff00", with: "white" }, { replace: "#141414", with: "#ffffff" }]',
      ),
    );
    expect(value?.noted.map(({ replace }) => replace)).toEqual(["#141414"]);
    expect(problems).toMatchObject([
      { rule: "study/colour-absent", file: "ferry/study.md", place: { line: expect.any(Number) } },
    ]);
  });

  test("what is wrong with the drawing is not said again for every option", async () => {
    const faint = drawing(`${field("#141414")}${disc("#c8202f")}<script>1</script>`);
    const { problems } = await rankText(
      writeStudy(
        'change: { replace: "#c8202f", with: "yellow" }',
        'options: [{ replace: "#141414", with: "#ffffff" }, { replace: "#141414", with: "#fcd20f" }]',
      ),
      faint,
    );
    expect(problems).toEqual([]);
  });

  test("one colour: nowhere to stand", async () => {
    const { value } = await rankText(
      writeStudy('change: { replace: "#c8202f", with: "yellow" }'),
      drawing(field("#c8202f")),
    );
    expect(value).toMatchObject({ standing: null, noted: [], report: { options: [] } });
  });
});
