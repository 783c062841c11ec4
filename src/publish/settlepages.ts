// Floor 9. Pages of a gallery in which one study makes a view or a template throw: that study is left out.

import { catchFault } from "../analysis/jobs/catchfault.ts";
import { leaveOut } from "../analysis/leave.ts";
import type { GalleryResult, StudyResult } from "../analysis/result.ts";
import type { Problem } from "../problem/problem.ts";

/** What was made of a gallery, and the gallery that it was made of. */
export interface Settled<R, T> {
  readonly result: R;
  readonly made: T;
}

/**
 * Returns what `make` makes of the gallery without the studies with which it throws: problems `study/fault` of the result.
 * `attempt` throws where `make` would, and is called with parts of the gallery. Throws where that throws without any study,
 * and where no study alone is at fault.
 */
export async function settle<R extends GalleryResult, T>(
  result: R,
  make: (result: R) => Promise<T>,
  attempt: (result: R) => Promise<unknown> = make,
): Promise<Settled<R, T>> {
  try {
    return { result, made: await make(result) };
  } catch (error) {
    const faults = await findFaults(result, attempt, result.studies);
    if (faults.size === 0) throw error;
    const rest = leaveOut(result, new Set(faults.keys()), [...faults.values()]);
    return { result: rest, made: await make(rest) };
  }
}

/** By halves: a gallery of thousands is not made again for each of its studies. */
async function findFaults<R extends GalleryResult>(
  result: R,
  make: (result: R) => Promise<unknown>,
  studies: readonly StudyResult[],
): Promise<ReadonlyMap<string, Problem>> {
  const others = result.studies.filter((one) => !studies.includes(one));
  const part = leaveOut(result, new Set(others.map(({ study }) => study.slug)), []);
  const [study] = studies;
  const { problems } = await catchFault(study?.study.file ?? "", async () => {
    await make(part);
    return { value: true, problems: [] };
  });
  const [problem] = problems;
  if (study === undefined || problem === undefined) return new Map();
  if (studies.length === 1) return new Map([[study.study.slug, problem]]);
  const middle = Math.ceil(studies.length / 2);
  const found = await findFaults(result, make, studies.slice(0, middle));
  return new Map([...found, ...(await findFaults(result, make, studies.slice(middle)))]);
}
