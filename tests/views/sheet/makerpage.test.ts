import { expect, test } from "vitest";
import { formatMakerPath, presentMaker } from "../../../src/views/sheet/makerpage.ts";
import { createFormat } from "../../../src/words/format.ts";
import { gallery, study, studyResult } from "../../publish/sample.ts";

const format = createFormat("en");
const [page] = presentMaker(studyResult, gallery, format);

test("only what is adopted has one, below its study", () => {
  for (const status of ["draft", "open", "declined", "withdrawn"] as const) {
    const other = { ...study, status };
    expect(formatMakerPath(other)).toBeUndefined();
    expect(presentMaker({ ...studyResult, study: other }, gallery, format)).toEqual([]);
  }
  expect([page?.folder, page?.back]).toEqual(["studies/a-square/maker", "../"]);
  expect([page?.flag.src, page?.outline.src]).toEqual(["../redesign.svg", "../outline-redesign.webp"]);
  expect(page?.drawing).toEqual({ address: "../redesign.svg", file: "a-square-redesign.svg" });
  expect(page?.foot).toBe("Flags of the Sound · https://flags.example/sound/studies/a-square/");
});

test("it says that the redesign is an unofficial study, and what was decided", () => {
  expect(page?.unofficial).toMatch(/adopted.* still an unofficial study/);
  expect(page?.frame.description).toContain("unofficial study");
  expect(page?.decision).toBe("Adopted, because it can be seen.");
});

// A field, a square of half its height a quarter from the top, and a stripe of a tenth at the foot: 20 parts divide them all.
test("sizes are whole parts of the height", () => {
  expect([page?.sides, page?.proportions]).toEqual([{ width: "30", height: "20" }, "2:3"]);
  expect(
    page?.built.map((row) =>
      [row.shape, row.colour, row.fromHoist, row.fromTop, row.width, row.height].join(" "),
    ),
  ).toEqual(["Rectangle dark blue 0 0 30 20", "Rectangle yellow 10 5 10 10", "Rectangle white 0 18 30 2"]);
  expect(page?.builtHow.at(-1)).toBe("Whole numbers are parts of which the height has 20.");
});

test("what no parts divide is in percent of the height, and what is left out is counted", () => {
  const construction = {
    width: 1.618033988749,
    shapes: [
      { kind: "ring", hex: "#f4c430", sizes: [0.75, 0.5, 0.50012, 0.25] },
      { kind: "circle", hex: "#000000", sizes: [0.5, 0.5, 0.25, 0] },
    ],
    left: 1,
  } as const;
  const [other] = presentMaker({ ...studyResult, construction }, gallery, format);
  expect(other?.sides).toEqual({ width: "161.8%", height: "4" });
  expect(other?.built.map((row) => [row.fromHoist, row.width, row.height])).toEqual([
    ["75.0%", "50.0% across", "hole 25.0%"],
    ["2", "1 across", "–"],
  ]);
  expect(other?.built[1]?.colour).toBe("#000000");
  expect(other?.builtHow.slice(1)).toEqual([
    "Whole numbers are parts of which the height has 4.",
    "Positions and sizes in % are of the height, rounded.",
    "1 other shape is left out, not plain or too many for this page: the drawing file decides.",
  ]);
  const none = { width: 1.5, shapes: [], left: 3 };
  expect(presentMaker({ ...studyResult, construction: none }, gallery, format)[0]?.builtHow[0]).toBe(
    "No plain shapes could be read from the drawing. The drawing file decides.",
  );
});

// Source: sRGB red under D65 is L* 53.24, a* 80.09, b* 67.20, printed in many tables (tests/colour/space.test.ts); a white is 100, 0, 0.
test("each colour has its bytes, CIELAB under D65 and reflectance", () => {
  const after = studyResult.comparison.after;
  const colours = after.colours.map((paint) =>
    paint.id === "p2" ? { ...paint, hex: "#ff0000" as const } : paint,
  );
  const comparison = { ...studyResult.comparison, after: { ...after, colours } };
  const [red] = presentMaker({ ...studyResult, comparison }, gallery, format);
  expect(red?.colours.map(({ name, hex }) => [name, hex])).toEqual([
    ["dark blue", "#12235c"],
    ["yellow", "#ff0000"],
    ["white", "#ffffff"],
  ]);
  expect(red?.colours[1]).toMatchObject({ rgb: "255 0 0", lab: "53.2 / 80.1 / 67.2", reflectance: "51%" });
  expect(red?.colours[2]).toMatchObject({ rgb: "255 255 255", lab: "100.0 / 0.0 / 0.0", reflectance: "85%" });
});

test("eight colours have room, and how many have none is said", () => {
  const [paint] = studyResult.comparison.after.colours;
  if (paint === undefined) throw new Error("no colour");
  const colours = Array.from({ length: 10 }, (_, at) => ({
    ...paint,
    id: `p${at}`,
    hex: `#00000${at}` as const,
  }));
  const comparison = { ...studyResult.comparison, after: { ...studyResult.comparison.after, colours } };
  const [many] = presentMaker({ ...studyResult, comparison }, gallery, format);
  expect([many?.colours.length, many?.others]).toEqual([8, "2 more colours are on the page of the study."]);
  expect(page?.others).toBeUndefined();
});
