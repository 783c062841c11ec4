// npm run bench [-- --json] [-- --every N]: prints every figure of speed that the project claims, as ratios of one run.
import { parseArgs } from "node:util";
import { benchGrowth, benchMeasure, type Ratio } from "./measure.ts";

const { values } = parseArgs({ options: { json: { type: "boolean" }, every: { type: "string" } } });
const measure = await benchMeasure(Number(values.every ?? 1));
const growth = await benchGrowth();

function row(name: string, { median, p90 }: Ratio): string {
  return `  ${name.padEnd(44)}${median.toFixed(2).padStart(8)}${p90.toFixed(2).padStart(8)}`;
}

const lines = [
  `Measuring ÷ one bare rendering, ${measure.files} drawings, bare rendering ${measure.bareMilliseconds.toFixed(1)} ms in the median`,
  `  ${"".padEnd(44)}${"median".padStart(8)}${"p90".padStart(8)}`,
  row("whole", measure.whole),
  row("whole without reads to and near limit", measure.core),
  ...Object.entries(measure.parts).map(([part, ratio]) => row(`  ${part}`, ratio)),
  row(`second rendering (${measure.secondRendering.files} files)`, measure.secondRendering),
  "Growth",
  `  ms a megapixel: ${Object.entries(growth.perMegapixel)
    .map(([height, time]) => `${time.toFixed(0)} at ${height} px`)
    .join(", ")}`,
  `  memory: ${growth.residentOnce.toFixed(0)} MB after one round, ${growth.residentTenTimes.toFixed(0)} MB after eleven`,
];
process.stdout.write(
  `${values.json === true ? JSON.stringify({ measure, growth }, null, 2) : lines.join("\n")}\n`,
);
