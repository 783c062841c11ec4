// Floor 7. What every sheet for a class says, whatever its study.
import type { BasicWord } from "../colour/basicword.ts";

/** Sentences of handout, worksheet and answers. */
export const sheetWords = {
  print:
    "To print: the print command of your browser, A4 or Letter, upright. Each part fills a page of its own.",
  ruler:
    "Contrast is how far two colours that meet are apart in lightness. Ring: the original. Dot: the redesign.",
  noRuler: "One colour: no edges to measure.",
  hatched: "In lines, for grey print",
  hatchedHow:
    "Each colour has its own lines, after Silvester Petra Sancta, Rome 1638. Shades of one colour share them.",
  change: "Change one colour. Colour the flag in, with the new one in its place.",
  own: "The flag’s colours",
  palette: "Colours to choose from",
  guess: "Guess the contrast wherever two colours meet: a ring for the original, a dot for your flag.",
  fill: "I change",
  into: "into",
  because: "because",
  price: "What gets worse, and why I accept it:",
  answers: "Answers",
  opinion: "On the worksheet no choice is right or wrong. What counts is a reason that names an edge.",
  signs:
    "Lines that stand for colours. Source: Silvester Petra Sancta, “Tesserae gentilitiae”, Rome 1638; told in A. C. Fox-Davies, “A Complete Guide to Heraldry”, 1909, chapter VII. Orange and brown: later convention, on which books differ; no source. Grey and pink have no lines and stay grey: our own choice.",
  unofficial: "Unofficial study",
  yours: "No study of this flag is here: it is yours.",
} as const;

/** All colours with lines, as the legend names them: what heraldry calls them stands behind. */
export const signNames: Readonly<Partial<Record<BasicWord, string>>> = {
  red: "red (gules)",
  blue: "blue (azure)",
  green: "green (vert)",
  black: "black (sable)",
  purple: "purple (purpure)",
  yellow: "yellow (or)",
  white: "white (argent)",
  orange: "orange (tenné), later",
  brown: "brown, later",
};

/** `2 more edges are on the page of the study.` */
export function countLeft(count: number, written: string): string {
  return `${written} more ${count === 1 ? "edge is" : "edges are"} on the page of the study.`;
}
