// Floor 8. Which flags have several studies, and where those stand beside each other.
import type { GalleryResult, StudyResult } from "../../analysis/result.ts";
import type { SurveyEntry } from "../../analysis/survey/surveyentry.ts";
import { compareText } from "../../problem/problem.ts";
import { slugOf } from "../../words/addressslug.ts";
import type { Format } from "../../words/format.ts";
import { describeRival } from "../../words/rivalphrase.ts";
import type { Linker } from "../address.ts";
import { formatStudyPath } from "../status.ts";
import { nameEntry } from "../survey/flagname.ts";

/** A flag with two studies or more. */
export interface RivalFlag {
  /** Of the name that its oldest study gives it. */
  readonly slug: string;
  readonly name: string;
  readonly entry: SurveyEntry;
  /** The oldest first, undated last. */
  readonly studies: readonly StudyResult[];
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

/** All flags with rivals, in the order of their addresses; none where flags were not surveyed. */
export function listRivals({
  survey,
  studies,
}: Pick<GalleryResult, "survey" | "studies">): readonly RivalFlag[] {
  const bySlug = new Map(studies.map((one) => [one.study.slug, one]));
  const flags = (survey?.entries ?? []).flatMap((entry): readonly RivalFlag[] => {
    const own = entry.slugs.flatMap((slug) => bySlug.get(slug) ?? []).sort(compareAge);
    const [oldest] = own;
    if (oldest === undefined || own.length < 2) return [];
    const name = oldest.study.flag ?? nameEntry(entry, studies);
    return [{ slug: slugOf(name), name, entry, studies: own }];
  });
  return separate(flags);
}

/** Slug of a study → what it says of its rivals. */
export function indexRivals(flags: readonly RivalFlag[]): ReadonlyMap<string, RivalFlag> {
  return new Map(flags.flatMap((flag) => flag.studies.map(({ study }) => [study.slug, flag] as const)));
}

/** What a study of `flag` says of the others. */
export function presentRivalPlace(
  flag: RivalFlag | undefined,
  link: Linker,
  format: Format,
): RivalPlace | undefined {
  if (flag === undefined) return undefined;
  return { text: describeRival(flag.studies.length, format), address: link(formatFlagPath(flag.slug)) };
}

function compareAge({ study: a }: StudyResult, { study: b }: StudyResult): number {
  return compareText(a.date ?? "~", b.date ?? "~") || compareText(a.slug, b.slug);
}

/** Different flags of one name: all but the first, by the slug of its oldest study, have that behind theirs. */
function separate(flags: readonly RivalFlag[]): readonly RivalFlag[] {
  const taken = new Set<string>();
  const oldestOf = ({ studies: [first] }: RivalFlag) => first?.study.slug ?? "";
  const inOrder = [...flags].sort((a, b) => compareText(oldestOf(a), oldestOf(b)));
  const named = inOrder.map((flag) => {
    const slug = taken.has(flag.slug) ? `${flag.slug}-${oldestOf(flag)}` : flag.slug;
    taken.add(slug);
    return { ...flag, slug };
  });
  return named.sort((a, b) => compareText(a.slug, b.slug));
}
