// Floor 11. The words behind a command → checked operands and options, or what to type instead.
import { parseArgs } from "node:util";
import { findNearest } from "../problem/knownword.ts";
import { quoteText } from "../problem/quote.ts";
import { type Command, type Given, UsageError } from "./command.ts";
import { quoteWord } from "./text/invocation.ts";

/**
 * Reads `words` for `command`, one of `all`. Throws UsageError for an unknown option (with the command of `all` that it
 * belongs to, or the nearest known one), a value that is missing or not asked for, an option given twice, and too few or
 * too many operands.
 */
export function parseArguments(
  command: Command,
  words: readonly string[],
  all: readonly Command[] = [],
): Given {
  const known = Object.fromEntries(
    Object.entries(command.options).map(([name, { value }]) => [
      name,
      { type: value === undefined ? "boolean" : "string" } as const,
    ]),
  );
  const { tokens } = parseArgs({
    args: [...words],
    options: known,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const operands: string[] = [];
  const values: Record<string, string> = {};
  const switches = new Set<string>();
  for (const token of tokens) {
    if (token.kind === "positional") operands.push(token.value);
    if (token.kind !== "option") continue;
    const option = Object.hasOwn(command.options, token.name) ? command.options[token.name] : undefined;
    if (!option) throw unknownOption(command, token.rawName, all);
    if (values[token.name] !== undefined)
      throw new UsageError(`--${token.name} stands there twice.`, "Give it once.");
    if (option.value === undefined) {
      if (token.value !== undefined)
        throw new UsageError(`--${token.name} takes no value.`, `Type --${token.name} alone.`);
      switches.add(token.name);
    } else {
      values[token.name] = checkValue(token.name, option.value, token.value, token.inlineValue ?? false);
    }
  }
  checkOperands(command, operands);
  return { operands, values, switches };
}

/** Returns the value of a numeric option, or `otherwise` if it was not given. Throws UsageError outside the range. */
export function numberOf(
  given: Given,
  name: string,
  range: readonly [number, number],
  otherwise: number,
): number {
  const text = given.values[name];
  if (text === undefined) return otherwise;
  const number = Number(text);
  if (/^\d+(?:\.\d+)?$/.test(text) && number >= range[0] && number <= range[1]) return number;
  throw new UsageError(
    `--${name} is ${quoteText(text)}; it must be a number from ${range[0]} to ${range[1]}.`,
    `Type, for example: --${name} ${otherwise}`,
  );
}

function checkValue(name: string, placeholder: string, value: string | undefined, isInline: boolean): string {
  if (value !== undefined && value !== "" && (isInline || !/^--?[a-z]/i.test(value))) return value;
  const hashed = hashedValues[name];
  if (hashed === undefined || value !== undefined)
    throw new UsageError(`--${name} needs a value behind it.`, `Type, for example: --${name} ${placeholder}`);
  throw new UsageError(
    `--${name} needs a value behind it. From a # on, a shell passes nothing on, unless it stands in quotes.`,
    `Type, for example: --${name} "${hashed}"`,
  );
}

/** Options whose value often begins with #: the shell takes that, and all behind it, for a comment. */
const hashedValues: Readonly<Record<string, string>> = {
  replace: "#701c2b",
  with: "#e6b436",
  only: "#wheel",
  focus: "#wheel",
};

function unknownOption(command: Command, raw: string, all: readonly Command[]): UsageError {
  const names = [...Object.keys(command.options), "help"];
  const plain = raw.replace(/^-+/, "");
  const owners = all.filter(({ options }) => Object.hasOwn(options, plain)).map(({ name }) => name);
  const renamed = Object.entries(command.options).find(([, { formerly }]) => formerly === plain);
  const near = renamed?.[0] ?? findNearest(plain, names);
  const listed = names.map((name) => `--${name}`).join(", ");
  const hint =
    owners.length > 0
      ? `That is an option of ${new Intl.ListFormat("en").format(owners)}. Those of ${command.name} are: ${listed}.`
      : near
        ? `Did you mean --${near}?`
        : `The options are: ${listed}.`;
  return new UsageError(`${command.name} has no option ${quoteText(raw)}.`, hint);
}

function checkOperands(command: Command, operands: readonly string[]): void {
  const [fewest, most] = command.operands;
  const hint = `Type: counterchange ${command.name} ${command.usage}`;
  if (operands.length < fewest)
    throw new UsageError(`${command.name} needs ${command.needs ?? "a file"}.`, hint);
  const extra = operands[most];
  if (extra === undefined) return;
  const { name, misplaced } = command;
  if (misplaced?.pattern.test(extra))
    throw new UsageError(
      `${name} does not know what ${quoteText(extra)} is for: ${misplaced.is} stands behind --${misplaced.option}.`,
      `Type: counterchange ${[name, ...operands.slice(0, most)].join(" ")} --${misplaced.option} ${quoteWord(extra)}`,
    );
  throw new UsageError(`${name} does not know what to do with ${quoteText(extra)}.`, hint);
}
