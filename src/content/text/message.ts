// Floor 5. Messages in the syntax of ICU, of ours and of societies: the one place that reads it.
//
// Source: ICU, “Formatting Messages”, syntax of MessageFormat.
import { type MessageFormatElement, parse, TYPE } from "@formatjs/icu-messageformat-parser";
import { IntlMessageFormat } from "intl-messageformat";

/** Returns what `make` made of the same before: to make one takes far longer than to use it, and messages ask anew each time. */
function keep<Given extends readonly unknown[], Made>(
  make: (...given: Given) => Made,
): (...given: Given) => Made {
  const known = new Map<string, Made>();
  return (...given) => {
    const key = JSON.stringify(given);
    const made = known.get(key) ?? make(...given);
    known.set(key, made);
    return made;
  };
}

/** A count in a message is written as all our numbers are, without marks between its thousands. */
const formatters = {
  getNumberFormat: keep(
    (languages?: string | string[], options?: Intl.NumberFormatOptions) =>
      new Intl.NumberFormat(languages, { ...options, useGrouping: false }),
  ),
  getDateTimeFormat: keep(
    (...all: ConstructorParameters<typeof Intl.DateTimeFormat>) => new Intl.DateTimeFormat(...all),
  ),
  getPluralRules: keep(
    (...all: ConstructorParameters<typeof Intl.PluralRules>) => new Intl.PluralRules(...all),
  ),
};

/** Returns what fills in the values of `message` in `language`, a BCP 47 tag. Throws SyntaxError where it cannot be read. */
export function readMessage(message: string, language: string): IntlMessageFormat {
  return new IntlMessageFormat(message, language, undefined, { formatters });
}

/** Whether `message` is said as it stands. */
export function isPlain(message: string): boolean {
  return !/[{}<>']/.test(message);
}

/** The names of the values in a message, and of its tags with `<` before them, sorted. Throws SyntaxError. */
export function listValues(message: string): readonly string[] {
  const named = walk(parse(message)).flatMap((element) =>
    element.type === TYPE.literal || element.type === TYPE.pound
      ? []
      : [element.type === TYPE.tag ? `<${element.value}>` : `{${element.value}}`],
  );
  return [...new Set(named)].sort();
}

/** A plural in a message, and the numbers that it has a branch for: `one`, `other`. */
export interface Branches {
  readonly type: Intl.PluralRuleType;
  readonly has: readonly string[];
}

/** The plurals in a message. Throws SyntaxError. */
export function listBranches(message: string): readonly Branches[] {
  return walk(parse(message)).flatMap((element) =>
    element.type === TYPE.plural
      ? [{ type: element.pluralType ?? "cardinal", has: Object.keys(element.options) }]
      : [],
  );
}

/** The names of the values by whose words a message chooses a branch. Throws SyntaxError. */
export function listChoosers(message: string): readonly string[] {
  return walk(parse(message)).flatMap((element) => (element.type === TYPE.select ? [element.value] : []));
}

/** All parts of a message, those in branches and tags too. */
function walk(elements: readonly MessageFormatElement[]): readonly MessageFormatElement[] {
  return elements.flatMap((element) => {
    if (element.type === TYPE.plural || element.type === TYPE.select)
      return [element, ...Object.values(element.options).flatMap(({ value }) => walk(value))];
    return element.type === TYPE.tag ? [element, ...walk(element.children)] : [element];
  });
}
