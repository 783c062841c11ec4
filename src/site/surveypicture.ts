// Floor 6. The link picture of the survey as a file: a sheet of its flags, least clear first, and the one number.
import type { GallerySurvey, SurveyEntry } from "../study/entry.ts";
import type { StudyResult } from "../study/result.ts";
import type { SiteFile } from "./file.ts";
import { type Laid, layOut, renderDrawing, setText } from "./images.ts";
import { letteredPictureOf } from "./kept.ts";
import { type Fonts, unpackFonts } from "./linkpicture.ts";
import { drawHairline, drawPaper, fitFlag, ink, shorten } from "./paper.ts";
import { linkSize } from "./present/linkpicture.ts";
import { mostPictured, type SurveyPicture } from "./present/surveypicture.ts";

/** The mat that the flags lie on. Pixels. */
const mat = { x: 56, y: 44, width: 1088, height: 376 };
/** Width that a flag may have for its height before it is drawn lower. Most flags are 3:2 or 2:1. */
const usualWidth = 1.7;
const gap = 18;
/** Where words begin, and where the number stands. */
const rows = { title: 452, subtitle: 516, number: 548, foot: 588 };
const column = { width: 520, second: 624 };

/** The file of the picture, or none where there is no flag. */
export function listSurveyPicture(
  picture: SurveyPicture | undefined,
  { entries }: Pick<GallerySurvey, "entries">,
  studies: readonly StudyResult[],
): readonly SiteFile[] {
  if (picture === undefined) return [];
  const drawings = entries.slice(0, mostPictured).flatMap((entry) => findDrawing(entry, studies) ?? []);
  const { file, ...words } = picture;
  return [
    letteredPictureOf(file, words, drawings, async () =>
      drawSurveyPicture(picture, drawings, await unpackFonts()),
    ),
  ];
}

/** A flag of the sheet: SVG text that we wrote, and height to width. */
interface Sheeted {
  readonly svg: string;
  readonly proportions: readonly [number, number];
}

/** Returns the picture as PNG. In a gallery that runs from right to left, so does the picture. */
export async function drawSurveyPicture(
  picture: SurveyPicture,
  flags: readonly Sheeted[],
  fonts: Fonts,
): Promise<Buffer> {
  const turn = ({ x, ...rest }: Laid): Laid =>
    picture.direction === "rtl" ? { ...rest, x: linkSize.width - x - rest.picture.width } : { ...rest, x };
  const sheet = (await laySheet(flags)).map(turn);
  const words = (await layWords(picture, fonts)).map(turn);
  return layOut(drawGround(sheet), [...sheet, ...words]);
}

async function laySheet(flags: readonly Sheeted[]): Promise<readonly Laid[]> {
  const { columns, width, height, left, top } = divide(flags.length);
  return Promise.all(
    flags.map(async ({ svg, proportions }, place) => {
      const picture = await renderDrawing(svg, fitFlag(proportions, { width, height }));
      const x = left + (place % columns) * (width + gap) + (width - picture.width) / 2;
      const y = top + Math.floor(place / columns) * (height + gap) + (height - picture.height) / 2;
      return { picture, x: Math.round(x), y: Math.round(y) };
    }),
  );
}

async function layWords(words: SurveyPicture, fonts: Fonts): Promise<readonly Laid[]> {
  const serif = { font: "Source Serif 4", fontFile: fonts.serif, width: column.width } as const;
  const sans = { font: "Source Sans 3", fontFile: fonts.sans, hex: ink.quiet, width: column.width } as const;
  const number = await setText({ ...serif, text: words.number, hex: ink.text, pixels: 56 });
  const { second } = column;
  return [
    {
      picture: await setText({ ...serif, text: words.title, hex: ink.text, pixels: 46 }),
      x: mat.x,
      y: rows.title,
    },
    { picture: await setText({ ...sans, text: words.subtitle, pixels: 24 }), x: mat.x, y: rows.subtitle },
    { picture: await setText({ ...sans, text: words.measure, pixels: 24 }), x: second, y: rows.title },
    { picture: number, x: second, y: rows.number - number.height },
    {
      picture: await setText({ ...serif, text: shorten(words.gallery), hex: ink.quiet, pixels: 22 }),
      x: mat.x,
      y: rows.foot,
    },
    { picture: await setText({ ...sans, text: words.caution, pixels: 21 }), x: second, y: rows.foot },
  ];
}

/** Columns that show the flags largest, the size of a cell, and where the first one begins. Pixels. */
function divide(count: number) {
  const inner = { width: mat.width - 2 * gap, height: mat.height - 2 * gap };
  let best = { columns: 1, lines: 1, height: 0 };
  for (let columns = 1; columns <= count; columns++) {
    const lines = Math.ceil(count / columns);
    const width = (inner.width - gap * (columns - 1)) / columns;
    const height = Math.min((inner.height - gap * (lines - 1)) / lines, width / usualWidth);
    if (height > best.height) best = { columns, lines, height };
  }
  const height = Math.floor(best.height);
  const width = Math.floor((inner.width - gap * (best.columns - 1)) / best.columns);
  const used = best.lines * height + gap * (best.lines - 1);
  return {
    columns: best.columns,
    width,
    height,
    left: mat.x + gap,
    top: mat.y + Math.round((mat.height - used) / 2),
  };
}

function findDrawing(entry: SurveyEntry, studies: readonly StudyResult[]): Sheeted | undefined {
  const [slug] = entry.slugs;
  const svg = entry.drawing ?? studies.find(({ study }) => study.slug === slug)?.drawings.original;
  return svg === undefined ? undefined : { svg, proportions: entry.measure.proportions };
}

/** Paper, the mat, a hairline round each flag, a rule over the foot. */
function drawGround(sheet: readonly Laid[]): string {
  const ground = `<rect x="${mat.x}" y="${mat.y}" width="${mat.width}" height="${mat.height}" fill="${ink.mat}"/>`;
  const rule = `<path d="M${mat.x} ${rows.foot - 14}H${mat.x + mat.width}" stroke="${ink.line}"/>`;
  return drawPaper(`${ground}${sheet.map(drawHairline).join("")}${rule}`);
}
