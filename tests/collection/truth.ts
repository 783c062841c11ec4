// npm run truth: does a figure depend on the renderer or on the resolution, and is what is said of it right? Over all files of
// both open collections:
// (1) labels from resvg against labels from librsvg: the grade of every length of edge;
// (2) 600 against 1200 pixels: shares of colours, and the length in each grade;
// (3) verdicts, options and the focus: judgement.ts; (4) colours that show and are not measured: lost.ts.
import { readdirSync, readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { Resvg } from "@resvg/resvg-js";
import { inspectDrawing } from "../../src/analysis/drawing/inspect.ts";
import type { Viewing } from "../../src/analysis/drawing/viewing.ts";
import { defaultCloth } from "../../src/colour/cloth.ts";
import { measureLooks } from "../../src/measure/measurelooks.ts";
import type { Measure } from "../../src/measure/measurement.ts";
import type { Raster } from "../../src/regions/raster.ts";
import { readDrawing } from "../../src/svg/gate/sanitise.ts";
import { resolveDrawing } from "../../src/svg/instance.ts";
import { checkJudgements, describeJudgements } from "./judgement.ts";
import { countLost } from "./lost.ts";

const folders = ["node_modules/flag-icons/flags/4x3", "node_modules/svg-country-flags/svg"];

export interface Truth {
  readonly files: number;
  /** Share of all edge length, over all files, that has one grade in both renderers. */
  readonly sameGrade: number;
  /** Files with more than a tenth of a flag height of edge that has not, longest first, with the length. */
  readonly differing: readonly { readonly file: string; readonly lengthHeights: number }[];
  /** Share of files in which shares stay within 0.5 points and lengths by grade within 2 % of all edge length. */
  readonly steady: number;
  readonly medianShareMove: number;
  readonly medianGradeMove: number;
  readonly unsteady: readonly {
    readonly file: string;
    readonly shareMove: number;
    readonly gradeMove: number;
    readonly nearLimit: boolean;
  }[];
}

/** Renders with resvg, a renderer that shares no code with the one that measures. */
export async function renderWithResvg(svg: string): Promise<Raster> {
  const picture = new Resvg(svg, { font: { loadSystemFonts: false } }).render();
  return { width: picture.width, height: picture.height, rgba: new Uint8Array(picture.pixels) };
}

/** Measures every `every`th file of both collections four times. */
export async function checkTruth(every = 1): Promise<Truth> {
  const files = folders
    .flatMap((folder) =>
      readdirSync(folder)
        .filter((name) => name.endsWith(".svg"))
        .map((name) => `${folder}/${name}`),
    )
    .filter((_, index) => index % every === 0);
  let same = 0;
  let all = 0;
  const differing: { file: string; lengthHeights: number }[] = [];
  const moves: { file: string; shareMove: number; gradeMove: number; nearLimit: boolean }[] = [];
  for (const file of files) {
    const bytes = readFileSync(file);
    const usual = await measure(bytes, {});
    const other = await measure(bytes, { render: renderWithResvg });
    const agreement = compareGrades(usual, other);
    same += agreement.same;
    all += agreement.all;
    if (agreement.all - agreement.same > 0.1)
      differing.push({ file, lengthHeights: agreement.all - agreement.same });
    const coarse = await measure(bytes, { heightPixels: 600 });
    const fine = await measure(bytes, { heightPixels: 1200 });
    moves.push({
      file,
      shareMove: shareMove(coarse, fine),
      gradeMove: gradeMove(coarse, fine),
      nearLimit: usual.warnings.some((warning) => warning.about === "nearLimit"),
    });
  }
  const unsteady = moves.filter(({ shareMove: share, gradeMove: grade }) => share > 0.005 || grade > 0.02);
  return {
    files: files.length,
    sameGrade: all === 0 ? 1 : same / all,
    differing: differing.sort((a, b) => b.lengthHeights - a.lengthHeights),
    steady: 1 - unsteady.length / files.length,
    medianShareMove: median(moves.map((move) => move.shareMove)),
    medianGradeMove: median(moves.map((move) => move.gradeMove)),
    unsteady,
  };
}

interface Measured extends Measure {
  /** Paint of each id, as declared: the colour seen of an uneven paint differs a little from picture to picture. */
  readonly keys: ReadonlyMap<string, string>;
}

async function measure(bytes: Uint8Array, viewing: Partial<Viewing>): Promise<Measured> {
  const drawing = readDrawing("truth.svg", bytes).value;
  if (drawing === undefined) throw new Error("a drawing of the collection was refused");
  const { table, looks, paints, proportions, warnings } = await inspectDrawing(resolveDrawing(drawing), {
    distance: 40,
    ...viewing,
  });
  const keys = new Map(table.paints.map(({ id }, index) => [id, paints[index]?.key ?? id]));
  return {
    ...measureLooks({ file: "", proportions, distance: 40, warnings }, table, looks, defaultCloth),
    keys,
  };
}

/** Pairs of paints as declared, because the order of ids may differ by a pixel. */
function lengthsByPair({
  keys,
  edges,
}: Measured): ReadonlyMap<string, { readonly length: number; readonly grade: string }> {
  const lengths = new Map<string, { length: number; grade: string }>();
  for (const { a, b, length, grade } of edges) {
    const pair = [keys.get(a), keys.get(b)].sort().join(" ");
    lengths.set(pair, { length: (lengths.get(pair)?.length ?? 0) + length, grade });
  }
  return lengths;
}

/** Length that both measures give the same pair with the same grade; what only one of them has counts against. */
function compareGrades(one: Measured, other: Measured): { readonly same: number; readonly all: number } {
  const a = lengthsByPair(one);
  const b = lengthsByPair(other);
  let same = 0;
  let all = 0;
  for (const pair of new Set([...a.keys(), ...b.keys()])) {
    const x = a.get(pair);
    const y = b.get(pair);
    all += Math.max(x?.length ?? 0, y?.length ?? 0);
    if (x !== undefined && y !== undefined && x.grade === y.grade) same += Math.min(x.length, y.length);
  }
  return { same, all };
}

function shareMove(one: Measured, other: Measured): number {
  const shares = ({ colours, keys }: Measured): Map<string, number> =>
    new Map(colours.map(({ id, share }) => [keys.get(id) ?? id, share]));
  const a = shares(one);
  const b = shares(other);
  return Math.max(
    0,
    ...[...new Set([...a.keys(), ...b.keys()])].map((key) => Math.abs((a.get(key) ?? 0) - (b.get(key) ?? 0))),
  );
}

/** Largest change of the share of edge length in one grade; grades under 2 % in both aside. */
function gradeMove(one: Measure, other: Measure): number {
  const byGrade = ({ edges }: Measure): Map<string, number> => {
    const all = edges.reduce((sum, edge) => sum + edge.length, 0);
    const sums = new Map<string, number>();
    for (const { grade, length } of edges) sums.set(grade, (sums.get(grade) ?? 0) + length / all);
    return sums;
  };
  const a = byGrade(one);
  const b = byGrade(other);
  const grades = [...new Set([...a.keys(), ...b.keys()])].filter(
    (grade) => Math.max(a.get(grade) ?? 0, b.get(grade) ?? 0) >= 0.02,
  );
  return Math.max(0, ...grades.map((grade) => Math.abs((a.get(grade) ?? 0) - (b.get(grade) ?? 0))));
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}

if (process.argv[1]?.endsWith("truth.ts") === true) {
  const { values } = parseArgs({ options: { every: { type: "string" }, json: { type: "boolean" } } });
  const every = Number(values.every ?? 1);
  const truth = await checkTruth(every);
  const judged = await checkJudgements(every);
  const lost = await countLost(every);
  const percent = (value: number): string => `${(100 * value).toFixed(2)} %`;
  const lines = [
    `${truth.files} drawings`,
    `same grade in both renderers: ${percent(truth.sameGrade)} of all edge length`,
    ...truth.differing.map(
      ({ file, lengthHeights }) => `  ${file}  ${lengthHeights.toFixed(2)} flag heights`,
    ),
    `steady from 600 to 1200 pixels: ${percent(truth.steady)} of the drawings`,
    `median move of a share: ${percent(truth.medianShareMove)}, of the length in a grade: ${percent(truth.medianGradeMove)}`,
    ...truth.unsteady.map(
      ({ file, shareMove: share, gradeMove: grade, nearLimit }) =>
        `  ${file}  share ${percent(share)}  grade ${percent(grade)}${nearLimit ? "  near the limit of sight" : ""}`,
    ),
    ...describeJudgements(judged),
    `colours that show and are not measured: ${lost.lost.length} in ${lost.files} drawings`,
  ];
  process.stdout.write(
    values.json === true ? `${JSON.stringify({ truth, judged, lost }, null, 2)}\n` : `${lines.join("\n")}\n`,
  );
}
