// Floor 8. Which flags a redesign looks most like: names, numbers, which way round, and pictures of those we may show.

import type { NearFlag } from "../../analysis/likeness/likenessdata.ts";
import type { GalleryResult, StudyResult } from "../../analysis/result.ts";
import type { Gallery } from "../../content/study/study.ts";
import type { Orientation } from "../../measure/gridlikeness.ts";
import { likenessWarning } from "../../measure/nearestflag.ts";
import type { WordId } from "../../words/en/all.ts";
import type { Format } from "../../words/format.ts";
import { capitalise } from "../../words/phrase.ts";
import type { Linker } from "../address.ts";
import { type Plate, presentPlate } from "../plate.ts";
import { formatStudyPath } from "../status.ts";
import { findShown } from "../survey/flagname.ts";

export interface LikenessView {
  /** Whether one of the flags it was compared with is easily taken for it, and which comes nearest. */
  readonly sentence: string;
  readonly isNear: boolean;
  /** The redesign itself, to be looked at beside the others. */
  readonly own: Plate;
  readonly nearest: readonly NearView[];
  readonly how: string;
}

export interface NearView {
  readonly name: string;
  /** How far it is, within a sentence, and under its picture. */
  readonly figure: string;
  readonly figures: string;
  /** Undefined for a drawing that is compared with and not published. */
  readonly shown: { readonly plate: Plate; readonly address: string } | undefined;
}

/** How much a flag differs, by which way round it is held. */
const figureIds = {
  "as it is": "likeness.figure",
  mirrored: "likeness.figureMirrored",
  "upside down": "likeness.figureTurned",
} as const satisfies Record<Orientation, WordId>;

/** The section of a study page, or undefined where the redesign was compared with nothing or the gallery does not speak of it. */
export function presentLikeness(
  { study, comparison, likeness }: StudyResult,
  all: Pick<GalleryResult, "studies" | "survey"> & {
    readonly gallery?: Gallery;
    readonly rivals?: ReadonlyMap<string, unknown>;
  },
  link: Linker,
  format: Format,
): LikenessView | undefined {
  if (likeness === undefined || all.gallery?.terms?.likeness === false) return undefined;
  const nearest = likeness.nearest.map((near) => presentNear(near, all, link, format));
  const [first] = nearest;
  if (first === undefined) return undefined;
  const near = nearest.filter(
    (_, at) => (likeness.nearest[at]?.deltaE00 ?? likenessWarning) < likenessWarning,
  );
  return {
    sentence: [
      sayLikeness(likeness.compared, first, near, format),
      ...(all.rivals?.has(study.slug) ? [format.say("likeness.rivals")] : []),
    ].join(" "),
    isNear: near.length > 0,
    own: presentPlate(
      format.say("likeness.own"),
      link(`${formatStudyPath(study.slug)}redesign.svg`),
      comparison.after,
      format,
    ),
    nearest,
    how: link("/method/#likeness"),
  };
}

/** In a line where none is near. */
function sayLikeness(compared: number, first: NearView, near: readonly NearView[], format: Format): string {
  const values = {
    flags: format.say("likeness.flags", { count: compared }),
    figure: first.figure,
    limit: format.number(likenessWarning, 0),
  };
  return near.length === 0
    ? format.say("likeness.hardly", { ...values, nearest: first.name })
    : format.say("likeness.could", {
        ...values,
        count: near.length,
        names: format.list(near.map(({ name }) => name)),
      });
}

function presentNear(
  near: NearFlag,
  all: Pick<GalleryResult, "studies" | "survey">,
  link: Linker,
  format: Format,
): NearView {
  const flag = findShown(near, all, format);
  const name = flag?.name ?? near.file.split("/").at(-1) ?? near.file;
  const difference = format.difference(near.deltaE00, likenessWarning);
  const figure = format.say(figureIds[near.orientation], { difference });
  return {
    name,
    figure,
    figures: capitalise(figure),
    shown: flag && {
      plate: presentPlate(capitalise(name), link(flag.drawing), flag.measure, format),
      address: link(flag.page),
    },
  };
}
