// Floor 9. The link picture of the survey as a file: a sheet of its flags, least clear first, and the one number.

import { linkSize } from "../../views/linkview.ts";
import type { SurveyPicture } from "../../views/survey/surveylinkview.ts";
import type { Fonts } from "./linkimage.ts";
import { drawHairline, drawPaper, fitFlag, ink, shorten } from "./paper.ts";
import { type Laid, type Layout, setText } from "./pixelpicture.ts";
import type { Sheeted } from "./recipe.ts";
import type { Easel } from "./renderdrawing.ts";

type SheetWords = Omit<SurveyPicture, "file">;

/** The mat that the flags lie on. Pixels. */
const mat = { x: 56, y: 44, width: 1088, height: 376 };
/** Width that a flag may have for its height before it is drawn lower. Most flags are 3:2 or 2:1. */
const usualWidth = 1.7;
const gap = 18;
/** Where words begin, and where the number stands. */
const rows = { title: 452, subtitle: 516, number: 548, foot: 588 };
const column = { width: 520, second: 624 };

/** What lies where on the picture. In a gallery that runs from right to left, so does the picture. */
export async function laySurveyPicture(
  words: SheetWords,
  flags: readonly Sheeted[],
  fonts: Fonts,
  easel: Pick<Easel, "render">,
): Promise<Layout> {
  const turn = ({ x, ...rest }: Laid): Laid =>
    words.direction === "rtl" ? { ...rest, x: linkSize.width - x - rest.picture.width } : { ...rest, x };
  const sheet = (await laySheet(flags, easel)).map(turn);
  return { ground: drawGround(sheet), laid: [...sheet, ...(await layWords(words, fonts)).map(turn)] };
}

async function laySheet(flags: readonly Sheeted[], easel: Pick<Easel, "render">): Promise<readonly Laid[]> {
  const { columns, width, height, left, top } = divide(flags.length);
  return Promise.all(
    flags.map(async ({ svg, proportions }, place) => {
      const picture = await easel.render(svg, fitFlag(proportions, { width, height }));
      const x = left + (place % columns) * (width + gap) + (width - picture.width) / 2;
      const y = top + Math.floor(place / columns) * (height + gap) + (height - picture.height) / 2;
      return { picture, x: Math.round(x), y: Math.round(y) };
    }),
  );
}

async function layWords(words: SheetWords, fonts: Fonts): Promise<readonly Laid[]> {
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

/** Paper, the mat, a hairline round each flag, a rule over the foot. */
function drawGround(sheet: readonly Laid[]): string {
  const ground = `<rect x="${mat.x}" y="${mat.y}" width="${mat.width}" height="${mat.height}" fill="${ink.mat}"/>`;
  const rule = `<path d="M${mat.x} ${rows.foot - 14}H${mat.x + mat.width}" stroke="${ink.line}"/>`;
  return drawPaper(`${ground}${sheet.map(drawHairline).join("")}${rule}`);
}
