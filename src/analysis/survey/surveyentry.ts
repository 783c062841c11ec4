// Floor 6. The survey of a gallery as plain data for pages.
import type { Measure } from "../../measure/measurement.ts";
import type { Survey, SurveyedFlag } from "./surveyflags.ts";

/** One flag of a gallery. `flag.file` is its path in the content folder: `flags/a.svg`. */
export interface SurveyEntry {
  readonly flag: SurveyedFlag;
  readonly measure: Measure;
  /** Slugs of the studies that begin with it, sorted. */
  readonly slugs: readonly string[];
  /** SVG text of a flag without a study; a study publishes its own. */
  readonly drawing?: string;
}

export interface GallerySurvey {
  /** In the order of the survey. */
  readonly entries: readonly SurveyEntry[];
  /** Files that could not be measured, by their path in the content folder. */
  readonly failed: Survey["failed"];
}
