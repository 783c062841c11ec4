// Floor 9. Finished pages → the letters that they set in each cut of the typefaces: all of them, and none that a page shows
// is left out. A few that no page shows may be among them.
import { type Cut, delta, type Face, isInScript } from "../../views/fontface.ts";

/** Letters by what they are set in. */
export type Lettering = Readonly<Record<Face["family"], Readonly<Record<Cut, ReadonlySet<string>>>>>;

// What templates/styles and the styles of browsers say, as far as it tells faces apart: a letter whose face is not known
// from here counts for all it may be set in. tests/browser/font.test.ts compares with what a browser makes of the styles.
/** Elements whose words slant, and those whose words are bold. */
export const slanted = ["em", "i", "cite", "dfn", "var", "address", "blockquote"];
export const bold = ["strong", "b"];
/** Nothing slants on pages that run from the right, and what is said with stress is bold there. */
export const boldOnUpright = ["em"];
/** Where bold words are not bold. */
const light = ["figcaption"];
/** Families by what is set in them. */
export interface Setting {
  readonly text: Face["family"];
  readonly headings: Face["family"];
}

/** Classes of places that are set in `family` alone: running text, where that has headings of the same, and small print. */
function listOwnPlaces(family: Face["family"], { text, headings }: Setting): readonly string[] {
  return [
    ...(text === family && headings === family ? ["prose-run"] : []),
    ...(family === "source-sans-3" ? ["source", "option-figures", "stamp-note"] : []),
  ];
}

const basicLatin = Array.from({ length: 0x5f }, (_, index) => String.fromCharCode(0x20 + index)).join("");

/** What browsers put beside or in place of letters that are there: hyphens at breaks, spaces and signs of numbers. */
const putByBrowsers = "\u00a0\u202f\u2010\u2011\u2019\u2026\u2212";

/** Returns the letters of `pages`, HTML, and of `written`: style sheets and scripts, which write letters of their own. */
export function collectLettering(
  pages: readonly string[],
  written: readonly string[],
  setting: Setting = { text: "source-serif-4", headings: "source-serif-4" },
): Lettering {
  const marks = written.flatMap(listWritten);
  const upright = new Set([...basicLatin, ...putByBrowsers, ...marks]);
  const family = () => ({
    "400 normal": upright,
    "400 italic": new Set<string>(),
    "600 normal": new Set<string>(),
    "600 italic": new Set<string>(),
  });
  const found = { "source-serif-4": family(), "source-sans-3": family() };
  for (const page of pages) {
    // Markup is of letters that the upright cut has anyway, and what it holds may be shown: words for a picture, a hint.
    const html = /^(?:<!DOCTYPE html>)?\s*<html lang="el\b/i.test(page) ? page : page.replaceAll(delta, "");
    for (const letter of listLetters(decode(html), /\P{ASCII}/gu)) upright.add(letter);
    addStressed(found["source-serif-4"], dropClasses(html, listOwnPlaces("source-sans-3", setting)), marks);
    addStressed(found["source-sans-3"], dropClasses(html, listOwnPlaces("source-serif-4", setting)), marks);
  }
  return found;
}

/** Returns the letters of several parts of a site together. */
export function joinLettering(parts: readonly Lettering[]): Lettering {
  const join = (family: Face["family"], cut: Cut) => new Set(parts.flatMap((part) => [...part[family][cut]]));
  const joinFamily = (family: Face["family"]) => ({
    "400 normal": join(family, "400 normal"),
    "400 italic": join(family, "400 italic"),
    "600 normal": join(family, "600 normal"),
    "600 italic": join(family, "600 italic"),
  });
  return { "source-serif-4": joinFamily("source-serif-4"), "source-sans-3": joinFamily("source-sans-3") };
}

/** Returns the letters that pages take from `face`, in the order of their code points; undefined where there are none. */
export function lettersOf(face: Face, lettering: Lettering): string | undefined {
  const all = [...lettering[face.family][face.cut]];
  const own = all.filter((letter) => isInScript(face.script, letter.codePointAt(0) ?? 0));
  if (own.length === 0) return undefined;
  // A letter that a font lacks may be put together from one it has and a mark; a space stands in for other spaces.
  const parts = all.filter((letter) => /\p{M}/u.test(letter));
  return [...new Set([" ", ...own, ...parts])].sort((a, b) => (a < b ? -1 : 1)).join("");
}

/** Adds the letters of `html` that are slanted, bold, or both. */
function addStressed(found: Record<Cut, Set<string>>, html: string, marks: readonly string[]): void {
  const isUpright = /<html[^<>]* dir="rtl"/.test(html);
  const slants = isUpright ? [] : slanted;
  const inSlanted = listContents(html, slants);
  const inBold = [
    ...listContents(dropElements(html, light), bold),
    ...(isUpright ? listContents(html, boldOnUpright) : []),
  ];
  const inBoth = [
    ...inSlanted.flatMap((inner) => listContents(inner, bold)),
    ...inBold.flatMap((inner) => listContents(inner, slants)),
  ];
  addWords(found["400 italic"], inSlanted, marks);
  addWords(found["600 normal"], inBold, marks);
  addWords(found["600 italic"], inBoth, marks);
}

