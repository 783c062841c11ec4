// Floor 7. Messages of the catalogue with their values filled in.
import type { IntlMessageFormat } from "intl-messageformat";
import { isPlain, listChoosers, readMessage } from "../content/text/message.ts";
import { findCatalogue } from "./catalogue.ts";
import { directionOf, hasRightToLeft, isolateForeign } from "./direction.ts";
import type { Catalogue, english, WordId } from "./en/all.ts";

/** The names of the values in a message; those in the branches of a plural count too. */
type NamesIn<Message extends string> = InText<Message, []>;

/** In running text, within the branches of `Open`. */
type InText<
  Rest extends string,
  Open extends readonly unknown[],
> = Rest extends `${infer Before}{${infer After}`
  ? Before extends `${string}}${string}`
    ? Rest extends `${string}}${infer Behind}`
      ? InBranches<Behind, Open>
      : never
    : After extends `${infer Name}}${infer Behind}`
      ? Name extends `${infer Chooser},${string}`
        ? Chooser | (After extends `${string},${infer Branches}` ? InBranches<Branches, [0, ...Open]> : never)
        : Name | InText<Behind, Open>
      : never
  : never;

/** Between the branches of a plural: the next one begins, or the plural ends. */
type InBranches<
  Rest extends string,
  Open extends readonly unknown[],
> = Rest extends `${infer Before}{${infer After}`
  ? Before extends `${string}}${string}`
    ? Rest extends `${string}}${infer Behind}`
      ? Open extends readonly [unknown, ...infer Outer]
        ? InText<Behind, Outer>
        : never
      : never
    : InText<After, Open>
  : never;

type ValuesOf<Id extends WordId> = Readonly<Record<NamesIn<(typeof english)[Id]>, string | number>>;

/** What a message needs besides its id: nothing where it has no values. */
export type Values<Id extends WordId> = [NamesIn<(typeof english)[Id]>] extends [never]
  ? readonly []
  : readonly [values: ValuesOf<Id>];

/** What is made of the parts of a message that stand in tags: `<a>…</a>`. */
export type Tags<T> = Readonly<Record<string, (inside: readonly (string | T)[]) => T>>;

/** Messages of a society, by their ids, in place of ours. */
export type OwnWords = Readonly<Record<string, string>>;

export const noOwnWords: OwnWords = {};

/** What has a language, and its own words in it. */
export interface Worded {
  readonly language: string;
  readonly words?: OwnWords;
}

/** Says messages in one language. */
export interface Say {
  /** A message as text. Throws where a value is missing. */
  <Id extends WordId>(id: Id, ...values: Values<Id>): string;
  /** A message with tags, in pieces. Throws where a value or a tag is missing. */
  parts<Id extends WordId, T>(id: Id, tags: Tags<T>, ...values: Values<Id>): readonly (string | T)[];
}

type Filling = Readonly<Record<string, string | number>>;

/** The messages of `language`, a BCP 47 tag; `own` are a society's, in place of ours. */
export function createSay(language: string, own = noOwnWords): Say {
  const catalogue: Catalogue = { ...findCatalogue(language), ...own };
  const read = new Map<WordId, IntlMessageFormat>();
  const find = (id: WordId): IntlMessageFormat => {
    const message = read.get(id) ?? readMessage(catalogue[id], language);
    read.set(id, message);
    return message;
  };
  const place =
    directionOf(language) === "rtl" ? createIsolation(catalogue) : (_: WordId, values?: Filling) => values;
  const say = (id: WordId, values?: Filling): string => {
    const message = catalogue[id];
    return isPlain(message) ? message : String(find(id).format(place(id, values)));
  };
  const parts = <T>(id: WordId, tags: Tags<T>, values?: Filling) => {
    const found = find(id).format<string | T>({ ...tags, ...place(id, values) } as never);
    return (Array.isArray(found) ? found : [found]) as readonly (string | T)[];
  };
  return Object.assign(say, { parts }) as Say;
}

/**
 * Keeps values in letters from left to right together in messages from right to left; not those that choose a branch. A text
 * that has no other letters, as a title in English, runs from the left.
 */
function createIsolation(catalogue: Catalogue): (id: WordId, values?: Filling) => Filling {
  const choosers = new Map<WordId, readonly string[]>();
  return (id, values = {}) => {
    if (![catalogue[id], ...Object.values(values).map(String)].some(hasRightToLeft)) return values;
    const choose = choosers.get(id) ?? listChoosers(catalogue[id]);
    choosers.set(id, choose);
    return Object.fromEntries(
      Object.entries(values).map(([name, value]) => [
        name,
        typeof value === "string" && !choose.includes(name) ? isolateForeign(value) : value,
      ]),
    );
  };
}
