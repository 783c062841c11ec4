// Floor 5. What the author calls a colour, read as a reader will: a word that says another colour, or only looks like one.
import { anchors, basicWords } from "../../colour/basicword.ts";
import type { Hex } from "../../colour/colour.ts";
import { isOwnName, nameColour, wordOf } from "../../colour/colourname.ts";
import { linearOf, parseColour } from "../../colour/colourtext.ts";
import { cssNames } from "../../colour/cssname.ts";
import { measureDifference } from "../../colour/difference.ts";
import { quoteText } from "../../problem/quote.ts";
import { skeletonsOf } from "../folder/lookalike.ts";
import { nameCharacter } from "../text/cleantext.ts";
import type { Finding } from "../yaml/finding.ts";

/** ΔE00 from every shade that a word is used for, beyond which nobody uses it: twice what sets two hues apart at a glance. */
const beyond = 20;

/**
 * Names of CSS that people also give to quite other colours: azure is the blue of heraldry.
 *
 * Source: our own judgement; common practice, no source.
 */
const loose = new Set(["azure", "chartreuse", "chocolate", "khaki", "lavender", "moccasin", "peru"]);

/** Every plain name of a colour, by the texts that it is found to look like. */
const byLook: ReadonlyMap<string, string> = new Map(
  [...cssNames, ...basicWords].flatMap((name) => skeletonsOf(name).map((look) => [look, name] as const)),
);

/**
 * Returns where `names`, as read from YAML, says of a colour what it is not.
 *
 * Problems: study/name-contradicts, a warning.
 */
export function checkMeant(names: Readonly<Record<string, unknown>>): Finding[] {
  return Object.entries(names).flatMap(([key, value]): Finding[] => {
    const path = `names.${key}`;
    const hex = parseColour(key)?.hex;
    const word = typeof value === "string" ? findWord(value) : undefined;
    if (hex === undefined || word === undefined || isCalled(hex, word)) return [];
    const reason = `${quoteText(key)} is called ${quoteText(String(value))}, and it is ${nameColour(hex)}.`;
    const hint = `Type: ${JSON.stringify(hex)}: ${nameColour(hex)}\nOr give the name to the colour that it says.`;
    return [{ rule: "study/name-contradicts", severity: "warning", path, on: "value", reason, hint }];
  });
}

/**
 * Returns where a text of `value`, as read from YAML, at any depth, has letters of two scripts in one word that look like each
 * other, is written in the letters of another script and looks like the name of a colour, or has signs in the place of letters.
 * Sources: UTS 39, section 5.1, mixed-script detection; Unicode's block of mathematical alphanumeric symbols.
 *
 * Problems: study/mixed-script, a warning.
 */
export function checkScripts(value: unknown, path = ""): Finding[] {
  if (typeof value === "string") return checkText(value, path);
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) =>
    checkScripts(part, path === "" ? key : `${path}.${key}`),
  );
}

function checkText(text: string, path: string): Finding[] {
  const tell = (what: string, letter: string, right: string | undefined): Finding[] => {
    const reason = `${quoteText(text)} has ${what} (${nameCharacter(letter)}).`;
    const hint = `Type it again by hand${right === undefined ? ", in letters of one alphabet." : `: ${right}`}`;
    return [{ rule: "study/mixed-script", severity: "warning", path, on: "value", reason, hint }];
  };
  const styled = sign.exec(text)?.[0];
  if (styled !== undefined) {
    const plain = text.normalize("NFKC");
    return tell("signs in the place of letters", styled, sign.test(plain) ? undefined : plain);
  }
  const letter = other.exec(text)?.[0];
  if (letter === undefined) return [];
  const mixed = text.split(/[^\p{L}\p{M}]+/u).filter((word) => latin.test(word));
  const alike = mixed.flatMap((word) => word.match(others) ?? []).find(looksLatin);
  const meant = lookOf(text);
  if (alike === undefined && meant === undefined) return [];
  return tell("letters that look like those of another alphabet", alike ?? letter, meant);
}

const latin = /\p{sc=Latin}/u;
const other = /[\p{sc=Cyrillic}\p{sc=Greek}\p{sc=Armenian}\p{sc=Cherokee}]/u;
const others = new RegExp(other, "gu");

/** Letters of formulas and of full width, and what each font shows as it likes. */
const sign = /[\u{1d400}-\u{1d7ff}\uff21-\uff3a\uff41-\uff5a\p{Co}]/u;

/** A delta in ΔE is taken for no other letter. */
const looksLatin = (letter: string): boolean => latin.test(skeletonsOf(letter)[0] ?? "");

/** The word for a hue that a name says, with light or dark where it says so, if it is the plain name of a colour. */
function findWord(name: string): string | undefined {
  const plain = lookOf(name) ?? name.normalize("NFKC").trim().toLowerCase();
  const [last] = plain.split(/[ -]/).reverse();
  const tone = /\b(?:light|dark)/.exec(plain)?.[0];
  if (isOwnName(plain)) return tone === undefined ? last : `${tone} ${last}`;
  const hex = loose.has(plain) || !cssNames.includes(plain) ? undefined : parseColour(plain)?.hex;
  return hex === undefined ? undefined : nameColour(hex);
}

function lookOf(name: string): string | undefined {
  const plain = name.normalize("NFKC").replace(/[\s-]+/g, "");
  return skeletonsOf(plain)
    .map((look) => byLook.get(look))
    .find((known) => known !== undefined);
}

/** `said` is the name of a hue, or with light or dark before it. */
function isCalled(hex: Hex, said: string): boolean {
  const linear = linearOf(hex);
  return (
    wordOf(hex) === said.split(" ").at(-1) ||
    anchors.some(
      (anchor) =>
        said.endsWith(anchor.word) &&
        measureDifference(linearOf(anchor.hex), linear) <= beyond &&
        [anchor.word, said].includes(nameColour(anchor.hex)),
    )
  );
}
