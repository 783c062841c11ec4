// Floor 5. What came before a study: the addresses it had, and the study it takes the place of.
import { findNearest } from "../../problem/knownword.ts";
import { type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { foldName, isSlug, proposeSlug } from "../study/slug.ts";
import type { Study } from "../study/study.ts";
import { type Finding, wrong } from "../yaml/finding.ts";
import type { AddressNotes } from "./addressfile.ts";

/** Returns what is wrong with `formerly` by itself: names that no address could have had, and one that stands twice. */
export function checkFormerly(formerly: unknown): Finding[] {
  if (!Array.isArray(formerly)) return [];
  return formerly.flatMap((name: unknown, index): Finding[] => {
    if (typeof name !== "string" || name === "") return [];
    const path = `formerly.${index}`;
    if (!isSlug(name)) {
      const proposed = proposeSlug(name.replace(/^.*?studies\//, ""));
      const reason = `${quoteText(name)} was never the address of a study: small letters, digits and single hyphens only, 100 at most.`;
      const hint = `Type the name that the folder had: formerly: [${proposed ?? "ferry-wheel"}]`;
      return wrong("study/formerly-slug", path, { reason, hint });
    }
    if (formerly.indexOf(name) === index) return [];
    const reason = `${quoteText(name)} stands in “formerly” a second time.`;
    return wrong("study/formerly-twice", path, { reason, hint: "Delete one." }, { severity: "warning" });
  });
}

/**
 * Returns what is wrong between studies. `folders` are all folders in studies/, `notes` those of addresses.txt. An address that
 * a folder has now, that the list keeps for another, or that several studies claim, does not lead to a study that claims it:
 * no contribution can cost another study its page.
 *
 * Problems, all warnings: `study/formerly-taken`, `study/formerly-claimed`.
 */
export function findClashes(
  studies: readonly Study[],
  folders: readonly string[],
  notes?: AddressNotes,
): readonly Problem[] {
  const taken = new Set(folders.map(foldName));
  const claims = listClaims(studies);
  const entitledTo = findEntitled(studies, notes);
  return studies.flatMap((study) =>
    (study.formerly ?? []).flatMap((name, index): Problem[] => {
      if (study.formerly?.indexOf(name) !== index) return [];
      const base = { file: study.file, ...study.places.get(`formerly.${index}`) };
      if (taken.has(name)) return [{ ...base, ...describeTaken(name, study.slug) }];
      const claimants = claims.get(name) ?? [];
      const entitled = entitledTo(name, claimants);
      if (entitled.length === 1 && entitled[0] === study.slug) return [];
      const rivals = entitled.includes(study.slug) ? entitled : [];
      const others = rivals.filter((slug) => slug !== study.slug);
      return [
        {
          ...base,
          ...(others.length === 0 ? describeKept(name, study.slug) : describeClaimed(name, others)),
        },
      ];
    }),
  );
}

/** Returns the warning `study/follows` for each study that follows none of `folders`, or itself. */
export function findUnfollowed(studies: readonly Study[], folders: readonly string[]): readonly Problem[] {
  return studies.flatMap(({ slug, follows, file, places }) => {
    if (follows === undefined || (follows !== slug && folders.includes(follows))) return [];
    const near = findNearest(
      follows,
      folders.filter((name) => name !== slug),
    );
    const reason =
      follows === slug
        ? "The study follows itself."
        : `There is no study ${quoteText(follows)} that this one could follow.`;
    const hint = near === undefined ? "Delete the line." : `Type: follows: ${near}`;
    return report("study/follows", { file, ...places.get("follows") }, { reason, hint }, "warning");
  });
}

/** Returns the study without the former addresses that are those of `folders` now. */
export function dropTaken(study: Study, folders: readonly string[]): Study {
  const taken = new Set(folders.map(foldName));
  if (study.formerly?.some((name) => taken.has(name)) !== true) return study;
  return { ...study, formerly: study.formerly.filter((name) => !taken.has(name)) };
}

/**
 * Returns the old addresses that lead to a study: those that one study alone claims, of those that the list of addresses
 * would give it to, sorted by name.
 */
export function listFormer(
  studies: readonly Pick<Study, "slug" | "formerly">[],
  notes?: AddressNotes,
): readonly { readonly from: string; readonly to: string }[] {
  const slugs = new Set(studies.map(({ slug }) => slug));
  const entitledTo = findEntitled(studies, notes);
  return [...listClaims(studies)]
    .flatMap(([from, claimants]) => {
      const [to, second] = entitledTo(from, claimants);
      return to === undefined || second !== undefined || slugs.has(from) ? [] : [{ from, to }];
    })
    .sort((a, b) => (a.from < b.from ? -1 : 1));
}

/** Returns the names that several studies may have had, nobody knows which, each with those studies. */
export function listContested(
  studies: readonly Pick<Study, "slug" | "formerly">[],
  notes?: AddressNotes,
): ReadonlyMap<string, readonly string[]> {
  const entitledTo = findEntitled(studies, notes);
  return new Map(
    [...listClaims(studies)]
      .map(([name, claimants]) => [name, entitledTo(name, claimants)] as const)
      .filter(([, entitled]) => entitled.length > 1),
  );
}

/**
 * Returns a function that gives those of `claimants` that can have had the address of the study `name`: none where the list,
 * which has all that was published, does not have it. Where the list says where
 * it leads, that is the one that it leads to. Where it was published and nothing more is said, a study that was published at
 * another address, under its name now or under one that it claims as well, is none: nothing is at two addresses at once.
 */
function findEntitled(
  studies: readonly Pick<Study, "slug" | "formerly">[],
  notes: AddressNotes | undefined,
): (name: string, claimants: readonly string[]) => readonly string[] {
  if (notes === undefined) return (_, claimants) => claimants;
  const place = (slug: string): string => `/studies/${slug}/`;
  const isPlain = (name: string): boolean => {
    const note = notes.get(place(name));
    return note !== undefined && note.to === undefined && note.withdrawn === undefined;
  };
  const published = new Map(
    studies.map(({ slug, formerly = [] }) => [slug, new Set([slug, ...formerly].filter(isPlain)).size]),
  );
  return (name, claimants) => {
    const note = notes.get(place(name));
    // What was never published nobody had; where nothing was, nobody knows.
    if (note === undefined) return notes.size === 0 ? claimants : [];
    if (note.withdrawn !== undefined) return [];
    if (note.to === undefined) return claimants.filter((slug) => published.get(slug) === 1);
    const seen = new Set<string>();
    for (let at: string | undefined = note.to; at !== undefined && !seen.has(at); at = notes.get(at)?.to)
      seen.add(at);
    return claimants.filter((slug) => seen.has(place(slug)));
  };
}

function listClaims(
  studies: readonly Pick<Study, "slug" | "formerly">[],
): ReadonlyMap<string, readonly string[]> {
  const claims = new Map<string, string[]>();
  for (const { slug, formerly } of studies)
    for (const name of new Set(formerly)) claims.set(name, [...(claims.get(name) ?? []), slug]);
  return claims;
}

function describeTaken(name: string, slug: string): Pick<Problem, "rule" | "severity" | "reason" | "hint"> {
  const isOwn = name === slug;
  return {
    rule: "study/formerly-taken",
    severity: "warning",
    reason: isOwn
      ? `${quoteText(name)} is the study's address today.`
      : `${quoteText(name)} is the address of another study today, so it cannot lead here.`,
    hint: isOwn
      ? "Delete it from “formerly”."
      : `Delete it from “formerly”, or rename the folder studies/${name}.`,
  };
}

function describeKept(name: string, slug: string): Pick<Problem, "rule" | "severity" | "reason" | "hint"> {
  return {
    rule: "study/formerly-claimed",
    severity: "warning",
    reason: `Of ${quoteText(name)} addresses.txt does not bear out that this study had it, so it does not lead here.`,
    hint: `Delete it from “formerly”; or, if it is to lead here, type in addresses.txt: /studies/${name}/ -> /studies/${slug}/`,
  };
}

function describeClaimed(
  name: string,
  others: readonly string[],
): Pick<Problem, "rule" | "severity" | "reason" | "hint"> {
  return {
    rule: "study/formerly-claimed",
    severity: "warning",
    reason: `${quoteText(name)} is claimed by ${others.map(quoteText).join(", ")} too, so nothing leads from it.`,
    hint: "Leave it in the study that had this address, and delete it from the other.",
  };
}
