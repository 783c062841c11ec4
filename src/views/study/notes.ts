// Floor 8. What an author and a society say beside the numbers: decision, options, meaning, credit, downloads.

import type { StudyResult } from "../../analysis/result.ts";
import type { Hex } from "../../colour/colour.ts";
import { nameColour } from "../../colour/colourname.ts";
import { parseColour } from "../../colour/colourtext.ts";
import type { Credit, Gallery, NotedOption } from "../../content/study/study.ts";
import { sayColour } from "../../words/colourphrase.ts";
import { describeDecision } from "../../words/decisionphrase.ts";
import type { Format } from "../../words/format.ts";
import type { Swatch } from "../../words/paintname.ts";
import type { Linker } from "../address.ts";

export interface NotesView {
  readonly decision: string | undefined;
  readonly symbolism: string | undefined;
  readonly options: readonly OptionNote[];
  readonly credit: CreditView | undefined;
  readonly downloads: readonly Download[];
  readonly unofficial: string;
}

export interface OptionNote {
  readonly replace: NotedColour;
  readonly with: NotedColour;
  /** What the part that `only` selects is called. */
  readonly where: string | undefined;
  readonly only: string | undefined;
  readonly note: string | undefined;
}

/** A colour as the author wrote it. The swatch is undefined where the words name no colour on their own. */
export interface NotedColour {
  readonly text: string;
  readonly swatch: Swatch | undefined;
}

export interface CreditView {
  readonly sentence: string;
  /** An address to link to, or undefined where the source is no web address. */
  readonly source: string | undefined;
  readonly sourceText: string | undefined;
  readonly licence: string;
}

export interface Download {
  readonly address: string;
  readonly file: string;
  readonly text: string;
}

/** The pictures to take away, in the study's folder. */
export const pngFiles = { original: "original-2000.png", redesign: "redesign-2000.png" } as const;
const pngWidth = 2000;

/** Their size in pixels for a flag of these proportions (height, width): 2000 wide, but never over 4000 high. */
export function pngSize([high, wide]: readonly [number, number]): {
  readonly width: number;
  readonly height: number;
} {
  const height = Math.min(2 * pngWidth, Math.max(1, Math.round((pngWidth * high) / wide)));
  const width = Math.min(pngWidth, Math.max(1, Math.round((height * wide) / high)));
  return { width, height };
}

/** Everything a study says of itself besides its prose. */
export function presentNotes(
  result: StudyResult,
  gallery: Gallery,
  link: Linker,
  path: string,
  format: Format,
): NotesView {
  const { study } = result;
  return {
    decision: study.decision && describeDecision(study.decision, study.status, format),
    symbolism: gallery.terms?.symbolism === false ? undefined : study.symbolism,
    options: study.options.map((option, index) => presentOption(option, index, result, gallery, format)),
    credit: study.credit && presentCredit(study.credit, format),
    downloads: [
      {
        address: link(`${path}original.svg`),
        file: `${study.slug}-original.svg`,
        text: format.say("record.originalSvg"),
      },
      {
        address: link(`${path}redesign.svg`),
        file: `${study.slug}-redesign.svg`,
        text: format.say("record.redesignSvg"),
      },
      {
        address: link(`${path}${pngFiles.original}`),
        file: `${study.slug}-original.png`,
        text: format.say("record.originalPng"),
      },
      {
        address: link(`${path}${pngFiles.redesign}`),
        file: `${study.slug}-redesign.png`,
        text: format.say("record.redesignPng"),
      },
      {
        address: link(`${path}edges.csv`),
        file: `${study.slug}-edges.csv`,
        text: format.say("record.edgesCsv"),
      },
      {
        address: link(`${path}study.json`),
        file: `${study.slug}.json`,
        text: format.say("record.json"),
      },
    ],
    unofficial: describeUnofficial(gallery, format),
  };
}

function presentOption(
  option: NotedOption,
  index: number,
  { comparison, ranking }: StudyResult,
  gallery: Gallery,
  format: Format,
): OptionNote {
  const measured = ranking?.noted.find((noted) => noted.index === index);
  const hex = parseColour(option.replace)?.hex;
  const replaced = comparison.before.colours.find(
    (colour) => colour.hex === (measured?.replace ?? hex) && colour.part === undefined,
  );
  return {
    replace: replaced === undefined ? presentNoted(option.replace, hex, format) : named(replaced),
    with:
      measured === undefined
        ? presentNoted(option.with, parseColour(gallery.palette.get(option.with) ?? option.with)?.hex, format)
        : named({ hex: measured.with, name: measured.name }),
    where: option.only === undefined ? undefined : (option.part ?? format.say("record.selectedPart")),
    only: option.only,
    note: option.note,
  };
}

function named({ hex, name }: Swatch): NotedColour {
  return { text: name, swatch: { hex, name } };
}

/** A colour of which nothing is measured: a hex reads as the name of its colour, a name stays as the author wrote it. */
function presentNoted(written: string, hex: Hex | undefined, format: Format): NotedColour {
  if (hex === undefined) return { text: written, swatch: undefined };
  return named({ hex, name: written.startsWith("#") ? sayColour(nameColour(hex), format) : written });
}

function presentCredit(credit: Credit, { say }: Format): CreditView {
  const isAddress = credit.source !== undefined && /^https?:\/\//.test(credit.source);
  const title = credit.title ?? say("record.drawing");
  return {
    sentence: credit.author === undefined ? title : say("record.by", { title, author: credit.author }),
    source: isAddress ? credit.source : undefined,
    sourceText: credit.source,
    licence: credit.licence,
  };
}

function describeUnofficial({ society }: Gallery, { say }: Format): string {
  return society === undefined ? say("record.unofficial") : say("record.unofficialBy", { society });
}
