// Floor 11. The command line: finds the command, runs it, and turns whatever happens into an exit status.
import { join } from "node:path";
import { describeRefusal, findRefusal } from "../content/disk/machinelimit.ts";
import { packageFolder, readOwn } from "../content/disk/packagefile.ts";
import { findNearest } from "../problem/knownword.ts";
import { quoteText } from "../problem/quote.ts";
import { parseArguments } from "./arguments.ts";
import { type Command, type Output, UsageError } from "./command.ts";
import { commands } from "./commands.ts";
import { formatCommandHelp, formatHelp } from "./text/help.ts";
import { quoteWord, spellCommands } from "./text/invocation.ts";
import { createTerminal } from "./text/terminal.ts";

/**
 * Runs the words of a command line (without node and script) and returns the exit status: 0 fine, 1 something in the
 * content is wrong, 2 wrong use or a fault of ours.
 */
export async function main(words: readonly string[], output: Output): Promise<number> {
  try {
    return await runWords(words, output);
  } catch (error) {
    if (error instanceof UsageError) {
      output.message(`${error.message}\n    ${error.hint}`);
      return 2;
    }
    const refusal = findRefusal(error);
    if (refusal !== undefined) {
      const { reason, hint } = describeRefusal(refusal);
      output.message(`${reason}\n    ${hint}`);
      return 2;
    }
    const trace = error instanceof Error ? (error.stack ?? error.message) : String(error);
    output.message(
      `This is a fault of Counterchange, not of what you typed. Please report it with these lines:\n${trace}`,
    );
    return 2;
  }
}

async function runWords(words: readonly string[], output: Output): Promise<number> {
  const [first, ...rest] = words;
  if (first === undefined) {
    output.message(formatHelp(commands));
    return 2;
  }
  const asksHelp = (list: readonly string[]) =>
    untilDashes(list).some((word) => word === "--help" || word === "-h");
  if (first === "--version" || first === "-V") {
    output.data(await describeVersion());
    return 0;
  }
  if (first === "help" || first.startsWith("-")) {
    if (first !== "help" && !asksHelp([first])) {
      throw new UsageError(
        `${quoteText(first)} stands where a command should.`,
        "Type: counterchange --help",
      );
    }
    const named = rest.find((word) => !word.startsWith("-"));
    output.data(named === undefined ? formatHelp(commands) : formatCommandHelp(findCommand(named, words)));
    return 0;
  }
  const command = findCommand(first, words);
  if (asksHelp(rest)) {
    output.data(formatCommandHelp(command));
    return 0;
  }
  const given = parseArguments(command, rest, commands);
  const { run } = await command.load();
  return run(given, output);
}

/** Returns the command `name` of the line `words`. Throws UsageError with the nearest one, or with the line by the names of today. */
function findCommand(name: string, words: readonly string[]): Command {
  const found = commands.find((command) => command.name === name);
  if (found) return found;
  const next = commands.find((command) => command.formerly === name);
  if (next)
    throw new UsageError(
      `${quoteText(name)} is called ${next.name} now.`,
      `Type: counterchange ${rename(words, name, next)
        .map((word) => quoteWord(word))
        .join(" ")}`,
    );
  const names = commands.map((command) => command.name);
  const near = findNearest(name, names);
  const hint = near ? `Did you mean ${near}?` : `The commands are: ${names.join(", ")}.`;
  throw new UsageError(`There is no command ${quoteText(name)}.`, hint);
}

/** Returns `words` with the names that `command` and its options have now. */
function rename(words: readonly string[], name: string, command: Command): readonly string[] {
  const options = Object.entries(command.options);
  const names = new Map<string, string>(options.map(([now, { formerly }]) => [`--${formerly}`, `--${now}`]));
  return words.with(words.indexOf(name), command.name).map((word) => names.get(word) ?? word);
}

/** What a report of a fault should say: our version, that of Node, and the system. */
async function describeVersion(): Promise<string> {
  const text = await readOwn(join(packageFolder, "package.json"));
  const { version }: { version: string } = JSON.parse(text.toString("utf8"));
  return `counterchange ${version} (Node ${process.versions.node}, ${process.platform} ${process.arch})`;
}

function untilDashes(words: readonly string[]): readonly string[] {
  const end = words.indexOf("--");
  return end === -1 ? words : words.slice(0, end);
}

/** What messages tell somebody to type works when it is typed: it begins as this command line did. */
function spellOut(output: Output): Output {
  return { ...output, message: (text) => output.message(spellCommands(text)) };
}

/** Runs this process's own command line, and ends the process with its status once everything is written. */
export async function runProcess(): Promise<void> {
  // The reader of our output has seen enough (`| head`): that is no fault of anyone's.
  process.stdout.on("error", (error: NodeJS.ErrnoException) => process.exit(error.code === "EPIPE" ? 0 : 2));
  process.stderr.on("error", () => undefined);
  const terminal = createTerminal(process.stdout, process.stderr, process.env);
  const status = await main(process.argv.slice(2), spellOut(terminal));
  terminal.finish();
  process.stdout.write("", () => process.stderr.write("", () => process.exit(status)));
}
