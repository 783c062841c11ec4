// Floor 7. What the sheet for makers says, whatever its study.
import type { PlainShape } from "../svg/construction.ts";

/** Sentences and heads of the sheet. */
export const makerWords = {
  print: "To print: the print command of your browser, A4 or Letter, upright. One page.",
  built: "Construction",
  laid: "In the order in which they are laid: what comes later covers what is before.",
  none: "No plain shapes could be read from the drawing. The drawing file decides.",
  percent: "Positions and sizes in % are of the height, rounded.",
  colours: "Colours",
  coloursHow:
    "sRGB in bytes; CIELAB under D65; reflectance of cloth, of a dye that matches the screen, between the gallery’s black and white cloth.",
  source: "Sources: IEC 61966-2-1 (sRGB), CIE 15:2004 (CIELAB).",
  cautions: "Before you make it",
  law: "Local law goes first: on what a flag looks like, who may make it, and who may fly it.",
  cloth:
    "Cloth and dye charts decide. A screen colour is no dye: choose from a chart in daylight, and keep the colours as far apart in lightness as they are here.",
  file: "Where this sheet and the drawing file differ, the drawing file decides.",
  drawing: "The drawing file",
} as const;

/** A plain shape, and what its positions and sizes are. */
export const shapeWords: Readonly<Record<PlainShape["kind"], string>> = {
  rectangle: "Rectangle",
  line: "Line",
  circle: "Circle, by its centre",
  ring: "Ring, by its centre",
};

/** `Whole numbers are parts of which the height has 180.` */
export function describeParts(written: string): string {
  return `Whole numbers are parts of which the height has ${written}.`;
}

/** `8 other shapes are left out …` */
export function countUntold(count: number, written: string): string {
  return `${written} other ${count === 1 ? "shape is" : "shapes are"} left out, not plain or too many for this page: the drawing file decides.`;
}

/** `2 more colours are on the page of the study.` */
export function countOthers(count: number, written: string): string {
  return `${written} more ${count === 1 ? "colour is" : "colours are"} on the page of the study.`;
}
