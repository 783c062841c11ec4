// Floor 6. Which flags a redesign looks most like: plain data for pages.
import type { Likeness } from "../../measure/nearestflag.ts";

/** Where a flag comes from: an original or redesign of the gallery, its folder `flags`, or the folder it compares with. */
export type FlagOrigin = "original" | "redesign" | "flag" | "collection";

/** `slug`: the study it belongs to, where there is one. */
export interface NearFlag extends Likeness {
  readonly origin: FlagOrigin;
  readonly slug?: string;
}

/** The nearest three, nearest first, out of how many. */
export interface StudyLikeness {
  readonly nearest: readonly NearFlag[];
  readonly compared: number;
}
