// Floor 8. The gain chart: one line a study, from its clarity before to after.
import type { StudyResult } from "../../analysis/result.ts";
import type { WordId } from "../../words/en/all.ts";
import type { Format } from "../../words/format.ts";
import { verdictIds } from "../../words/verdict.ts";
import type { Linker } from "../address.ts";
import { listPath, mostOnPage } from "../paging.ts";
import { type Plate, presentPair } from "../plate.ts";
import { formatStudyPath } from "../status.ts";
import { type CardSearch, presentSearch } from "./card.ts";

export interface GainView {
  readonly title: string;
  /** What it shows, in a few sentences. */
  readonly description: string;
  /** Most gained first. The rest opens on demand, so that the chart stays a chart. */
  readonly rows: readonly GainRow[];
  readonly rest: readonly GainRow[];
  readonly restLabel: string;
  /** Where the studies are that the chart leaves out; undefined where it has all. */
  readonly others: { readonly text: string; readonly address: string } | undefined;
  readonly ticks: readonly { readonly x: number; readonly text: string }[];
  readonly width: number;
}

export interface GainRow {
  readonly slug: string;
  readonly title: string;
  /** Both as far as the study says; else undefined. */
  readonly flag: string | undefined;
  readonly authors: string | undefined;
  /** Original and redesign. */
  readonly plates: readonly [Plate, Plate];
  readonly verdict: string;
  /** Undefined in the prose of a study, where nothing is searched. */
  readonly search: CardSearch | undefined;
  /** Undefined for the study whose page the chart stands on. */
  readonly address: string | undefined;
  readonly before: string;
  readonly after: string;
  /** Where both stand on the line, in its units. */
  readonly x: readonly [number, number];
  readonly way: Way;
}

type Way = "up" | "down" | "level";

const width = 100;
const mostRows = 24;
/** Within the prose of a study, which is about that study first: it and its neighbours. */
const rowsInProse = 3;
/** Rows with those that open on demand (our own judgement): more are pages, to which the front page leads. */
const mostListed = mostOnPage;

/** The studies with an edge, most gained first: made once for all charts of a site. */
export interface Gains {
  readonly ranked: readonly Gain[];
  readonly ways: Readonly<Record<Way, number>>;
  /** How many studies there are, with those without an edge. */
  readonly all: number;
}

interface Gain extends Pick<GainRow, "before" | "after" | "x" | "way"> {
  readonly result: StudyResult;
}

export function rankGains(results: readonly StudyResult[], format: Format): Gains {
  const ranked = results
    .flatMap((result) => {
      const [before, after] = result.comparison.clarity;
      return before === null || after === null ? [] : [{ result, before, after }];
    })
    .sort(
      (first, second) =>
        second.after - second.before - (first.after - first.before) || first.before - second.before,
    )
    .map(({ result, before, after }): Gain => {
      const said = { before: format.percent(before), after: format.percent(after) };
      const way = said.before === said.after ? "level" : after > before ? "up" : "down";
      return { result, ...said, x: [placeClarity(before), placeClarity(after)], way };
    });
  const count = (way: Way) => ranked.filter((gain) => gain.way === way).length;
  return {
    ranked,
    ways: { up: count("up"), down: count("down"), level: count("level") },
    all: results.length,
  };
}

/**
 * The chart, or undefined where no study has an edge. `own` is the slug of the study whose prose asks for it: of the
 * others only the next above and below it are shown there.
 */
export function presentGain(gains: Gains, link: Linker, format: Format, own?: string): GainView | undefined {
  const { ranked } = gains;
  if (ranked.length === 0) return undefined;
  const ownAt = ranked.findIndex(({ result }) => result.study.slug === own);
  const from = own === undefined ? 0 : Math.max(0, Math.min(ownAt - 1, ranked.length - rowsInProse));
  const to = own === undefined ? mostRows : from + rowsInProse;
  const rest = own === undefined ? ranked.slice(to, mostListed) : [];
  const shown = ranked.slice(from, to);
  const left = ranked.length - shown.length - rest.length;
  const present = (gain: Gain) => presentRow(gain, link, format, own);
  return {
    title: format.say("gain.title"),
    description: describeGain(gains, ownAt, format),
    rows: shown.map(present),
    rest: rest.map(present),
    restLabel: format.say("front.more", { count: rest.length }),
    others: left === 0 ? undefined : presentOthers(left, gains.all, link, format),
    ticks: [0, 50, 100].map((clarity) => ({ x: placeClarity(clarity), text: format.percent(clarity) })),
    width,
  };
}

/** A list of all is there where the front page cannot show them. */
function presentOthers(left: number, all: number, link: Linker, format: Format): GainView["others"] {
  const isListed = all > mostOnPage;
  return {
    text: format.say(isListed ? "gain.othersListed" : "gain.othersOnFront", { count: left }),
    address: link(isListed ? listPath : "/"),
  };
}

function presentRow(
  { result, ...placed }: Gain,
  link: Linker,
  format: Format,
  own: string | undefined,
): GainRow {
  const { slug, title, flag, authors } = result.study;
  return {
    slug,
    title,
    flag,
    authors: authors.length === 0 ? undefined : format.list(authors),
    plates: presentPair(result, link, format),
    verdict: format.say(verdictIds[result.comparison.verdict]),
    search: own === undefined ? presentSearch(result) : undefined,
    address: slug === own ? undefined : link(formatStudyPath(slug)),
    ...placed,
  };
}

function placeClarity(clarity: number): number {
  return Math.round((clarity / 100) * width * 10) / 10;
}

/** `9 studies: clarity rises in 7, falls in 1 and stays in 1. It rises most in “A”, from 27 % to 80 %.` */
function describeGain({ ranked, ways }: Gains, ownAt: number, format: Format): string {
  const { say } = format;
  const count = (way: Way) =>
    ways[way] === 0 ? [] : say(wayIds[way], { count: format.number(ways[way], 0) });
  const [first] = ranked;
  const own = ranked[ownAt];
  return [
    say("gain.told", {
      count: ranked.length,
      ways: format.list((["up", "down", "level"] as const).flatMap(count)),
    }),
    ...(first?.way === "up"
      ? [say("gain.most", { title: first.result.study.title, before: first.before, after: first.after })]
      : []),
    ...(own === undefined || own === first
      ? []
      : [say("gain.here", { before: own.before, after: own.after })]),
  ].join(" ");
}

const wayIds = { up: "gain.rises", down: "gain.falls", level: "gain.stays" } as const satisfies Record<
  Way,
  WordId
>;
