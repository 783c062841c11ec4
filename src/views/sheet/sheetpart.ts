// Floor 8. What the sheets of a class show of one study: the handout, the worksheet and the answers are all made of this.
import type { StudyResult } from "../../analysis/result.ts";
import { basicWords } from "../../colour/basicword.ts";
import { parseColour } from "../../colour/colourtext.ts";
import { clearFrom, softFrom, strongFrom } from "../../colour/contrast.ts";
import { hatchings } from "../../colour/hatching.ts";
import type { Gallery } from "../../content/study/study.ts";
import { sayColour } from "../../words/colourphrase.ts";
import type { Format } from "../../words/format.ts";
import { nameWhole } from "../../words/paintname.ts";
import { askClass, type Question } from "../../words/sheetquestion.ts";
import { signIds } from "../../words/sheetwords.ts";
import { describeChange, describeVerdict, type VerdictView } from "../../words/verdict.ts";
import type { Linker } from "../address.ts";
import { type Plate, presentPair } from "../plate.ts";
import { formatStudyPath } from "../status.ts";
import { presentRuler, type RulerView } from "../study/contrastruler.ts";
import { presentNotes } from "../study/notes.ts";
import { presentOptionsLine } from "../study/optionsview.ts";
import { type Chip, drawSign, presentChip, type Sign } from "./hatchchip.ts";

export interface SheetStudy {
  readonly slug: string;
  readonly name: string;
  readonly title: string;
  readonly change: string;
  readonly verdict: VerdictView;
  readonly plates: readonly [Plate, Plate];
  readonly hatched: readonly [Plate, Plate];
  /** Undefined where there is no edge. `scale` says what its steps are, `left` how many edges have no room. */
  readonly ruler: (RulerView & { readonly scale: string; readonly left: string | undefined }) | undefined;
  readonly questions: readonly Question[];
  /** The original to colour in. */
  readonly outline: Plate;
  readonly colours: readonly Chip[];
  /** Of both flags: what the lines on the handout stand for. */
  readonly legend: readonly Chip[];
  readonly palette: readonly Chip[];
  readonly shares: string;
  readonly best: string | undefined;
  readonly credit: string | undefined;
}

/** Pictures of both flags in lines, and of the original in outlines, in the study's folder; where it is adopted, of the redesign. */
export const hatchedFiles = {
  original: "hatched-original.webp",
  redesign: "hatched-redesign.webp",
  outline: "outline.webp",
  made: "outline-redesign.webp",
} as const;
/** Pixels: at the size of the sheets over 250 to the inch. */
const rooms = { hatched: { width: 900, height: 600 }, outline: { width: 1500, height: 1000 } };

/** Colours and edges that a page has room for (our own judgement): of a flag, to choose from, on the ruler. */
const most = { colours: 8, palette: 15, edges: 4 };

/** Their size in pixels for a flag of these proportions (height, width). */
export function hatchedSize(
  [high, wide]: readonly [number, number],
  isOutline = false,
): { readonly width: number; readonly height: number } {
  const room = isOutline ? rooms.outline : rooms.hatched;
  const scale = Math.min(room.width / wide, room.height / high);
  return { width: Math.max(1, Math.round(wide * scale)), height: Math.max(1, Math.round(high * scale)) };
}

/** All colours that have lines, with what heraldry calls them. */
export function listSigns({ say }: Format): readonly { readonly name: string; readonly sign: Sign }[] {
  return basicWords.flatMap((word) =>
    word in signIds
      ? [{ name: say(signIds[word as keyof typeof signIds]), sign: drawSign(hatchings[word]) }]
      : [],
  );
}

/** One study, for the page that `link` writes addresses for. */
export function presentSheetStudy(
  result: StudyResult,
  gallery: Gallery,
  link: Linker,
  format: Format,
): SheetStudy {
  const { say } = format;
  const { study, comparison } = result;
  const path = formatStudyPath(study.slug);
  const credit = presentNotes(result, gallery, link, path, format).credit;
  const plates = presentPair(result, link, format);
  const colours = listColours([comparison.before]);
  const best = presentOptionsLine(result, link, format)?.says;
  return {
    slug: study.slug,
    name: study.flag ?? study.title,
    title: study.title,
    change: describeChange(result, format),
    verdict: describeVerdict(comparison, format),
    plates,
    hatched: [
      {
        ...plates[0],
        alt: say("sheet.originalInLines"),
        src: link(`${path}${hatchedFiles.original}`),
      },
      {
        ...plates[1],
        alt: say("sheet.redesignInLines"),
        src: link(`${path}${hatchedFiles.redesign}`),
      },
    ],
    ruler: cutRuler(presentRuler(result, link, format), format),
    questions: askClass(comparison, format, best),
    outline: {
      ...plates[0],
      alt: say("sheet.inOutlines", { flag: study.flag ?? study.title }),
      src: link(`${path}${hatchedFiles.outline}`),
    },
    colours,
    legend: listColours([comparison.before, comparison.after]),
    palette: listPalette(gallery, format),
    shares: format.list(
      comparison.before.colours
        .slice(0, most.colours)
        .map((paint) => `${nameWhole(paint)} ${format.share(paint.share)}`),
    ),
    // Beside a price it is the answer to a question.
    best: comparison.price.length > 0 ? undefined : best,
    credit: credit && say("record.rights", { credit: credit.sentence, licence: credit.licence }),
  };
}

function cutRuler(ruler: RulerView | undefined, format: Format): SheetStudy["ruler"] {
  if (ruler === undefined) return undefined;
  const all = [...ruler.rows, ...(ruler.rest?.rows ?? [])];
  const left = all.length - most.edges;
  return {
    ...ruler,
    rows: all.slice(0, most.edges),
    rest: undefined,
    scale: format.say("sheet.scale", {
      soft: format.percent(softFrom),
      clear: format.percent(clearFrom),
      strong: format.percent(strongFrom),
    }),
    left: left > 0 ? format.say("sheet.left", { count: left }) : undefined,
  };
}

/** Every colour, once by its name, largest first. */
function listColours(measures: readonly StudyResult["comparison"]["before"][]): readonly Chip[] {
  const chips = new Map<string, Chip>();
  for (const paint of measures.flatMap(({ colours }) => colours)) {
    const name = nameWhole(paint);
    if (!chips.has(name)) chips.set(name, presentChip(paint.hex, name));
  }
  return [...chips.values()].slice(0, most.colours);
}

/** What a class may choose from. */
export function listPalette({ palette }: Gallery, format: Format): readonly Chip[] {
  const chips = [...palette].flatMap(([name, colour]) => {
    const hex = parseColour(colour)?.hex;
    return hex === undefined ? [] : [presentChip(hex, sayColour(name, format))];
  });
  return chips.slice(0, most.palette);
}
