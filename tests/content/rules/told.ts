// The examples of the catalogue that are told in words, made: what is too long to show, or concerns more than one file.
import { rightDrawing, rightGallery, rightPage, rightSeries, rightStudy } from "../mistakes.ts";

type Files = Readonly<Record<string, string | Uint8Array>>;

const at = (
  folder: string,
  study: string | Uint8Array,
  drawing: string | Uint8Array = rightDrawing,
): Files => ({
  "gallery.yaml": rightGallery,
  [`studies/${folder}/study.md`]: study,
  [`studies/${folder}/original.svg`]: drawing,
});

const ferry = (study: string | Uint8Array, drawing?: string | Uint8Array): Files =>
  at("ferry", study, drawing);
const drawn = (drawing: string | Uint8Array): Files => ferry(rightStudy, drawing);
const right = ferry(rightStudy);
const key = (line: string): string => rightStudy.replace("status: open", line);
const inside = (shapes: string): string => rightDrawing.replace("</svg>", `${shapes}</svg>`);
const utf16 = (text: string): Uint8Array => {
  const units = Array.from(text, (character) => character.charCodeAt(0));
  return new Uint8Array([0xff, 0xfe, ...units.flatMap((unit) => [unit & 0xff, unit >> 8])]);
};
const plainStudy = rightStudy.replace('  only: "#wheel"\n', "").replace('focus: { select: "#wheel" }\n', "");
const whiteWheel = plainStudy.replace('"#7a1020"', '"#ffffff"');
const runsIn = rightDrawing.replace('cy="8" r="5" fill="#7a1020"', 'cy="12" r="5" fill="#ffffff"');
const groups = (count: number, times: number): string =>
  Array.from({ length: count }, (_, index) => {
    const inner = index === 0 ? '<path d="M0 0h1v1z"/>' : `<use href="#g${index - 1}"/>`.repeat(times);
    return `<g id="g${index}">${inner}</g>`;
  }).join("");

/** A drawing whose pink is not that of CSS; the usual palette has none. */
const pink = (next: string): Files =>
  ferry(rightStudy.replace('"#f4c430"', next), rightDrawing.replace("#ffffff", "#e5709a"));
const grey = '<rect y="14" width="30" height="2" fill="#999999"/>';

/** A table of ballots that differ in their ids. */
const ballots = (count: number): string =>
  ["ballot,series,study,choice,why"]
    .concat(
      Array.from(
        { length: count },
        (_, at) => `${String(at).padStart(16, "0")},quay,ferry,redesign,"It is seen"`,
      ),
    )
    .join("\n");

/** So many pages beside each other. */
const ownPages = (count: number, text: string = rightPage): Files =>
  Object.fromEntries(Array.from({ length: count }, (_, index) => [`pages/a${index}.md`, text]));

