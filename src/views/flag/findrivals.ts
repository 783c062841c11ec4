// Floor 8. Which flags have a page: those with several studies, which stand beside each other there, and those that readers name.
import type { GalleryResult, StudyResult } from "../../analysis/result.ts";
import { callFlag } from "../../analysis/survey/flagcalled.ts";
import type { SurveyEntry } from "../../analysis/survey/surveyentry.ts";
import type { Nomination } from "../../content/gallery/nominationfile.ts";
import { compareText } from "../../problem/problem.ts";
import { slugOf } from "../../words/addressslug.ts";
import type { Format } from "../../words/format.ts";
import { describeRival } from "../../words/rivalphrase.ts";
import type { Linker } from "../address.ts";
import { formatStudyPath } from "../status.ts";
import { nameEntry } from "../survey/flagname.ts";

/** A flag with two studies or more, or one that somebody nominates. */
export interface RivalFlag {
  /** Of its name; of that of its file where the flag had that address before. */
  readonly slug: string;
  /** By {@link callFlag}; where no study names it, by its file. */
  readonly name: string;
  readonly entry: SurveyEntry;
  /** The oldest first, undated last. */
  readonly studies: readonly StudyResult[];
  /** Who says that it needs a study, and why. */
  readonly nominated: readonly Nomination[];
}

/** What a study says of its rivals: `one of two proposals for it`, and where they are. */
export interface RivalPlace {
  readonly text: string;
  readonly address: string;
}

/** The site path of a flag. Throws RangeError for a slug that could leave its folder. */
export function formatFlagPath(slug: string): string {
  return formatStudyPath(slug).replace("/studies/", "/flags/");
}

/** All flags with a page, in the order of their addresses; none where flags were not surveyed. */
export function listRivals({
  survey,
  studies,
  nominations = [],
  addresses = new Map(),
}: Pick<GalleryResult, "survey" | "studies" | "nominations" | "addresses">): readonly RivalFlag[] {
  const bySlug = new Map(studies.map((one) => [one.study.slug, one]));
  const flags = (survey?.entries ?? []).flatMap((entry): readonly RivalFlag[] => {
    const own = entry.slugs.flatMap((slug) => bySlug.get(slug) ?? []).sort(compareAge);
    const nominated = nominations.filter(({ flag }) => flag === entry.flag.file);
    if (own.length < 2 && nominated.length === 0) return [];
    const isKnown = (called: string) => addresses.has(formatFlagPath(slugOf(called)));
    const name =
      callFlag(
        own.map(({ study }) => study),
        isKnown,
      ) ?? nameEntry(entry, studies);
    // Where readers named it before any study did, its address is of its file.
    const file =
      entry.flag.file
        .split("/")
        .at(-1)
        ?.replace(/\.svg$/i, "") ?? name;
    const slug = slugOf([name, file].find(isKnown) ?? name);
    return [{ slug, name, entry, studies: own, nominated }];
  });
  return separate(flags, addresses);
}

/** Slug of a study → what it says of its rivals. */
export function indexRivals(flags: readonly RivalFlag[]): ReadonlyMap<string, RivalFlag> {
  return new Map(flags.flatMap((flag) => flag.studies.map(({ study }) => [study.slug, flag] as const)));
}

/** What a study of `flag` says of the others; undefined where there is none. */
export function presentRivalPlace(
  flag: RivalFlag | undefined,
  link: Linker,
  format: Format,
): RivalPlace | undefined {
  if (flag === undefined || flag.studies.length < 2) return undefined;
  return { text: describeRival(flag.studies.length, format), address: link(formatFlagPath(flag.slug)) };
}

/** Who names a flag, and why, a sentence each. */
export function sayNominated({ nominated }: RivalFlag, { say }: Format): readonly string[] {
  return nominated.map(({ by, reason }) =>
    by === undefined ? reason : say("list.colon", { name: by, said: reason }),
  );
}

function compareAge({ study: a }: StudyResult, { study: b }: StudyResult): number {
  return compareText(a.date ?? "~", b.date ?? "~") || compareText(a.slug, b.slug);
}

/**
 * Different flags of one name: the one with most studies whose addresses are known, then with most studies, has it; the others,
 * by the slug of their oldest study or their file, have that behind theirs.
 */
function separate(
  flags: readonly RivalFlag[],
  addresses: ReadonlyMap<string, unknown>,
): readonly RivalFlag[] {
  const taken = new Set<string>();
  const oldestOf = ({ studies: [first], entry }: RivalFlag) => first?.study.slug ?? slugOf(entry.flag.file);
  const countKnown = ({ studies }: RivalFlag) =>
    studies.filter(({ study }) => addresses.has(formatStudyPath(study.slug))).length;
  const inOrder = [...flags].sort(
    (a, b) =>
      countKnown(b) - countKnown(a) ||
      b.studies.length - a.studies.length ||
      compareText(oldestOf(a), oldestOf(b)),
  );
  const named = inOrder.map((flag) => {
    const slug = taken.has(flag.slug) ? `${flag.slug}-${oldestOf(flag)}` : flag.slug;
    taken.add(slug);
    return { ...flag, slug };
  });
  return named.sort((a, b) => compareText(a.slug, b.slug));
}
