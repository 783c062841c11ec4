// Floor 6. The likeness of all redesigns of a gallery: every flag made into a grid once, in the pool, then compared.
import type { Cloth } from "../../colour/cloth.ts";
import { pathOfOriginal } from "../../content/study/original.ts";
import type { FlagGrid } from "../../measure/gridlikeness.ts";
import type { Problem } from "../../problem/problem.ts";
import { catchFault } from "../jobs/catchfault.ts";
import { runOrdered } from "../jobs/orderedqueue.ts";
import { defaultLimits, type Line } from "../jobs/pool.ts";
import type { StudyResult } from "../result.ts";
import { fingerprint } from "../store/fingerprint.ts";
import { findHomes, leaveOriginals } from "../survey/sameflag.ts";
import type { FlagOutcome } from "../survey/surveyflags.ts";
import { compareRedesign, type KnownFlag } from "./compareredesign.ts";

/** Both flags of one study. */
interface Pair {
  readonly result: StudyResult;
  readonly original: FlagGrid;
  readonly redesign: FlagGrid;
}

/**
 * Compares the redesign of each study with every other flag: originals, redesigns, `flags` and `collection`. A study whose
 * drawings cannot be made into grids keeps everything else.
 *
 * Problems: warnings `study/likeness`.
 */
export async function compareAll(
  pool: Line,
  studies: readonly StudyResult[],
  flags: readonly FlagOutcome[],
  collection: readonly KnownFlag[],
  cloth: Cloth,
): Promise<{ readonly studies: readonly StudyResult[]; readonly problems: readonly Problem[] }> {
  // Studies of one flag share its grid: it is made once and held once.
  const grids = new Map<string, Promise<FlagGrid | undefined>>();
  const gridOf = (file: string, svg: string): Promise<FlagGrid | undefined> => {
    const key = fingerprint(svg);
    const known = grids.get(key);
    if (known !== undefined) return known;
    const made = makeGrid(pool, file, svg, cloth);
    grids.set(key, made);
    return made;
  };
  const pairs = await mapSome(studies, async (result): Promise<Pair | undefined> => {
    const file = result.study.originalFile;
    const { original: first, redesign: second } = result.drawings;
    const [original, redesign] = await Promise.all([gridOf(file, first), gridOf(file, second)]);
    return original === undefined || redesign === undefined ? undefined : { result, original, redesign };
  });
  const homes = findHomes(studies);
  const plain = await mapSome(leaveOriginals(flags, studies), async ({ file, outcome: { value } }) => ({
    file,
    grid: value === undefined ? undefined : await gridOf(file, value.drawing),
  }));
  const known = [
    ...listKnown(
      pairs.filter((pair) => pair !== undefined),
      homes,
    ),
    ...plain.flatMap(({ file, grid }): readonly KnownFlag[] =>
      grid === undefined ? [] : [{ file, origin: "flag", grid }],
    ),
    ...collection,
  ];
  const problems: Problem[] = [];
  const compared: StudyResult[] = [];
  for (const [index, result] of studies.entries()) {
    // Whoever holds the published folder has to give a sign from time to time.
    if (index % 16 === 15) await new Promise((resolve) => setImmediate(resolve));
    const pair = pairs[index];
    if (pair === undefined) {
      compared.push(result);
      continue;
    }
    const { likeness, problems: own } = compareRedesign(result.study, pair, known, homes.get(result));
    problems.push(...own);
    compared.push(likeness.compared === 0 ? result : { ...result, likeness });
  }
  return { studies: compared, problems };
}

/** Makes the grid of a drawing that we wrote; none where that fails. `file` is named in faults. */
export async function makeGrid(
  pool: Line,
  file: string,
  svg: string,
  cloth: Cloth,
): Promise<FlagGrid | undefined> {
  const bytes = new TextEncoder().encode(svg);
  return (await catchFault(file, () => pool.run("grid", file, { bytes, cloth }))).value;
}

/** A few more than there are processes at once: what waits in line holds its drawing. */
async function mapSome<A, B>(items: readonly A[], work: (item: A) => Promise<B>): Promise<readonly B[]> {
  const done: B[] = [];
  await runOrdered(
    items,
    2 * defaultLimits.size + 2,
    async (item) => [await work(item)] as const,
    ([one]) => done.push(one),
  );
  return done;
}

function listKnown(pairs: readonly Pair[], homes: ReadonlyMap<StudyResult, string>): readonly KnownFlag[] {
  const known = new Map<string, KnownFlag>();
  for (const { result, original, redesign } of pairs) {
    const { slug } = result.study;
    const file = homes.get(result) ?? pathOfOriginal(result.study);
    if (!known.has(file)) known.set(file, { file, origin: "original", slug, grid: original });
    const made = `studies/${slug}/redesign.svg`;
    // A study may call its own original so.
    known.set(`${made}#`, {
      file: `the redesign of ${slug}`,
      origin: "redesign",
      slug,
      original: file,
      grid: redesign,
    });
  }
  return [...known.values()];
}