/** Rule → both sides, made. */
export const told: Readonly<Record<string, { readonly wrong: Files; readonly right: Files }>> = {
  "study/front-matter-size": {
    wrong: ferry(key(`symbolism: ${"gold ".repeat(1800)}`)),
    right: ferry(`${rightStudy}${"gold ".repeat(1800)}\n`),
  },
  "study/file-size": { wrong: ferry(`${rightStudy}${"dark ".repeat(20_000)}\n`), right },
  "study/encoding": { wrong: ferry(utf16(rightStudy)), right },
  "study/too-long": {
    wrong: ferry(rightStudy.replace("A lighter ferry wheel", "A lighter ferry wheel ".repeat(14))),
    right: ferry(rightStudy.replace("A lighter ferry wheel", "A lighter ferry wheel ".repeat(9))),
  },
  "vote/file-size": {
    wrong: { ...right, "series/quay.md": rightSeries, "votes/quay/a.csv": ballots(1500) },
    right: { ...right, "series/quay.md": rightSeries, "votes/quay/a.csv": ballots(700) },
  },
  "page/menu": { wrong: { ...right, ...ownPages(6) }, right: { ...right, ...ownPages(5) } },
  "page/too-many": {
    wrong: { ...right, ...ownPages(501, rightPage.replace("menu: About\n", "")) },
    right: { ...right, ...ownPages(500, rightPage.replace("menu: About\n", "")) },
  },
  "study/formerly-claimed": {
    wrong: {
      ...ferry(key("formerly: [ferry-wheel]")),
      "studies/wheel/study.md": rightStudy.replace("status: open", "formerly: [ferry-wheel]"),
      "studies/wheel/original.svg": rightDrawing.replace("#1b2a5c", "#0f5a32").replace('r="5"', 'r="2"'),
    },
    right: ferry(key("formerly: [ferry-wheel]")),
  },
  "study/confusable": {
    wrong: {
      ...ferry(rightStudy),
      "studies/wheel/study.md": rightStudy.replace("[Ines Valcourt]", "[lnes Valcourt]"),
      "studies/wheel/original.svg": rightDrawing.replace("#1b2a5c", "#0f5a32").replace('r="5"', 'r="2"'),
    },
    right: ferry(rightStudy),
  },
  "study/two-meanings": {
    wrong: pink("pink"),
    right: pink('"#e5709a"'),
  },
  "study/colour-unseen": {
    wrong: ferry(plainStudy, rightDrawing.replace('r="5"', 'r="0"')),
    right: ferry(plainStudy),
  },
  "study/focus-hidden": {
    wrong: ferry(whiteWheel, runsIn),
    right: ferry(whiteWheel.replace("status:", 'focus: { select: "#wheel" }\nstatus:'), runsIn),
  },
  "study/likeness": {
    wrong: { ...right, "flags/harbour.svg": rightDrawing.replace("#7a1020", "#f4c430") },
    right,
  },
  "study/drawing-size": { wrong: drawn(inside(`<path d="M0 0${"h1v1".repeat(180_000)}"/>`)), right },
  "study/folder-empty": {
    wrong: {
      "gallery.yaml": `${rightGallery}compareWith: collection\n`,
      "studies/.DS_Store": "",
      "collection/north/harbour.svg": rightDrawing,
    },
    right: {
      "gallery.yaml": `${rightGallery}compareWith: collection\n`,
      "studies/.DS_Store": "",
      "collection/harbour.svg": rightDrawing,
    },
  },
  "study/link": {
    wrong: {
      ...right,
      "flags/ferry.svg": rightDrawing,
      "studies/ferry/original.svg": "→../../flags/ferry.svg",
    },
    right,
  },
  // 40 % of black over white is 0.6 · 255 = 153 = 0x99.
  "study/colour-lost": {
    wrong: drawn(inside(`${grey}<rect y="18" width="30" height="2" opacity="0.4"/>`)),
    right: drawn(inside(`${grey}<rect y="18" width="30" height="2" fill="#999999"/>`)),
  },
  "svg/empty": { wrong: drawn(""), right },
  "svg/encoding": { wrong: drawn(new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a])), right },
  "svg/not-svg": { wrong: drawn("<html><body>Not found</body></html>"), right },
  "svg/entity": {
    wrong: drawn(`<!DOCTYPE svg [<!ENTITY a "1">]>${inside(`<path d="M${"&a; ".repeat(300)}"/>`)}`),
    right,
  },
  "svg/cap": { wrong: drawn(inside(`${"<g>".repeat(70)}${"</g>".repeat(70)}`)), right },
  "svg/too-many-instances": {
    wrong: drawn(inside(`<defs>${groups(8, 10)}</defs><use href="#g7"/>`)),
    right: drawn(inside(`<defs>${groups(2, 2)}</defs><use href="#g1"/>`)),
  },
  "svg/written": {
    wrong: drawn(inside(`<desc>${">".repeat(200_000)}</desc>`)),
    right: drawn(inside(`<desc>${">".repeat(200)}</desc>`)),
  },
};
