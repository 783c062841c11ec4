// Floor 9. What all link pictures are drawn on: the paper of the light page, flags in their proportions, hairlines round them.
import { linkSize } from "../../views/linkview.ts";

/** Greys of the light page; `edge` is round flags, on the mat. */
export const ink = {
  paper: "#f7f7f7",
  mat: "#777777",
  text: "#1a1a1a",
  quiet: "#565656",
  line: "#adadad",
  edge: "#515151",
};

/** Width and height in pixels. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** The mat of a link picture, and the room that the flag has on it. */
export const linkMat = { width: 1088, height: 360 };
export const linkRoom: Size = { width: 0.9 * linkMat.width, height: 0.9 * linkMat.height };

/** What lies on the paper, its upper left corner at x, y. */
export interface Placed {
  readonly picture: Size;
  readonly x: number;
  readonly y: number;
}

/** The largest size in `room` of a flag with these proportions, height to width; at least one pixel each way. */
export function fitFlag([height, width]: readonly [number, number], room: Size): Size {
  const scale = Math.min(room.width / width, room.height / height);
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

/** SVG text of a hairline round a picture, outside it: through the cut-out of a flag shows the mat. */
export function drawHairline({ picture: { width, height }, x, y }: Placed): string {
  return `<rect x="${x - 0.5}" y="${y - 0.5}" width="${width + 1}" height="${height + 1}" fill="none" stroke="${ink.edge}"/>`;
}

/** SVG text of the whole ground: paper, and `drawn` on it. */
export function drawPaper(drawn: string): string {
  const { width, height } = linkSize;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}"><rect width="${width}" height="${height}" fill="${ink.paper}"/>${drawn}</svg>`;
}

/** One line of text: what is longer ends in an ellipsis. */
export function shorten(text: string): string {
  const letters = [...text];
  return letters.length <= 52 ? text : `${letters.slice(0, 51).join("")}…`;
}
