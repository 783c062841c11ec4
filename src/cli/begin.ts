// Floor 11. The command begin: a study that can be published as it stands, in the gallery that is there or in one made with it.
import { join } from "node:path";
import { catchFault } from "../analysis/jobs/catchfault.ts";
import { Pool } from "../analysis/jobs/pool.ts";
import { readDrawing } from "../content/folder/drawingfile.ts";
import { loadSettings } from "../content/folder/loadgallery.ts";
import type { Gallery } from "../content/study/study.ts";
import type { Measure } from "../measure/measurement.ts";
import { hasError, type Problem } from "../problem/problem.ts";
import { formatProblems } from "../problem/problemtext.ts";
import { quoteText, showText } from "../problem/quote.ts";
import { type ToldReport, tellReport } from "../words/optionsreport.ts";
import {
  type Ground,
  listPieces,
  listTaken,
  type Request,
  readRequest,
  surveyPlace,
} from "./begin/beginrequest.ts";
import { refreshSchemas } from "./begin/galleryschema.ts";
import { layOut } from "./begin/layout.ts";
import { fillRival } from "./begin/rival.ts";
import { writeStarter } from "./begin/studystarter.ts";
import type { Given, Output } from "./command.ts";
import { findPlace } from "./contentfolder.ts";
import { statusOf } from "./text/exitstatus.ts";
import { nameOwnInvocation, quoteWord } from "./text/invocation.ts";

/** Writes nothing unless the drawing can be measured and nothing is in the way. */
export async function run(typed: Given, output: Output): Promise<number> {
  const here = await findPlace();
  const given = await fillRival(typed, here);
  const request = readRequest(given, here, await listTaken(given, here));
  const place = await surveyPlace(request);
  const { value: gallery } = await loadSettings(request.content);
  const { measured, problems } = await look(request.original, gallery);
  if (problems.length > 0) output.message(`${formatProblems(problems)}\n`);
  if (measured === undefined) {
    output.message(`Nothing was written: ${quoteText(request.original)} cannot be measured.`);
    return statusOf(problems);
  }
  const starter = writeStarter({ ...request, original: "original.svg", schema: place.schema, ...measured });
  await layOut(request.content, await listPieces(request, place, starter, measured.bytes, gallery.palette));
  const { written, left } = await refreshSchemas(request.content, gallery.palette);
  output.data(await describe(request, place, starter.hasChange, measured));
  for (const file of written)
    output.message(`${file} was of another version, or of another palette, and was written anew.`);
  for (const file of left)
    output.message(
      `${file} is not as it ships, and was left alone.\n    If you did not change it, delete the folder; the next begin makes it afresh.`,
    );
  return 0;
}

interface Measured {
  readonly bytes: Uint8Array;
  readonly measure: Measure;
  readonly report: ToldReport;
  readonly before?: Measure;
}

async function look(
  file: string,
  { cloth, palette, viewingDistance: distance }: Gallery,
): Promise<{ readonly measured?: Measured; readonly problems: readonly Problem[] }> {
  const { value: bytes, problems } = await readDrawing(file);
  if (bytes === undefined) return { problems };
  const pool = new Pool();
  try {
    const input = { bytes, options: { cloth, palette, distance } };
    const measure = await catchFault(file, () => pool.run("measure", file, input));
    if (measure.value === undefined || hasError(measure.problems)) return { problems: measure.problems };
    const options = await catchFault(file, () => pool.run("options", file, input));
    if (options.value === undefined) return { problems: options.problems };
    const [change] = options.value.options;
    const compared =
      change && (await catchFault(file, () => pool.run("compare", file, { ...input, change })));
    const before = compared?.value?.comparison.before;
    return {
      measured: {
        bytes,
        measure: measure.value,
        report: tellReport(options.value),
        ...(before === undefined ? {} : { before }),
      },
      problems: measure.problems,
    };
  } finally {
    pool.close();
  }
}

/** What was made and of what colours; then three lines that say what to do, in words that can be typed. */
async function describe(
  { slug, content, file, series }: Request,
  { isNew, series: there }: Ground,
  hasChange: boolean,
  { measure, report }: Measured,
): Promise<string> {
  const study = join(content, "studies", slug);
  const colours = measure.colours.map(({ name, hex }) => `${name} ${hex}`).slice(0, 12);
  const rest = measure.colours.length - colours.length;
  const start = nameOwnInvocation();
  const operand = (await findPlace()) === content ? "" : ` ${quoteWord(content)}`;
  const type = (command: string) => `${start} ${command}${operand}`;
  return [
    `${isNew ? `A new gallery, ${join(content, "gallery.yaml")}, and its first study` : "A new study"}: ${join(study, file)}`,
    `  Colours: ${colours.map(showText).join(", ")}${rest > 0 ? ` and ${rest} more` : ""}.`,
    `  ${showText(report.reason)}`,
    ...(hasChange
      ? []
      : ["  No change stands in the study yet, and it is left out of the gallery until one does."]),
    "",
    `  1. Write: open ${quoteWord(join(study, file))}; ${hasChange ? "the best changes stand there as lines" : "until a change stands there, check and publish end with 1"}.`,
    `  2. Look:  ${type("preview")}`,
    `  3. Publish: ${type("check")} && ${type("publish")}`,
    ...(series === undefined ? [] : [describeSeries(join(content, "series", `${series}.md`), slug, there)]),
    ...(isNew
      ? [
          `     The address in ${quoteWord(join(content, "gallery.yaml"))} is a stand-in: the site has feeds and a site map once the real one is there.`,
        ]
      : []),
  ].join("\n");
}

/** What an author wrote in a way that is not ours to add to is theirs to write. */
function describeSeries(file: string, slug: string, there: Ground["series"]): string {
  if (there === undefined) return `  4. Name the series, and ask something at its end: ${quoteWord(file)}`;
  return there === "left"
    ? `  4. Add a line to “studies” of ${quoteWord(file)}:  - ${slug}`
    : `  4. It is the last of its series: move its line to where it belongs in ${quoteWord(file)}`;
}
