// npm run bench [-- --json] [-- --every N] [-- --serve] [-- --gallery N [--flags F] [--broken M] [--serve]]: prints every figure of
// speed that the project claims, as ratios of one run; of a server in milliseconds of this machine. --serve: those alone.
// --gallery: a gallery of N invented studies of F flags alone, M of them broken, in seconds and megabytes; with --serve how soon an
// edit of it shows.
import { parseArgs } from "node:util";
import { benchGallery, galleryLines } from "./gallery.ts";
import { benchGrowth, benchMeasure, type Ratio } from "./measure.ts";
import { benchServe, type ServeBench } from "./serve.ts";
import { benchSurvey } from "./survey.ts";

const { values } = parseArgs({
  options: {
    json: { type: "boolean" },
    every: { type: "string" },
    serve: { type: "boolean" },
    gallery: { type: "string" },
    broken: { type: "string" },
    flags: { type: "string" },
  },
});
const studies = values.gallery === undefined ? undefined : Number(values.gallery);
if (studies !== undefined && values.serve !== true) {
  const found = await benchGallery({
    studies,
    broken: Number(values.broken ?? 0),
    ...(values.flags !== undefined && { flags: Number(values.flags) }),
  });
  process.stdout.write(
    `${values.json === true ? JSON.stringify({ gallery: found }, null, 2) : galleryLines(found).join("\n")}\n`,
  );
  process.exit();
}
const serve = await benchServe(studies);
if (values.serve === true) {
  process.stdout.write(
    `${values.json === true ? JSON.stringify({ serve }, null, 2) : serveLines(serve).join("\n")}\n`,
  );
  process.exit();
}
const measure = await benchMeasure(Number(values.every ?? 1));
const survey = await benchSurvey(4 * Number(values.every ?? 1));
const growth = await benchGrowth();

function row(name: string, { median, p90 }: Ratio): string {
  return `  ${name.padEnd(44)}${median.toFixed(2).padStart(8)}${p90.toFixed(2).padStart(8)}`;
}

function serveLines({ coldFront, coldStudy, warmFront, edits }: ServeBench): readonly string[] {
  return [
    `Serve, ms from the start of the process: front page ${warmFront.toFixed(0)} with what was kept, ${coldFront.toFixed(0)} without; a study without ${coldStudy.toFixed(0)}`,
    `  ${"from saving to the text in the browser, ms".padEnd(44)}${"median".padStart(8)}${"worst".padStart(8)}`,
    ...edits.map(
      ({ what, median, worst, edits: count }) =>
        `  ${`${what} (${count} edits)`.padEnd(44)}${median.toFixed(0).padStart(8)}${worst.toFixed(0).padStart(8)}`,
    ),
  ];
}

const lines = [
  `Measuring ÷ one bare rendering, ${measure.files} drawings, bare rendering ${measure.bareMilliseconds.toFixed(1)} ms in the median`,
  `  ${"".padEnd(44)}${"median".padStart(8)}${"p90".padStart(8)}`,
  row("whole", measure.whole),
  row("whole without reads to and near limit", measure.core),
  ...Object.entries(measure.parts).map(([part, ratio]) => row(`  ${part}`, ratio)),
  `Survey ÷ measuring, a flag, ${survey.files} drawings, ${survey.meanMilliseconds.toFixed(0)} ms in the mean`,
  row("each (median and p90)", survey.each),
  `  ${"all together".padEnd(44)}${survey.together.toFixed(2).padStart(8)}`,
  "Growth",
  `  ms a megapixel: ${Object.entries(growth.perMegapixel)
    .map(([height, time]) => `${time.toFixed(0)} at ${height} px`)
    .join(", ")}`,
  `  memory: ${growth.residentOnce.toFixed(0)} MB after one round, ${growth.residentTenTimes.toFixed(0)} MB after eleven`,
  ...serveLines(serve),
];
process.stdout.write(
  `${values.json === true ? JSON.stringify({ measure, survey, growth, serve }, null, 2) : lines.join("\n")}\n`,
);
