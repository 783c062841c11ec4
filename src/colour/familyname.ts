// Floor 1. The names of the colours of one flag that share a word: the largest plain, the others by what sets them apart.
import type { BasicWord } from "./basicword.ts";
import type { Hex } from "./colour.ts";
import { linearOf } from "./colourtext.ts";
import { countName, type Difference, findNeutralNames, listDifferences } from "./qualifier.ts";
import { oklchOf } from "./space.ts";

/** A colour with what it would be called if it stood alone. */
export interface Shade {
  readonly hex: Hex;
  readonly plain: string;
}

/** Colours that differ in one way from one that has its name, with the names that this way gives, least different first. */
interface Series {
  readonly key: string;
  readonly members: { readonly hex: Hex; readonly size: number }[];
  readonly namesFor: (count: number) => readonly string[];
}

/**
 * Adds the names of `family`, colours of one word, largest first, to `names`. Those that have a name there keep it, and
 * no name is given twice.
 */
export function nameFamily(word: BasicWord, family: readonly Shade[], names: Map<Hex, string>): void {
  const holders = new Map<string, Hex>();
  for (const { hex } of family) {
    const own = names.get(hex);
    if (own !== undefined) holders.set(own, hex);
  }
  for (const { hex, plain } of family) {
    if (names.has(hex) || has(names, plain)) continue;
    names.set(hex, plain);
    holders.set(plain, hex);
  }
  const [largest] = family;
  const told = [largest?.plain ?? "", word];
  // A colour of another family was given its plain name, and none of this one has any that it could be told from.
  if (largest !== undefined && !names.has(largest.hex) && !told.some((name) => holders.has(name)))
    names.set(
      largest.hex,
      countName(largest.plain, (name) => has(names, name)),
    );
  const series = new Map<string, Series>();
  for (const shade of family.filter(({ hex }) => !names.has(hex))) {
    const { size, ...found } = findSeries(word, shade, holders, family[0] ?? shade);
    const known = series.get(found.key) ?? { ...found, members: [] };
    known.members.push({ hex: shade.hex, size });
    series.set(known.key, known);
  }
  for (const one of series.values()) nameSeries(word, one, names);
}

function findSeries(
  word: BasicWord,
  { hex, plain }: Shade,
  holders: ReadonlyMap<string, Hex>,
  largest: Shade,
): Omit<Series, "members"> & { readonly size: number } {
  const reference = holders.get(word) ?? largest.hex;
  const holder = holders.get(plain) ?? reference;
  const [first] = listDifferences(word, holder, hex);
  if (first === undefined) throw new RangeError(`${hex} came twice`);
  if (first.axis !== "lightness") {
    const key = `${first.comparative} ${plain}`;
    return { key, size: first.size, namesFor: (count) => gradeWords(first, plain, count) };
  }
  const size = Math.abs(lightnessOf(hex) - lightnessOf(reference));
  if (plain === `${first.quality} ${word}` && holders.has(plain))
    return { key: `very ${plain}`, size, namesFor: () => [`very ${plain}`, `${first.quality}est ${word}`] };
  if (plain !== word && holders.has(plain)) {
    const key = `less ${plain}`;
    return { key, size: first.size, namesFor: (count) => gradeNames(key, count) };
  }
  const isDarker = lightnessOf(hex) < lightnessOf(reference);
  const isEnd = !holders.has(`${isDarker ? "dark" : "light"} ${word}`);
  const comparative = isDarker ? "darker" : "lighter";
  return { key: comparative, size, namesFor: (count) => lightnessNames(comparative, word, isEnd, count) };
}

/** `isEnd`: no colour of the family is darker, or lighter, than these by its name. */
function lightnessNames(
  comparative: string,
  word: BasicWord,
  isEnd: boolean,
  count: number,
): readonly string[] {
  const own = findNeutralNames(comparative, word);
  if (own !== undefined) return own;
  const name = `${comparative} ${word}`;
  const most = isEnd && count < 4 ? `${comparative.replace(/er$/, "est")} ${word}` : `much ${name}`;
  if (count === 1) return [name];
  if (count === 2) return isEnd ? [name, most] : [`slightly ${name}`, name];
  return [`slightly ${name}`, name, most];
}

function gradeWords({ comparative }: Difference, plain: string, count: number): readonly string[] {
  const name = `${comparative} ${plain}`;
  if (comparative === "neutral") return [name];
  return gradeNames(name, count, comparative.endsWith("ish") ? "very" : "much");
}

function gradeNames(name: string, count: number, most = "much"): readonly string[] {
  if (count === 1) return [name];
  return count === 2 ? [`slightly ${name}`, name] : [`slightly ${name}`, name, `${most} ${name}`];
}

/** Where there are more colours than names, the largest have them, and the others what sets them apart from the nearest. */
function nameSeries(word: BasicWord, { members, namesFor }: Series, names: Map<Hex, string>): void {
  const offered = namesFor(members.length).filter((name) => !has(names, name));
  const direct = members.slice(0, offered.length).sort((a, b) => a.size - b.size);
  for (const [index, { hex }] of direct.entries()) names.set(hex, offered[index] as string);
  for (const { hex, size } of members.slice(offered.length)) {
    const [near] = [...direct].sort((a, b) => Math.abs(a.size - size) - Math.abs(b.size - size));
    const base = names.get(near?.hex ?? hex) ?? namesFor(1)[0] ?? word;
    const qualified = near === undefined ? [] : listQualified(word, base, near.hex, hex);
    names.set(
      hex,
      qualified.find((name) => !has(names, name)) ?? countName(base, (name) => has(names, name)),
    );
  }
}

/** `darker green` → `darker bluish green`, `darker greyish green`: most telling first. */
function listQualified(word: BasicWord, base: string, from: Hex, hex: Hex): readonly string[] {
  return listDifferences(word, from, hex)
    .filter(({ axis }) => axis !== "lightness")
    .map(({ quality }) => insertWord(base, quality));
}

function insertWord(name: string, quality: string): string {
  const at = name.lastIndexOf(" ") + 1;
  return `${name.slice(0, at)}${quality} ${name.slice(at)}`;
}

function has(names: ReadonlyMap<Hex, string>, name: string): boolean {
  return [...names.values()].includes(name);
}

function lightnessOf(hex: Hex): number {
  return oklchOf(linearOf(hex)).lightness01;
}
