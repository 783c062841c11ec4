// Floor 9. Link pictures as files: a flag of both halves on its mat, the title, the one number, and what a redesign is.
import { rmSync } from "node:fs";
import { mkdtemp, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { readOwn } from "../../content/disk/packagefile.ts";
import type { Picture } from "../../regions/eyeblur.ts";
import type { LinkPicture } from "../../views/linkview.ts";
import { unpackFont } from "./fontfile.ts";
import { findLetteringFile, type letteringFonts } from "./imagecache.ts";
import { drawPaper, ink, linkMat, type Placed, shorten } from "./paper.ts";
import { type Laid, type Layout, type Lettering, setText } from "./pixelpicture.ts";
import { drawDivision, joinHalves } from "./splitimage.ts";

const mat = { x: 56, y: 36, ...linkMat };
/** The words stand in two columns, under the halves of the mat. */
const column = { width: 532, gap: 24 };
/** What is left of a column for “Original” and two pieces of cloth. */
const captionRoom = column.width - 210;
const captionY = mat.y + mat.height + 10;
const titleY = 452;
const footY = 582;
/** Sizes that are tried for a title, until it fits the room. */
const titleSizes = [46, 40, 36, 32, 28, 22, 18];
const titleRoom = { width: column.width - 12, height: 84 };

/** The two bundled fonts as files that the text renderer can read. */
export interface Fonts {
  readonly serif: string;
  readonly sans: string;
}

type LinkWords = Omit<LinkPicture, "file">;
type Style = Pick<Lettering, "font" | "fontFile" | "pixels" | "hex"> & { readonly width?: number };

let unpacked: Promise<Fonts> | undefined;

/**
 * The fonts that link pictures are set with, unpacked once: the text renderer keeps each file that it has read open by
 * its name, so the files stay until the process ends.
 */
export function unpackFonts(): Promise<Fonts> {
  unpacked ??= (async () => {
    const folder = await mkdtemp(path.join(tmpdir(), "counterchange-fonts-"));
    process.once("exit", () => rmSync(folder, { recursive: true, force: true }));
    const unpack = async (family: (typeof letteringFonts)[number]) => {
      const plain = path.join(folder, `${family}.ttf`);
      await writeFile(plain, unpackFont(await readOwn(findLetteringFile(family))));
      return plain;
    };
    return { serif: await unpack("source-serif-4"), sans: await unpack("source-sans-3") };
  })();
  return unpacked;
}

/** What lies where on one link picture. In a gallery that runs from right to left, so does the picture. */
export async function layLinkPicture(
  picture: LinkWords,
  flags: readonly [Picture, Picture],
  fonts: Fonts,
): Promise<Layout> {
  const isMirrored = picture.direction === "rtl";
  const [left, right] = [mat.x, mat.x + column.width + column.gap];
  const starts = isMirrored ? ([right, left] as const) : ([left, right] as const);
  const [first, second] = starts;
  const serif = { font: "Source Serif 4", fontFile: fonts.serif, hex: ink.text } as const;
  const sans = { font: "Source Sans 3", fontFile: fonts.sans, hex: ink.quiet } as const;
  const laid: Laid[] = [];
  const put = (what: Picture, start: number, y: number, inset = 0) => {
    const x = isMirrored ? start + column.width - what.width - inset : start + inset;
    laid.push({ picture: what, x, y });
  };
  const set = (text: string, style: Style) => setText({ width: column.width, ...style, text });
  const flag = placeFlag(joinHalves(flags, picture));
  laid.push(flag);
  for (const [side, caption] of picture.captions.entries()) {
    const inset = insetCaption(flag, side) + (picture.swatches?.[side] === undefined ? 0 : 60);
    put(await set(caption, { ...sans, pixels: 21 }), starts[side] ?? first, captionY, inset);
  }
  const title = await fitTitle(picture.title, serif);
  put(title, first, titleY);
  if (picture.subtitle !== undefined) {
    const subtitle = await set(shorten(picture.subtitle), { ...sans, pixels: 21 });
    put(subtitle, first, titleY + title.height + 10);
  }
  put(await set(picture.measure, { ...sans, pixels: 24 }), second, titleY);
  const arrow = await putMove(picture, second, isMirrored, laid, serif);
  put(await set(shorten(picture.gallery), { ...serif, pixels: 22 }), first, footY + 6);
  put(await set(picture.caution, { ...sans, pixels: 21 }), second, footY + 6);
  return { ground: drawGround(picture, flag, starts, arrow), laid };
}

/** Lays the number before and after; returns where the arrow between them goes. */
async function putMove(
  { move: [before, after] }: LinkWords,
  start: number,
  isMirrored: boolean,
  laid: Laid[],
  serif: Pick<Lettering, "font" | "fontFile" | "hex">,
): Promise<string> {
  const style = { ...serif, pixels: 62, width: column.width };
  const is = await setText({ ...style, text: after });
  // Figures of one font stand on one line, whatever the height of their ink.
  const base = titleY + 96;
  const place = (picture: Picture, along: number) =>
    laid.push({
      picture,
      x: isMirrored ? start + column.width - along - picture.width : start + along,
      y: base - picture.height,
    });
  if (before === undefined) {
    place(is, 0);
    return "";
  }
  const was = await setText({ ...style, text: before, hex: ink.quiet });
  place(was, 0);
  place(is, was.width + 112);
  const middle = was.width + 56;
  const x = isMirrored ? start + column.width - middle : start + middle;
  const way = isMirrored ? -1 : 1;
  return `<path d="M${x - way * 30} ${base - 20}h${way * 58}m${way * -16} -13l${way * 16} 13l${way * -16} 13" fill="none" stroke="${ink.quiet}" stroke-width="3"/>`;
}

async function fitTitle(text: string, style: Pick<Lettering, "font" | "fontFile" | "hex">): Promise<Picture> {
  let set: Picture | undefined;
  for (const pixels of titleSizes) {
    set = await setText({ ...style, text, pixels, width: titleRoom.width });
    if (set.height <= titleRoom.height && set.width <= titleRoom.width) return set;
  }
  return setText({ ...style, text: shorten(text), pixels: 22, width: titleRoom.width });
}

/** Paper, the mat, the division of the flag, pieces of cloth, a rule over the foot. */
function drawGround(
  { swatches, split }: LinkWords,
  flag: Placed,
  starts: readonly [number, number],
  arrow: string,
): string {
  const isMirrored = starts[0] > starts[1];
  const pieces = starts.map((start, side) => {
    const cloth = swatches?.[side];
    if (cloth === undefined) return "";
    const inset = insetCaption(flag, side);
    const at = isMirrored ? start + column.width - 48 - inset : start + inset;
    return `<rect x="${at}" y="${captionY}" width="24" height="22" fill="${cloth[0]}"/><rect x="${at + 24}" y="${captionY}" width="24" height="22" fill="${cloth[1]}"/><rect x="${at - 0.5}" y="${captionY - 0.5}" width="49" height="23" fill="none" stroke="${ink.line}"/>`;
  });
  const ground = `<rect x="${mat.x}" y="${mat.y}" width="${mat.width}" height="${mat.height}" fill="${ink.mat}"/>`;
  const rule = `<path d="M${mat.x} ${footY - 8}H${mat.x + mat.width}" stroke="${ink.line}"/>`;
  return drawPaper(`${ground}${drawDivision(flag, split)}${pieces.join("")}${rule}${arrow}`);
}

/** How far from the beginning of its column a caption stands: that of the original begins where the flag does. */
function insetCaption({ x }: Placed, side: number): number {
  return side === 0 ? Math.min(x - mat.x, captionRoom) : 0;
}

function placeFlag(picture: Picture): Laid {
  return {
    picture,
    x: Math.round(mat.x + (mat.width - picture.width) / 2),
    y: Math.round(mat.y + (mat.height - picture.height) / 2),
  };
}