function addWords(found: Set<string>, contents: readonly string[], marks: readonly string[]): void {
  for (const content of contents) {
    const words = decode(content.replace(/<[^<>]*>/g, " "));
    for (const letter of listLetters(words, /[^\s\p{Cc}]/gu)) found.add(letter);
    // The marks of a list are set like its words.
    if (/<li[\s>]/.test(content)) for (const mark of [...marks, ..."0123456789."]) found.add(mark);
  }
}

/** The letters of `text` that `kind` matches, with those that may be shown for them. */
function listLetters(text: string, kind: RegExp): ReadonlySet<string> {
  const letters = new Set(text.match(kind));
  const composed = text.normalize("NFC");
  for (const letter of composed === text ? [] : (composed.match(kind) ?? [])) letters.add(letter);
  for (const letter of [...letters]) {
    const parts = [...letter.normalize("NFD")];
    for (const [index, part] of parts.entries())
      for (const form of [
        part,
        parts
          .slice(0, index + 1)
          .join("")
          .normalize("NFC"),
      ])
        letters.add(form);
    if (letter === "\u00ad" || letter === "\u2011") for (const hyphen of "-\u2010") letters.add(hyphen);
  }
  // What could not be put together into one letter is there in its parts.
  return new Set([...letters].filter((letter) => [...letter].length === 1));
}

/** What stands in the elements called `names`, as HTML; of elements inside one another, both. */
function listContents(html: string, names: readonly string[]): readonly string[] {
  if (names.length === 0) return [];
  return findPlaces(html, new RegExp(`<(${names.join("|")})(?=[\\s>])[^<>]*>`, "g")).map(([start, end]) =>
    html.slice(start, end),
  );
}

/** Returns `html` without what stands in elements called `names`. */
function dropElements(html: string, names: readonly string[]): string {
  return dropPlaces(html, findPlaces(html, new RegExp(`<(${names.join("|")})(?=[\\s>])[^<>]*>`, "g")));
}

/** Returns `html` without what stands in elements that carry one of `classes`. */
function dropClasses(html: string, classes: readonly string[]): string {
  if (classes.length === 0) return html;
  const list = classes.join("|");
  return dropPlaces(
    html,
    findPlaces(html, new RegExp(`<(\\w+)[^<>]* class="(?:[^"]* )?(?:${list})(?: [^"]*)?"[^<>]*>`, "g")),
  );
}

function dropPlaces(html: string, places: readonly (readonly [number, number])[]): string {
  let rest = "";
  let from = 0;
  for (const [start, end] of places) {
    if (start < from) continue;
    rest += html.slice(from, start);
    from = end;
  }
  return rest + html.slice(from);
}

/** Where the contents of the elements begin and end that `opening` finds, in their order. It catches the element's name. */
function findPlaces(html: string, opening: RegExp): readonly (readonly [number, number])[] {
  return [...html.matchAll(opening)].map((tag) => {
    const start = tag.index + tag[0].length;
    return [start, findEnd(html, tag[1] ?? "", start)];
  });
}

/** Where the element called `name` ends whose content begins at `start`; at the end of `html` where nothing closes it. */
function findEnd(html: string, name: string, start: number): number {
  const tag = new RegExp(`<(/?)${name}(?=[\\s>])`, "g");
  tag.lastIndex = start;
  let depth = 1;
  for (let found = tag.exec(html); found !== null; found = tag.exec(html)) {
    depth += found[1] === "/" ? -1 : 1;
    if (depth === 0) return found.index;
  }
  return html.length;
}

/** Letters beyond Basic Latin of a style sheet or a script, plain or as escapes: `\2191`, `\u2191`. */
function listWritten(source: string): readonly string[] {
  const escaped = [...source.matchAll(/\\(?:u\{?)?([0-9a-f]{2,6})/gi)].map(([, hex]) =>
    parseInt(hex ?? "", 16),
  );
  const letters = escaped
    .filter((code) => code > 0x9f && code <= 0x10ffff)
    .map((code) => String.fromCodePoint(code));
  return [...new Set([...letters, ...(source.match(/\P{ASCII}/gu) ?? [])])];
}

/** The references that stand for letters in our pages: by number, and those of markup itself. */
const references: Readonly<Record<string, string>> = {
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  apos: "'",
  nbsp: "\u00a0",
};

function decode(text: string): string {
  return text.replace(/&(?:#x([0-9a-f]{1,6})|#([0-9]{1,7})|([a-z]+));/gi, (whole, hex, decimal, name) => {
    if (name !== undefined) return references[name] ?? whole;
    const code = hex === undefined ? Number.parseInt(decimal, 10) : Number.parseInt(hex, 16);
    return code <= 0x10ffff ? String.fromCodePoint(code) : whole;
  });
}
