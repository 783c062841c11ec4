// Floor 5. Names in a gallery that readers take for each other: of studies in addresses, of authors, of tags.
import { compareText, type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import type { Study } from "../study/study.ts";
import { skeletonsOf } from "./lookalike.ts";

/** One place where a name stands. */
interface Use {
  readonly name: string;
  readonly study: Study;
  /** The dotted path of the value; undefined for the name of the folder. */
  readonly path: string | undefined;
}

/** All uses of one name, in any case. */
type Named = readonly [Use, ...Use[]];

/**
 * Returns the warnings `study/confusable`: at each name that looks like one which more studies have, or, where it is as many,
 * an older one. Names that differ in case alone are one name.
 */
export function findConfusables(studies: readonly Study[]): readonly Problem[] {
  return [
    ...compareNames(studies.map((study) => ({ name: study.slug, study, path: undefined }))),
    ...compareNames(studies.flatMap((study) => listUses(study, "authors"))),
    ...compareNames(studies.flatMap((study) => listUses(study, "tags"))),
  ];
}

function listUses(study: Study, key: "authors" | "tags"): readonly Use[] {
  return study[key].map((name, index) => ({ name, study, path: `${key}.${index}` }));
}

function compareNames(uses: readonly Use[]): readonly Problem[] {
  const named = new Map<string, [Use, ...Use[]]>();
  for (const use of uses) {
    const key = use.name.normalize("NFC").toLowerCase();
    const known = named.get(key);
    if (known === undefined) named.set(key, [use]);
    else known.push(use);
  }
  const taken = new Map<string, Named>();
  return [...named.values()].sort(compareWeight).flatMap((name): Problem[] => {
    const spellings = new Set(name.map((use) => use.name));
    const skeletons = [...spellings].flatMap(skeletonsOf);
    const twin = skeletons.map((skeleton) => taken.get(skeleton)).find((known) => known !== undefined);
    for (const skeleton of skeletons) if (!taken.has(skeleton)) taken.set(skeleton, name);
    return twin === undefined ? [] : name.map((use) => describe(use, twin[0]));
  });
}

/** Used most first, then the oldest. */
function compareWeight(a: Named, b: Named): number {
  const [dateA, dateB] = [dateOf(a), dateOf(b)];
  return b.length - a.length || compareText(dateA, dateB) || compareText(a[0].name, b[0].name);
}

/** Of its first study; one without a date comes behind all others. */
function dateOf(uses: Named): string {
  return uses.map(({ study }) => study.date ?? "~").sort(compareText)[0] ?? "";
}

function describe({ name, study, path }: Use, twin: Use): Problem {
  const what = path === undefined ? "The name of the folder, " : "";
  const where = path === undefined ? "" : `, which ${twin.study.slug} has`;
  return report(
    "study/confusable",
    { file: study.file, ...(path === undefined ? {} : study.places.get(path)) },
    {
      reason: `${what}${quoteText(name)}${path === undefined ? "," : ""} is easily taken for ${quoteText(twin.name)}${where}.`,
      hint:
        path === undefined
          ? "Rename the folder, so that nobody follows the wrong address."
          : `If it is the same, type it the same: ${twin.name}\nIf it is another, add what tells them apart.`,
    },
    "warning",
  );
}
