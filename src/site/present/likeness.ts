// Floor 6. Which flags a redesign looks most like: names, numbers, which way round, and pictures of those we may show.
import type { Orientation } from "../../measure/likeness.ts";
import { likenessWarning } from "../../measure/nearest.ts";
import type { NearFlag } from "../../study/near.ts";
import type { GalleryResult, StudyResult } from "../../study/result.ts";
import type { Linker } from "../address.ts";
import { findShown } from "./flagname.ts";
import type { Format } from "./format.ts";
import { capitalise } from "./phrase.ts";
import { type Plate, presentPlate } from "./plate.ts";
import { formatStudyPath } from "./status.ts";

export interface LikenessView {
  /** How many flags it was compared with, and which it comes nearest to. */
  readonly sentence: string;
  /** Where one is so near that it is easily taken for it. */
  readonly warning: string | undefined;
  /** The redesign itself, to be looked at beside the others. */
  readonly own: Plate;
  readonly nearest: readonly NearView[];
  readonly how: string;
}

export interface NearView {
  readonly name: string;
  readonly figures: string;
  readonly isNear: boolean;
  /** Undefined for a drawing that is compared with and not published. */
  readonly shown: { readonly plate: Plate; readonly address: string } | undefined;
}

const turned: Readonly<Record<Orientation, string>> = {
  "as it is": "",
  mirrored: ", seen from behind",
  "upside down": ", upside down",
};

/** The section of a study page, or undefined where the redesign was compared with nothing. */
export function presentLikeness(
  { study, comparison, likeness }: StudyResult,
  all: Pick<GalleryResult, "studies" | "survey">,
  link: Linker,
  format: Format,
): LikenessView | undefined {
  if (likeness === undefined) return undefined;
  const nearest = likeness.nearest.map((near) => presentNear(near, all, link, format));
  const [first] = nearest;
  if (first === undefined) return undefined;
  const flags =
    likeness.compared === 1 ? "1 other flag" : `${format.number(likeness.compared, 0)} other flags`;
  const near = nearest.filter(({ isNear }) => isNear).map(({ name }) => name);
  return {
    sentence: `Compared with ${flags}, the redesign is nearest to ${first.name}.`,
    warning:
      near.length === 0
        ? undefined
        : `Under ${format.number(likenessWarning, 0)} one flag is easily taken for another: look at it beside ${format.list(near)}.`,
    own: presentPlate(
      "This redesign",
      link(`${formatStudyPath(study.slug)}redesign.svg`),
      comparison.after,
      format,
    ),
    nearest,
    how: link("/method/#likeness"),
  };
}

function presentNear(
  near: NearFlag,
  all: Pick<GalleryResult, "studies" | "survey">,
  link: Linker,
  format: Format,
): NearView {
  const flag = findShown(near, all);
  const name = flag?.name ?? near.file.split("/").at(-1) ?? near.file;
  return {
    name,
    figures: `Mean ΔE00 ${format.difference(near.deltaE00, likenessWarning)}${turned[near.orientation]}`,
    isNear: near.deltaE00 < likenessWarning,
    shown: flag && {
      plate: presentPlate(capitalise(name), link(flag.drawing), flag.measure, format),
      address: link(flag.page),
    },
  };
}
