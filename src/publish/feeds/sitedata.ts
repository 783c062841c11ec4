// Floor 9. The numbers of the gallery as JSON: one list of all studies, and for each study everything measured.

import type { StudyRanking } from "../../analysis/options/studyranking.ts";
import type { StudyResult } from "../../analysis/result.ts";
import { type Series, studyOf } from "../../content/series/series.ts";
import type { Decision, Gallery } from "../../content/study/study.ts";
import type { ComparedEdge } from "../../measure/comparison.ts";
import type { Measure } from "../../measure/measurement.ts";
import { formatJson } from "../../measure/roundnumber.ts";
import { compareText } from "../../problem/problem.ts";
import { listPlacedEdges } from "../../views/edge/edgeaddress.ts";
import { linkFile } from "../../views/linkview.ts";
import { formatSeriesPath, orderSeries } from "../../views/series/seriespage.ts";
import { lessonFiles } from "../../views/show/lessonfile.ts";
import type { SiteView } from "../../views/siteview.ts";
import { formatStudyPath } from "../../views/status.ts";
import { pngFiles } from "../../views/study/notes.ts";
import { formatVotePath } from "../../views/vote/votepage.ts";
import { tellReport } from "../../words/optionsreport.ts";
import { tellStanding } from "../../words/optionwords.ts";
import { measureVersion, stampOf } from "../../words/studystamp.ts";
import { tellMeasure } from "../../words/uncertainty.ts";

/** Of both files. It goes up when a field changes its meaning or goes; new fields come without that. */
const schemaVersion = 2;
/** Of what the commands print, which stands inside ours. Source: try.schema.json, options.schema.json. */
const tryVersion = 2;

/** Returns what a file writes for a site path: the absolute address, or one relative to the file itself. */
export type Address = (path: string) => string;

/** `study.json`: what the author says and everything measured, as `schemas/study.schema.json` describes it. */
export function formatStudyData(result: StudyResult, gallery: Gallery, address: Address): string {
  const { study, comparison, likeness, ranking } = result;
  const data = {
    schemaVersion,
    schema: address("/schemas/study.schema.json"),
    ...summarise(result, gallery, address),
    measureVersion,
    ...(study.decision === undefined ? {} : tellDecision(study.decision)),
    ...(study.symbolism === undefined ? {} : { symbolism: study.symbolism }),
    ...(study.credit === undefined ? {} : { credit: study.credit }),
    comparison: plainComparison(result),
    ...(ranking === undefined ? {} : plainRanking(ranking)),
    ...(likeness === undefined ? {} : { likeness }),
    files: listFiles(result, address),
    edgePages: listPlacedEdges(study.slug, comparison).map(({ edge: { a, b }, path }) => ({
      a,
      b,
      address: address(path),
    })),
  };
  return `${formatJson(data)}\n`;
}

/** The sentence as it always was; `decided` where there is more. */
function tellDecision(decision: Decision) {
  return { decision: decision.why, ...(decision.date === undefined ? {} : { decided: decision }) };
}

/** `studies.json`: a line of facts for each study, in the order of the front page. */
export function formatStudiesData(
  results: readonly StudyResult[],
  series: readonly Series[],
  votes: SiteView["votes"],
  gallery: Gallery,
  address: Address,
): string {
  const data = {
    schemaVersion,
    schema: address("/schemas/studies.schema.json"),
    title: gallery.title,
    address: address("/"),
    studies: results.map((result) => ({
      ...summarise(result, gallery, address),
      data: address(`${formatStudyPath(result.study.slug)}study.json`),
    })),
    series: orderSeries(series).map(({ slug, title, authors, date, entries, closing, ballots = [] }) => ({
      slug,
      title,
      address: address(formatSeriesPath(slug)),
      authors,
      ...(date === undefined ? {} : { date }),
      studies: entries.flatMap((entry) => studyOf(entry) ?? []),
      ...(closing === undefined ? {} : { closing }),
      ...votes
        .filter((vote) => vote.slug === slug)
        .map((vote) => ({ vote: plainVote(vote, ballots.length, address) }))[0],
    })),
  };
  return `${formatJson(data)}\n`;
}

/** The address of a vote, and what came back: never a word of a voter. Shares are of the voters of a question. */
function plainVote({ slug, questions }: SiteView["votes"][number], ballots: number, address: Address) {
  const counted = questions.flatMap(({ sides, count }) =>
    count === undefined
      ? []
      : [
          {
            studies: sides.flatMap(({ side }) => (side === "original" ? [] : [side])).sort(compareText),
            voters: count.total,
            choices: count.sides.map(({ side, chosen, bar: { low, high } }) => ({
              choice: side,
              voters: chosen,
              interval: [low / 100, high / 100],
            })),
          },
        ],
  );
  return { address: address(formatVotePath(slug)), ballots, questions: counted };
}

/** Drawings and tables of the study, and the picture that links to it show. */
function listFiles({ study, comparison }: StudyResult, address: Address) {
  const at = (file: string) => address(`${formatStudyPath(study.slug)}${file}`);
  return {
    original: at("original.svg"),
    redesign: at("redesign.svg"),
    originalPng: at(pngFiles.original),
    redesignPng: at(pngFiles.redesign),
    edges: at("edges.csv"),
    linkPicture: at(linkFile),
    ...(comparison.edges.length === 0 ? {} : { ruler: at(lessonFiles.ruler) }),
  };
}

function summarise(result: StudyResult, gallery: Gallery, address: Address) {
  const { study, comparison, change } = result;
  return {
    slug: study.slug,
    title: study.title,
    ...(study.flag === undefined ? {} : { flag: study.flag }),
    address: address(formatStudyPath(study.slug)),
    unofficial: true,
    status: study.status,
    authors: study.authors,
    ...(study.date === undefined ? {} : { date: study.date }),
    tags: study.tags,
    stamp: stampOf(result, gallery),
    change: {
      replace: change.replace,
      with: change.with,
      ...(change.only && { only: change.only }),
      ...(change.part && { part: change.part }),
    },
    verdict: comparison.verdict,
    clarity: comparison.clarity,
    strength: comparison.strength,
    clearEdgeShare: comparison.clearEdgeShare,
  };
}

/** Every other single change, as `try --json` prints it, and where this one stands. */
function plainRanking({ report, standing }: StudyRanking) {
  const options = { schemaVersion: tryVersion, ...tellReport(report), file: "original.svg" };
  return { options, standing: standing && tellStanding(standing) };
}

/** As `try --json` prints it. Where a drawing lay on the machine that built the site is nobody's business. */
function plainComparison({ comparison, change }: StudyResult) {
  const { before, after, edges, price, clarity, strength, clearEdgeShare, verdict } = comparison;
  const named = (measure: Measure, file: string) => ({ ...tellMeasure(measure), file });
  return {
    schemaVersion: tryVersion,
    change: {
      replace: change.replace,
      with: change.with,
      ...(change.only && { only: change.only }),
      ...(change.part && { part: change.part }),
    },
    before: named(before, "original.svg"),
    after: named(after, "redesign.svg"),
    edges: edges.map(plainEdge),
    clarity,
    strength,
    clearEdgeShare,
    verdict,
    price: price.map(plainEdge),
  };
}

/** Names stand in `before` and `after`. */
function plainEdge({ a, b, length, contrast, outcome }: ComparedEdge) {
  return { a, b, length, contrast, outcome };
}
