// Floor 9. A recipe: plain data from which a child process makes the bytes of a file.
import type { Crop } from "../../views/edge/linepiece.ts";
import type { LinkPicture } from "../../views/linkview.ts";
import type { SurveyPicture } from "../../views/survey/surveylinkview.ts";
import type { Size } from "./paper.ts";
import type { PictureScene } from "./picturescene.ts";

/** A flag of a sheet: SVG text that we wrote, and height to width. */
export interface Sheeted {
  readonly svg: string;
  readonly proportions: readonly [number, number];
}

/** All that goes into a file, and nothing else. Drawings are SVG text that we wrote; sizes are in pixels. */
export type Recipe =
  | { readonly kind: "drawing"; readonly drawing: string }
  | { readonly kind: "labels"; readonly drawing: string; readonly size: Size }
  | {
      readonly kind: "hatched";
      readonly drawing: string;
      readonly size: Size;
      readonly isRedesign: boolean;
      /** Without the lines within a paint. */
      readonly isOutline: boolean;
    }
  | { readonly kind: "crop"; readonly drawing: string; readonly crop: Crop; readonly note?: string }
  | { readonly kind: "picture"; readonly drawing: string; readonly size: Size; readonly note?: string }
  | {
      readonly kind: "distance";
      readonly drawing: string;
      readonly size: Size;
      readonly distance: number;
      readonly isRedesign: boolean;
    }
  | { readonly kind: "matrix"; readonly picture: string }
  /** `words` are those that are set; `note` goes into the metadata. */
  | {
      readonly kind: "still";
      readonly scene: PictureScene;
      readonly words: readonly string[];
      readonly note: string;
    }
  | {
      readonly kind: "swap";
      readonly scenes: readonly [PictureScene, PictureScene];
      readonly words: readonly string[];
      readonly note: string;
    }
  | { readonly kind: "figure"; readonly scene: PictureScene; readonly title: string; readonly note: string }
  | {
      readonly kind: "link";
      readonly words: Omit<LinkPicture, "file">;
      readonly drawings: readonly [string, string];
      readonly size: Size;
    }
  | {
      readonly kind: "sheet";
      readonly words: Omit<SurveyPicture, "file">;
      readonly flags: readonly Sheeted[];
    };

/** A file that is drawn. `path` as in SiteFile. */
export interface DrawnFile {
  readonly path: string;
  readonly recipe: Recipe;
}
