// Floor 8. Where a study lives on the site, and how its status reads.
import type { Status } from "../content/study/study.ts";

export interface StatusView {
  readonly status: Status;
  readonly word: string;
  readonly meaning: string;
}

const words: Readonly<Record<Status, { word: string; meaning: string }>> = {
  draft: { word: "Draft", meaning: "not finished" },
  open: { word: "Open", meaning: "proposed, not yet decided" },
  adopted: { word: "Adopted", meaning: "accepted by those who decide here" },
  declined: { word: "Declined", meaning: "not accepted by those who decide here" },
  withdrawn: { word: "Withdrawn", meaning: "taken back by its authors" },
};

/** The status in a word, with what it means. */
export function presentStatus(status: Status): StatusView {
  return { status, ...words[status] };
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
