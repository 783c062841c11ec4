// Floor 8. The sheet for makers of an adopted redesign: proportions, construction, colours and cautions on one page of paper.
import type { StudyResult } from "../../analysis/result.ts";
import type { Hex } from "../../colour/colour.ts";
import { linearOf, toRgb } from "../../colour/colourtext.ts";
import { labOf } from "../../colour/space.ts";
import type { Gallery } from "../../content/study/study.ts";
import { areWhole, divideHeight } from "../../measure/wholepart.ts";
import type { PlainShape } from "../../svg/construction.ts";
import type { Format } from "../../words/format.ts";
import { shapeIds } from "../../words/makerwords.ts";
import { nameWhole } from "../../words/paintname.ts";
import { formatTitle } from "../../words/title.ts";
import { formatCanonical, linkFrom } from "../address.ts";
import { pictureFirst } from "../linkview.ts";
import { type Frame, presentFrame } from "../pageframe.ts";
import { type Plate, presentPair } from "../plate.ts";
import { formatStudyPath } from "../status.ts";
import { presentNotes } from "../study/notes.ts";
import { hatchedFiles } from "./sheetpart.ts";

export interface MakerPage {
  readonly frame: Frame;
  /** The page's folder in the site, without slashes around it. */
  readonly folder: string;
  readonly title: string;
  readonly name: string;
  readonly back: string;
  readonly foot: string;
  readonly unofficial: string;
  readonly decision: string | undefined;
  readonly flag: Plate;
  readonly outline: Plate;
  /** Written along the sides of the outline. */
  readonly sides: Readonly<Record<"width" | "height", string>>;
  readonly proportions: string;
  readonly built: readonly BuiltRow[];
  /** What the rows are in, and what they leave out. */
  readonly builtHow: readonly string[];
  readonly colours: readonly DyeRow[];
  /** Says how many colours have no room; undefined where all have. */
  readonly others: string | undefined;
  readonly drawing: { readonly address: string; readonly file: string };
}

export interface BuiltRow {
  readonly shape: string;
  readonly hex: Hex;
  readonly colour: string;
  readonly fromHoist: string;
  readonly fromTop: string;
  readonly width: string;
  readonly height: string;
}

/** A colour as a dyer asks for it. `lab` is L*, a*, b* under D65. */
export interface DyeRow {
  readonly hex: Hex;
  readonly name: string;
  readonly rgb: string;
  readonly lab: string;
  readonly reflectance: string;
}

/** Colours that the page has room for (our own judgement). */
const mostColours = 8;

/** The site path of a study's sheet for makers; undefined where the study is not adopted. */
export function formatMakerPath({ slug, status }: StudyResult["study"]): string | undefined {
  return status === "adopted" ? `${formatStudyPath(slug)}maker/` : undefined;
}

/** The sheet of a study; none where it is not adopted. */
export function presentMaker(result: StudyResult, gallery: Gallery, format: Format): readonly MakerPage[] {
  const { say } = format;
  const { study } = result;
  const path = formatMakerPath(study);
  if (path === undefined) return [];
  const home = formatStudyPath(study.slug);
  const link = linkFrom(path);
  const title = formatTitle(study, format);
  const { decision } = presentNotes(result, gallery, link, home, format);
  const { society } = gallery;
  const unofficial = society === undefined ? say("maker.unofficial") : say("maker.unofficialBy", { society });
  const name = study.flag ?? study.title;
  const [, flag] = presentPair(result, link, format);
  const description = `${say("maker.description")} ${unofficial}`;
  const head = { path, title: say("maker.title", { title }), description, isArticle: true };
  return [
    {
      frame: presentFrame(
        { ...head, section: "studies", ...pictureFirst([result], gallery, format) },
        gallery,
        format,
      ),
      folder: path.slice(1, -1),
      title,
      name,
      back: link(home),
      foot: [gallery.title, formatCanonical(gallery.address, home)].filter(Boolean).join(" · "),
      unofficial,
      decision,
      flag,
      outline: {
        ...flag,
        src: link(`${home}${hatchedFiles.made}`),
        alt: say("maker.outline", { name }),
      },
      ...presentBuilt(result, format),
      ...presentDyes(result, format),
      drawing: { address: link(`${home}redesign.svg`), file: `${study.slug}-redesign.svg` },
    },
  ];
}

function presentBuilt({ construction, comparison }: StudyResult, format: Format) {
  const { width, shapes, left } = construction;
  const [high, wide] = comparison.after.proportions;
  const parts = divideHeight([[width], ...shapes.map(({ sizes }) => sizes)]);
  const isWhole = (lengths: readonly number[]): boolean => parts > 1 && areWhole(lengths, parts);
  const whole = (length: number) => format.number(Math.round(length * parts), 0);
  const say = (lengths: readonly number[]): readonly string[] =>
    lengths.map(isWhole(lengths) ? whole : (length) => format.percent(100 * length, 1));
  const nameOf = (hex: Hex): string => {
    const paint = comparison.after.colours.find((colour) => colour.hex === hex);
    return paint === undefined ? hex : nameWhole(paint);
  };
  const hasPercent = [[width], ...shapes.map(({ sizes }) => sizes)].some((lengths) => !isWhole(lengths));
  return {
    proportions: `${format.number(high, 0)}:${format.number(wide, Number.isInteger(wide) ? 0 : 3)}`,
    sides: { width: say([width])[0] ?? "", height: say([1])[0] ?? "" },
    built: shapes.map((shape) => presentShape(shape, nameOf(shape.hex), say(shape.sizes), format)),
    builtHow: [
      format.say(shapes.length === 0 ? "maker.none" : "maker.laid"),
      ...(parts > 1 ? [format.say("maker.parts", { parts: whole(1) })] : []),
      ...(hasPercent ? [format.say("maker.percent")] : []),
      ...(left > 0 && shapes.length > 0 ? [format.say("maker.untold", { count: left })] : []),
    ],
  };
}

function presentShape(
  { kind, hex }: PlainShape,
  colour: string,
  sizes: readonly string[],
  { say }: Format,
): BuiltRow {
  const [fromHoist = "", fromTop = "", width = "", height = ""] = sizes;
  const shape = say(shapeIds[kind]);
  const place = { shape, hex, colour, fromHoist, fromTop };
  if (kind === "rectangle" || kind === "line") return { ...place, width, height };
  return {
    ...place,
    width: say("maker.across", { width }),
    height: kind === "ring" ? say("maker.hole", { height }) : "–",
  };
}

/** Every colour of the redesign once, largest first. */
function presentDyes({ comparison }: StudyResult, format: Format): Pick<MakerPage, "colours" | "others"> {
  const paints = new Map([...comparison.after.colours].reverse().map((paint) => [paint.hex, paint]));
  const largest = [...paints.values()].sort((a, b) => b.share - a.share);
  const left = largest.length - mostColours;
  const colours = largest.slice(0, mostColours).map((paint) => {
    const { r, g, b } = toRgb(paint.hex);
    const lab = labOf(linearOf(paint.hex));
    return {
      hex: paint.hex,
      name: nameWhole(paint),
      rgb: [r, g, b].map((part) => format.number(Math.round(255 * part), 0)).join(" "),
      lab: [lab.l, lab.a, lab.b].map((part) => format.number(part, 1)).join(" / "),
      reflectance: format.percent(paint.reflectance),
    };
  });
  return { colours, others: left > 0 ? format.say("maker.others", { count: left }) : undefined };
}
