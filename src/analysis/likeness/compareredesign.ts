// Floor 6. Every redesign beside every other flag that is known: which it looks most like, and a warning where too much.

import { pathOfOriginal } from "../../content/study/original.ts";
import type { Study } from "../../content/study/study.ts";
import type { FlagGrid } from "../../measure/gridlikeness.ts";
import { type Likeness, likenessWarning } from "../../measure/nearestflag.ts";
import { formatDifference } from "../../measure/percenttext.ts";
import { type Problem, report } from "../../problem/problem.ts";
import type { FlagOrigin, NearFlag, StudyLikeness } from "./likenessdata.ts";
import { findLikeness } from "./likenessreport.ts";

/** A flag that is compared with. `file` is its path in the content folder, for a redesign that of its study. */
export interface KnownFlag {
  readonly file: string;
  readonly origin: FlagOrigin;
  /** The study it belongs to: for an original the first of them. */
  readonly slug?: string;
  /** For a redesign, the original it was made from. */
  readonly original?: string;
  readonly grid: FlagGrid;
}

/**
 * Compares the redesign of a study with all `known` flags but its own original and the redesigns of that: proposals for one
 * flag may be alike. `own` is the path under which its original is known. The warning `study/likeness` stands at the new colour.
 */
export function compareRedesign(
  study: Study,
  grids: { readonly original: FlagGrid; readonly redesign: FlagGrid },
  known: readonly KnownFlag[],
  own = pathOfOriginal(study),
): { readonly likeness: StudyLikeness; readonly problems: readonly Problem[] } {
  const others = known.filter(({ file, original }) => file !== own && original !== own);
  const { nearest, compared } = findLikeness(grids.redesign, grids.original, others);
  const byFile = new Map(others.map((flag) => [flag.file, flag]));
  const described = nearest.map((one): NearFlag => {
    const flag = byFile.get(one.file);
    const slug = flag?.slug === undefined ? {} : { slug: flag.slug };
    return { ...one, origin: flag?.origin ?? "collection", ...slug };
  });
  return {
    likeness: { nearest: described, compared },
    problems: nearest
      .filter(({ deltaE00 }) => deltaE00 < likenessWarning)
      .map((flag) =>
        report(
          "study/likeness",
          { file: study.file, ...study.places.get("change.with") },
          {
            reason: describeLikeness(flag),
            hint: `Look at both side by side. Flags under ${likenessWarning} are easily taken for each other.`,
          },
          "warning",
        ),
      ),
  };
}

function describeLikeness({ file, deltaE00, orientation }: Likeness): string {
  const turned = orientation === "as it is" ? "" : ` ${orientation}`;
  return `The redesign looks much like ${file}${turned}: they differ by ${formatDifference(deltaE00, likenessWarning)} (mean ΔE00 over the flag).`;
}
