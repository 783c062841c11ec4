// Floor 7. The command line: finds the command, runs it, and turns whatever happens into an exit status.
import { findNearest } from "../problem/nearest.ts";
import { quoteText } from "../problem/quote.ts";
import { parseArguments } from "./arguments.ts";
import { buildCommand } from "./build.ts";
import { checkCommand } from "./check.ts";
import { type Command, type Output, UsageError } from "./command.ts";
import { formatCommandHelp, formatHelp } from "./help.ts";
import { measureCommand } from "./measure.ts";
import { tryCommand } from "./try.ts";

/** Every command, in the order of the help. */
export const commands: readonly Command[] = [buildCommand, checkCommand, measureCommand, tryCommand];

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
  if (first === "help" || first.startsWith("-")) {
    if (first !== "help" && !asksHelp([first])) {
      throw new UsageError(
        `${quoteText(first)} stands where a command should.`,
        "Type: counterchange --help",
      );
    }
    const named = rest.find((word) => !word.startsWith("-"));
    output.data(named === undefined ? formatHelp(commands) : formatCommandHelp(findCommand(named)));
    return 0;
  }
  const command = findCommand(first);
  if (asksHelp(rest)) {
    output.data(formatCommandHelp(command));
    return 0;
  }
  return command.run(parseArguments(command, rest), output);
}

function findCommand(name: string): Command {
  const found = commands.find((command) => command.name === name);
  if (found) return found;
  const names = commands.map((command) => command.name);
  const near = findNearest(name, names);
  const hint = near ? `Did you mean ${near}?` : `The commands are: ${names.join(", ")}.`;
  throw new UsageError(`There is no command ${quoteText(name)}.`, hint);
}

function untilDashes(words: readonly string[]): readonly string[] {
  const end = words.indexOf("--");
  return end === -1 ? words : words.slice(0, end);
}

/** Runs this process's own command line, and ends the process with its status once everything is written. */
export async function runProcess(): Promise<void> {
  // The reader of our output has seen enough (`| head`): that is no fault of anyone's.
  process.stdout.on("error", (error: NodeJS.ErrnoException) => process.exit(error.code === "EPIPE" ? 0 : 2));
  process.stderr.on("error", () => undefined);
  const status = await main(process.argv.slice(2), {
    data: (text) => void process.stdout.write(`${text}\n`),
    message: (text) => void process.stderr.write(`${text}\n`),
  });
  process.stdout.write("", () => process.stderr.write("", () => process.exit(status)));
}
