// Floor 11. The first text of a study: the colours that the drawing has, the best changes as lines, and a beginning of prose.

import { stringify } from "yaml";
import { wordOf } from "../../colour/colourname.ts";
import { studySchemaFile } from "../../content/folder/listing.ts";
import { formatStudySchema } from "../../content/gallery/editorschema.ts";
import { schemaLine } from "../../content/gallery/schemastamp.ts";
import { placeholders } from "../../content/study/placeholder.ts";
import { roundMark } from "../../measure/clarity.ts";
import type { Measure } from "../../measure/measurement.ts";
import type { RankedOption } from "../../measure/options/rank.ts";
import { formatPercent, formatShare } from "../../measure/percenttext.ts";
import { showText } from "../../problem/quote.ts";
import type { ToldReport } from "../../words/optionsreport.ts";
import { listLosses, nameNeighbours } from "../text/losstext.ts";

/** What a new study begins with. `original` is the drawing's file name beside it. */
export interface StarterInput {
  readonly title: string;
  /** What the flag is called, where it is known. */
  readonly flag?: string;
  readonly original: string;
  readonly measure: Measure;
  readonly report: ToldReport;
  /** The drawing as it is, in the comparison with the best change: paints that the change parts have names of their own. */
  readonly before?: Measure;
  /** Where the schema of all studies lies, as seen from the study's folder. */
  readonly schema: string;
}

/** `frontMatter` without its fences, so that it can stand in study.yaml; both end with a newline. */
export interface StarterText {
  readonly frontMatter: string;
  readonly prose: string;
  /** The study's own schema, by which an editor offers the colours of the drawing. */
  readonly schema: string;
  /** Whether there is a change in it: without one the study cannot be built. */
  readonly hasChange: boolean;
}

/** Most changes that are proposed, and most colours that are listed. */
const most = { changes: 3, colours: 24 };

/**
 * Returns the text of a new study. The best change stands as the change, two of other families of colour as comments, every
 * colour as hex in quotes, all with their numbers. Where no change could be ranked, a comment says what to fill in.
 */
export function writeStarter(input: StarterInput): StarterText {
  const { title, flag, original, measure, report, before, schema } = input;
  const options = chooseChanges(report);
  const lines = [
    schemaLine(studySchemaFile),
    // A long title must not be folded: the next line would look like a key.
    stringify(
      { title, ...(flag === undefined ? {} : { flag }) },
      { lineWidth: 0, defaultKeyType: "PLAIN" },
    ).trimEnd(),
    `original: ${original}`,
    "",
    ...listColours(measure),
    "",
    ...(options.length === 0 ? askForChange(measure, report) : listChanges(options, report)),
    "",
    "status: open   # on the page, for discussion; “draft” keeps it out of the gallery",
    "",
    "# Take the # away and fill in:",
    ...(flag === undefined ? [`# flag: ${placeholders.flag}`] : []),
    `# authors: [${placeholders["authors.0"]}]`,
    "# date: 2026-04-02",
    "# tags: [charge, dark on dark]",
    `# credit: { title: The flag, author: ${placeholders["credit.author"]}, licence: CC0-1.0 }`,
    `# symbolism: ${placeholders.symbolism}`,
    '# focus: { select: "#wheel" }   # what has to be seen, where it is not found',
  ];
  return {
    frontMatter: `${lines.join("\n")}\n`,
    prose: writeProse(report, before),
    schema: formatStudySchema(schema, measure.colours),
    hasChange: options.length > 0,
  };
}

/**
 * Returns the changes to propose, in their order: the best, and what comes next by a colour of another family, as long as
 * the flag is no less clear by it than it is.
 */
export function chooseChanges({ options, clarity }: ToldReport): readonly RankedOption[] {
  const chosen: RankedOption[] = [];
  for (const option of options) {
    const isOther = chosen.every((one) => wordOf(one.with) !== wordOf(option.with));
    const isEnough = chosen.length === 0 || roundMark(option.clarity) >= roundMark(clarity ?? 0);
    if (isOther && isEnough && chosen.length < most.changes) chosen.push(option);
  }
  return chosen;
}

function listColours({ colours }: Measure): readonly string[] {
  const shown = colours.slice(0, most.colours);
  const longest = Math.max(...shown.map(({ name }) => name.length));
  const rest = colours.length - shown.length;
  return [
    "# The colours of the drawing, largest first:",
    ...shown.map(
      ({ hex, name, share, vanishes }) =>
        `#   "${hex}"  ${showText(name).padEnd(longest)}  ${formatShare(share).padStart(7)}${vanishes ? ", too thin to be seen from afar" : ""}`,
    ),
    ...(rest > 0 ? [`#   and ${rest} more`] : []),
  ];
}

function listChanges(options: readonly RankedOption[], report: ToldReport): readonly string[] {
  const [first, ...others] = options.map((option) => ({
    line: `change: { replace: "${option.replace}", with: "${option.with}" }`,
    comment: `   # ${describe(option, report)}`,
  }));
  if (first === undefined) return [];
  const heading =
    others.length === 0
      ? ["# The best change that was tried:"]
      : [
          "# The best changes that were tried, by colours of different kinds. The first is the study's. To take another, put a # before it and take the # from yours.",
        ];
  return [
    ...heading,
    `${first.line}${first.comment}`,
    ...others.map(({ line, comment }) => `# ${line}${comment}`),
  ];
}

/** `dark red → white: clarity 14 % → 100 %; gained beside dark blue; but lost beside green`. */
function describe(option: RankedOption, { clarity, shades }: ToldReport): string {
  const { id, name, gained, better } = option;
  const old = shades.find((shade) => shade.id === id)?.name ?? option.replace;
  const before = clarity === null ? "" : `${formatPercent(clarity, 0)} → `;
  const price = listLosses(option);
  return showText(
    [
      `${old} → ${name}: clarity ${before}${formatPercent(option.clarity, 0)}`,
      ...(gained.length === 0 ? [] : [`gained beside ${nameNeighbours(id, gained)}`]),
      ...(better.length === 0 ? [] : [`better beside ${nameNeighbours(id, better)}`]),
      ...(price === "" ? [] : [`but ${price}`]),
    ].join("; "),
  );
}

/** No change is ranked for a drawing of one colour, and where every change merges a charge. */
function askForChange({ colours }: Measure, { reason }: ToldReport): readonly string[] {
  const hex = colours[0]?.hex ?? "#000000";
  return [
    `# ${showText(reason)}`,
    "# So no change is proposed here. The study is left out of the gallery until one stands in a line such as:",
    `# change: { replace: "${hex}", with: "#ffffff" }`,
  ];
}

/** A beginning that is true as it stands, and shows how a figure is placed. */
function writeProse({ reason }: ToldReport, before: Measure | undefined): string {
  const weakest = before?.weakestEdge;
  const names = before?.edges.find(({ a, b }) => a === weakest?.a && b === weakest?.b)?.names;
  // A number tells colours of one name apart; another change may give the numbers anew.
  const isSteady = names?.every((name) => !/\d$/.test(name)) === true;
  const figure = !isSteady || names === undefined ? "" : `\n::figure{edge="${names.join(" / ")}"}\n`;
  return `${showText(reason)}\n${figure}`;
}
