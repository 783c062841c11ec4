import { expect, test } from "vitest";
import { compareDrawing, measureDrawing } from "../../../src/analysis/analyse.ts";
import { optionsOf } from "../../../src/analysis/options/rankoptions.ts";
import { chooseChanges, writeStarter } from "../../../src/cli/begin/studystarter.ts";
import { defaultCloth } from "../../../src/colour/cloth.ts";
import { defaultPalette } from "../../../src/content/gallery/palette.ts";
import { schemaLine } from "../../../src/content/gallery/schemastamp.ts";
import { readFigure } from "../../../src/content/study/figurekind.ts";
import { tellReport } from "../../../src/words/optionsreport.ts";
import { parseText } from "../../analysis/fixture.ts";
import { makeOption } from "../../measure/ranked.ts";

const svg = (inner: string) =>
  new TextEncoder().encode(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 60 40">${inner}</svg>`);
const field = (colour: string) => `<path fill="${colour}" d="M0 0h60v40H0z"/>`;
const disc = '<circle cx="30" cy="20" r="10" fill="#701c2b"/>';

async function begin(inner: string, title = "A lighter ferry wheel", flag?: string) {
  const options = { cloth: defaultCloth, palette: defaultPalette, distance: 40 };
  const measure = (await measureDrawing("a.svg", svg(inner), options)).value;
  const report = (await optionsOf("a.svg", svg(inner), options)).value;
  if (!measure || !report) throw new Error("the drawing cannot be measured");
  const [change] = report.options;
  const compared = change && (await compareDrawing("a.svg", svg(inner), change, options)).value;
  const before = compared?.comparison.before;
  return writeStarter({
    ...(before && { before }),
    title,
    ...(flag !== undefined && { flag }),
    original: "original.svg",
    schema: "../a.json",
    measure,
    report: tellReport(report),
  });
}

test("a study that is right as it stands, with its colours and three changes", async () => {
  const { frontMatter, prose, schema, hasChange } = await begin(field("#15244a") + disc);
  const { value, problems } = parseText(`---\n${frontMatter}---\n${prose}`);
  expect([hasChange, problems]).toEqual([true, []]);
  expect(value).toMatchObject({ title: "A lighter ferry wheel", original: "original.svg", status: "open" });
  const lines = frontMatter.split("\n");
  expect(lines[0]).toBe("# yaml-language-server: $schema=.schema.json");
  expect(JSON.parse(schema).allOf).toEqual([{ $ref: "../a.json" }]);
  // The area of the disc is π·10²; the rest of 60 × 40 is field.
  const disc01 = (Math.PI * 100) / 2400;
  const shares = lines.flatMap((line) => /^# {3}"(#[0-9a-f]{6})" .* ([\d.]+) %$/.exec(line)?.slice(1) ?? []);
  expect([shares[0], shares[2]]).toEqual(["#15244a", "#701c2b"]);
  expect(Number(shares[1])).toBeCloseTo(100 * (1 - disc01), 0);
  expect(Number(shares[3])).toBeCloseTo(100 * disc01, 0);
  const changes = lines.filter((line) => /^(?:# )?change: /.test(line));
  expect(changes.map((line) => line.startsWith("#"))).toEqual([false, true, true]);
  for (const line of changes)
    expect(line).toMatch(
      /^(?:# )?change: \{ replace: "#[0-9a-f]{6}", with: "#[0-9a-f]{6}" \} {3}# .+ → .+: clarity \d+ % → \d+ %/,
    );
});

// Families by the plain word: two whites, a yellow and a blue, as any reader would call them.
test("the best change, and the next by other families; none by which the flag is less clear than it is", () => {
  const [white, paper, yellow, blue, green] = (
    [
      ["#ffffff", 100],
      ["#f7f3e8", 100],
      ["#f7c81e", 98],
      ["#1f56a8", 60.4],
      ["#2f8f46", 60],
    ] as const
  ).map(([hex, clarity]) => makeOption({ with: hex, clarity }));
  const report = {
    file: "a.svg",
    clarity: 60.3,
    strength: 50,
    focusClarity: null,
    changeFirst: null,
    reason: "It says why.",
    vanishing: [],
    shades: [],
    notes: [],
  };
  const choose = (options: readonly (typeof white)[], clarity = 60.3) =>
    chooseChanges({ ...report, clarity, options: options.flatMap((option) => option ?? []) }).map(
      (option) => option.with,
    );
  expect(choose([white, paper, yellow, blue, green])).toEqual(["#ffffff", "#f7c81e", "#1f56a8"]);
  expect(choose([white, paper])).toEqual(["#ffffff"]);
  expect(choose([white, paper, yellow, blue], 61)).toEqual(["#ffffff", "#f7c81e"]);
  expect(choose([yellow, blue], 99)).toEqual(["#f7c81e"]);
  expect(choose([])).toEqual([]);
});

// A black disc on white and dark blue. The usual palette has two colours that stand between them: orange is clear of black
// and of white (by hand 53.0 and 48.2, less than dark blue has), green is strong beside white and soft beside black (60.3, 40.1).
test("what gets worse stands beside each change", async () => {
  const { frontMatter } = await begin(
    `${field("#ffffff")}<path fill="#15244a" d="M0 20h60v20H0z"/><circle cx="30" cy="20" r="10" fill="#000000"/>`,
  );
  const changes = frontMatter.split("\n").filter((line) => /^(?:# )?change: /.test(line));
  expect(changes).toHaveLength(3);
  for (const line of changes) expect(line).toMatch(/; (?:gained|better) beside [a-z ]+(?:$|; but )/);
  expect(changes.filter((line) => /; but (?:lost|worse) beside white$/.test(line)).length).toBeGreaterThan(0);
});

test("each of the lines, uncommented, is right", async () => {
  const { frontMatter, prose } = await begin(field("#15244a") + disc);
  const lines = frontMatter.split("\n");
  const changes = lines.flatMap((line, index) => (/^(?:# )?change: /.test(line) ? [index] : []));
  for (const wanted of changes) {
    const other = lines.map((line, index) =>
      changes.includes(index) ? `${index === wanted ? "" : "# "}${line.replace(/^# /, "")}` : line,
    );
    expect(parseText(`---\n${other.join("\n")}---\n${prose}`).problems).toEqual([]);
  }
  // The keys to fill in are right too, all but those that name something this drawing has not.
  const open = frontMatter.replace(/^# (authors|date|tags|credit|symbolism|focus):/gm, "$1:");
  expect(open).not.toBe(frontMatter);
  const filled = open
    .replace("Your Name", "Ines Valcourt")
    .replace("Who drew it", "Ines Valcourt")
    .replace("What the change does to the meaning.", "Gold for the harbour dues.");
  expect(parseText(`---\n${filled}---\n${prose}`).problems).toEqual([]);
  // Left as they are, they are told of, each of them.
  expect(parseText(`---\n${open}---\n${prose}`).problems.map(({ rule }) => rule)).toEqual(
    Array.from({ length: 3 }, () => "study/placeholder"),
  );
});

test("the prose shows the weakest edge", async () => {
  const { prose } = await begin(field("#15244a") + disc);
  expect(readFigure(prose.trim().split("\n").at(-1) ?? "")?.edge).toBe("dark blue / dark red");
});

test("one colour: no change, and it says so", async () => {
  const { frontMatter, prose, hasChange } = await begin(field("#701c2b"));
  expect(hasChange).toBe(false);
  expect(frontMatter).toContain(`\
# One colour: no edges to measure.
# So no change is proposed here. The study is left out of the gallery until one stands in a line such as:
# change: { replace: "#701c2b", with: "#ffffff" }
`);
  const { problems } = parseText(`---\n${frontMatter}---\n${prose}`);
  expect(problems.map(({ rule, reason }) => [rule, reason])).toEqual([
    ["study/missing-key", "A study needs “change”, and it is not there."],
  ]);
});

test.each(["A: b # c", "yes", '"quoted"', "- a", "2026", "{x}", "x".repeat(200), "é ü 旗", "@at", "a'b"])(
  "the title %j is what was meant",
  async (title) => {
    const { frontMatter } = await begin(field("#15244a") + disc, title);
    const { value, problems } = parseText(`---\n${frontMatter}---\n`);
    expect([value?.title, problems]).toEqual([title, []]);
  },
);

test("the flag has its name where it was said, else a line that asks for it", async () => {
  const named = (await begin(field("#15244a") + disc, "A", "The wheel: old # one")).frontMatter;
  expect(parseText(`---\n${named}---\n`).value?.flag).toBe("The wheel: old # one");
  expect(named).not.toMatch(/^# flag:/m);
  const unnamed = (await begin(field("#15244a") + disc)).frontMatter;
  expect(unnamed).toMatch(/^# flag: What the flag is called$/m);
});

test("the line that editors read", () => {
  expect(schemaLine("a/b.json")).toBe("# yaml-language-server: $schema=a/b.json");
});
