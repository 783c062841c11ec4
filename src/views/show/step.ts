// Floor 8. One step of a show: what it says and shows, and what all steps of a study are told from.
import type { StudyResult } from "../../analysis/result.ts";
import type { Format } from "../../words/format.ts";
import type { DrawnPlate, Plate } from "../plate.ts";
import type { RulerView } from "../study/contrastruler.ts";
import type { EdgeMapView, LocatorView } from "../study/edgemap.ts";
import type { MatrixView } from "../study/matrixview.ts";
import type { OptionsView } from "../study/optionsview.ts";
import type { presentFigures, StudyPage } from "../study/studypage.ts";

/** One step. `anchor` is its address on the page, `name` what `show` in a study calls it; `says` stands under the picture. */
export interface ShowStep {
  readonly anchor: string;
  readonly name: string;
  readonly heading: string;
  readonly says: string | undefined;
  readonly picture: ShowPicture;
  /** What a speaker may say, with numbers in words; and what the author reminds them of. Neither is shown on a projector. */
  readonly speech: string;
  readonly note: string | undefined;
}

type ShowPicture =
  | { readonly kind: "flag"; readonly plate: Plate }
  | { readonly kind: "edge"; readonly names: string; readonly locator: LocatorView; readonly plate: Plate }
  | { readonly kind: "pair"; readonly plates: readonly [Plate, Plate] }
  | { readonly kind: "strip"; readonly plates: readonly Plate[] }
  | { readonly kind: "map"; readonly map: EdgeMapView }
  | {
      readonly kind: "afar";
      /** `says` stands under the picture where it is one of pixels. */
      readonly steps: readonly { readonly from: number; readonly says: string; readonly plate: DrawnPlate }[];
    }
  /** `picture` is that of the whole matrix, a PNG in base64. */
  | { readonly kind: "matrix"; readonly matrix: MatrixView; readonly picture: string }
  | { readonly kind: "ruler"; readonly ruler: RulerView }
  | { readonly kind: "seen"; readonly seen: StudyPage["seen"] };

/** A step that has no address yet. */
export type Told = Pick<ShowStep, "name" | "heading" | "picture" | "says" | "speech">;

/** All that is looked up once for the steps of a study. */
export interface Ground {
  readonly result: StudyResult;
  readonly format: Format;
  readonly figures: ReturnType<typeof presentFigures>;
  readonly options: OptionsView | undefined;
  readonly path: string;
  /** How its author begins. */
  readonly own: string | undefined;
}

/** Puts a step together: its name, its heading, what it shows, what stands under that, and what a speaker may say. */
export function tellStep(
  name: string,
  heading: string,
  picture: ShowPicture,
  says: string | undefined,
  speech: string,
): Told {
  return { name, heading, picture, says, speech };
}
