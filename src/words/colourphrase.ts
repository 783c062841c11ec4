// Floor 7. Names of colours in the gallery's language: those that floor 1 makes are taken apart by its words and said anew.
import { otherName } from "../analysis/drawing/smallcolour.ts";
import { type BasicWord, basicWords } from "../colour/basicword.ts";
import { ordinals } from "../colour/qualifier.ts";
import type { WordId } from "./en/all.ts";
import type { Format } from "./format.ts";

const wordIds = {
  black: "colour.black",
  white: "colour.white",
  grey: "colour.grey",
  red: "colour.red",
  orange: "colour.orange",
  yellow: "colour.yellow",
  green: "colour.green",
  blue: "colour.blue",
  purple: "colour.purple",
  pink: "colour.pink",
  brown: "colour.brown",
} as const satisfies Record<BasicWord, WordId>;

/** What stands before another name. */
const qualifierIds = {
  dark: "colour.dark",
  light: "colour.light",
  darkest: "colour.darkest",
  lightest: "colour.lightest",
  darker: "colour.darker",
  lighter: "colour.lighter",
  deeper: "colour.deeper",
  greyer: "colour.greyer",
  warmer: "colour.warmer",
  bluer: "colour.bluer",
  yellower: "colour.yellower",
  redder: "colour.redder",
  greener: "colour.greener",
  purpler: "colour.purpler",
  reddish: "colour.reddish",
  brownish: "colour.brownish",
  yellowish: "colour.yellowish",
  greenish: "colour.greenish",
  bluish: "colour.bluish",
  purplish: "colour.purplish",
  greyish: "colour.greyish",
  warm: "colour.warm",
  neutral: "colour.neutral",
  deep: "colour.deep",
  mid: "colour.mid",
  off: "colour.off",
  charcoal: "colour.charcoal",
  dull: "colour.dull",
  jet: "colour.jet",
  bright: "colour.bright",
  pure: "colour.pure",
} as const satisfies Readonly<Record<string, WordId>>;

const degrees: Readonly<Record<string, string>> = {
  "slightly less": "slightlyLess",
  "much less": "muchLess",
  less: "less",
  slightly: "slightly",
  much: "much",
  very: "very",
};

const pattern = new RegExp(
  `^(?:(${Object.keys(degrees).join("|")}) )?(?:(${Object.keys(qualifierIds).join("|")})(?<!off) |(off)-)(.+)$`,
);
const counted = new RegExp(`^(${ordinals.join("|")}) (.+)$`);
const numbered = /^(.+) (\d+)$/;
const selectedPart = /^(.+), selected part$/;

/** A name in the language of `format`; one that an author or a palette gives is said as it stands. */
export function sayColour(name: string, format: Format): string {
  const { say } = format;
  if (name === otherName) return say("colour.others");
  const part = selectedPart.exec(name)?.[1];
  if (part !== undefined) return say("colour.selectedPart", { colour: sayColour(part, format) });
  return sayOwn(name, format) ?? name;
}

/** Undefined for a name that is none of ours. */
function sayOwn(name: string, format: Format): string | undefined {
  const { say } = format;
  const word = basicWords.find((basic) => basic === name);
  if (word !== undefined) return say(wordIds[word]);
  const [, place, base = ""] = counted.exec(name) ?? [];
  if (place !== undefined) return say("colour.nth", { place, colour: sayColour(base, format) });
  const [, plain, number = ""] = numbered.exec(name) ?? [];
  if (plain === undefined) return sayQualified(name, format);
  const colour = sayOwn(plain, format);
  return colour && say("colour.numbered", { colour, number });
}

function sayQualified(name: string, format: Format): string | undefined {
  const [, degree = "", before, off, rest = ""] = pattern.exec(name) ?? [];
  const qualifier = (before ?? off) as keyof typeof qualifierIds | undefined;
  if (qualifier === undefined) return undefined;
  // `darker gold` is ours where `gold` is an author's; `dark gold` is what the author calls it.
  const isCompared = qualifier === "mid" || /er$/.test(qualifier);
  const colour = sayOwn(rest, format) ?? (isCompared ? rest : undefined);
  if (colour === undefined) return undefined;
  return format.say(qualifierIds[qualifier], {
    colour,
    degree: degrees[degree] ?? "none",
    word: basicWords.find((basic) => basic === rest) ?? "none",
  });
}
