// Floor 8. Where a study lives on the site, and how its status reads.
import type { Status } from "../content/study/study.ts";
import type { WordId } from "../words/en/all.ts";
import type { Format } from "../words/format.ts";

export interface StatusView {
  readonly status: Status;
  readonly word: string;
  readonly meaning: string;
}

const wordIds = {
  draft: ["status.draft", "status.draftMeans"],
  open: ["status.open", "status.openMeans"],
  adopted: ["status.adopted", "status.adoptedMeans"],
  declined: ["status.declined", "status.declinedMeans"],
  withdrawn: ["status.withdrawn", "status.withdrawnMeans"],
} as const satisfies Record<Status, readonly [WordId, WordId]>;

/** The status in a word, with what it means. */
export function presentStatus(status: Status, { say }: Format): StatusView {
  const [word, meaning] = wordIds[status];
  return { status, word: say(word), meaning: say(meaning) };
}

/** The site path of a study. Throws RangeError for a slug that could leave its folder. */
export function formatStudyPath(slug: string): string {
  if (!/^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(slug)) throw new RangeError(`not a slug: ${slug}`);
  return `/studies/${slug}/`;
}

/** The site path of the page with a study's other single changes. */
export function formatChangesPath(slug: string): string {
  return `${formatStudyPath(slug)}changes/`;
}
