// Floor 6. A study with everything computed from it: what the site publishes.
import type { Hex } from "../colour/colour.ts";
import type { Vision } from "../colour/vision.ts";
import type { AddressNotes } from "../content/folder/addressfile.ts";
import type { listFormer } from "../content/folder/formerly.ts";
import type { Nomination } from "../content/gallery/nominationfile.ts";
import type { Page } from "../content/page/pagefile.ts";
import type { Series } from "../content/series/series.ts";
import type { Gallery, Study } from "../content/study/study.ts";
import type { Comparison } from "../measure/comparison.ts";
import type { Problem } from "../problem/problem.ts";
import type { Construction } from "../svg/construction.ts";
import type { StudyLikeness } from "./likeness/likenessdata.ts";
import type { StudyRanking } from "./options/studyranking.ts";
import type { GallerySurvey } from "./survey/surveyentry.ts";
import type { SurveyedDrawing } from "./survey/surveyflags.ts";

/** The drawings of a study, as SVG text written by us. `seen` holds one drawing for each kind of vision. */
export interface StudyDrawings {
  readonly original: string;
  readonly redesign: string;
  readonly seen: Readonly<Record<Vision, { readonly original: string; readonly redesign: string }>>;
}

/** A traced line of the edge between the paints `a` and `b`: x, y pairs in flag heights from the upper hoist corner. */
export interface EdgeLine {
  readonly a: string;
  readonly b: string;
  readonly points: readonly number[];
  /** Share of the line, 0 to 1, with the focus beside it. */
  readonly focusShare: number;
}

/** What comes of the drawing and the change of a study. */
export interface MeasuredStudy {
  /** The change with both colours resolved. `only` and `part` as written. */
  readonly change: {
    readonly replace: Hex;
    readonly with: Hex;
    readonly only?: string;
    readonly part?: string;
  };
  readonly comparison: Comparison;
  readonly drawings: StudyDrawings;
  /** Every line as seen from the viewing distance; a change of colour moves none. */
  readonly edgeLines: readonly EdgeLine[];
  /** The plain shapes of the redesign. */
  readonly construction: Construction;
  /** Where a charge runs into its own paint and was not guessed: what names it in the study, `focus: { … }`. */
  readonly focusToName?: string;
}

export interface StudyResult extends MeasuredStudy {
  /** All single changes of the drawing and where this one stands; absent where they could not be ranked. */
  readonly ranking?: StudyRanking;
  /** The flags that the redesign looks most like; absent where it was compared with none. */
  readonly likeness?: StudyLikeness;
  readonly study: Study;
}

/** A drawing that a page shows, as SVG text written by us. */
export type ShownDrawing = Pick<SurveyedDrawing, "drawing" | "measure">;

/** A whole gallery: every good study, and every problem of the bad ones. */
export interface GalleryResult {
  readonly gallery: Gallery;
  readonly studies: readonly StudyResult[];
  /** With the studies and flags that are published; absent where nobody asked for them. */
  readonly series?: readonly Series[];
  /** The gallery's own pages, in their order; absent where nobody looked. */
  readonly pages?: readonly Page[];
  /** The drawings that those pages show, by their path in the content folder; absent where nobody looked. */
  readonly drawings?: ReadonlyMap<string, ShownDrawing>;
  readonly problems: readonly Problem[];
  /** Flags without a study that readers named; absent where nobody looked. */
  readonly nominations?: readonly Nomination[];
  /** What the list of addresses has; absent where there is none. */
  readonly addresses?: AddressNotes;
  /** Old addresses of studies, drafts too, with the names they have now; absent where nobody looked. */
  readonly former?: ReturnType<typeof listFormer>;
  /** Old names that several studies may have had, and those studies; absent where nobody looked. */
  readonly contested?: ReadonlyMap<string, readonly string[]>;
  /** The names of all folders in studies/, published or not; absent where nobody looked. */
  readonly folders?: readonly string[];
  /** Those of them that have an error, sorted; absent where nobody looked. */
  readonly leftOut?: readonly string[];
  /** Every flag of the gallery as it is; absent where nobody asked for it. */
  readonly survey?: GallerySurvey;
}
