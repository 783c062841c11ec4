// Floor 11. The text of --help, for the whole command and for each of its parts.
import type { Command } from "../command.ts";

/** Returns the help of the whole: every command with what it does. */
export function formatHelp(commands: readonly Command[]): string {
  const width = Math.max(...commands.map((command) => command.name.length));
  return [
    "Counterchange publishes redesign studies of flags and measures the edges of their colours.",
    "",
    "Usage: counterchange COMMAND …",
    "       in a checkout: npm run -s cli -- COMMAND …",
    "",
    "Commands:",
    ...commands.map((command) => `  ${command.name.padEnd(width)}  ${command.summary}`),
    "",
    "counterchange COMMAND --help tells more and gives an example; counterchange --version says which version this is.",
    "Exit status: 0 fine, 1 something in the content is wrong, 2 wrong use or a fault of the program.",
    "The guide: content/pages/guide.md in the sources, and at /guide/ of the gallery that they publish.",
  ].join("\n");
}

/** Returns the help of one command: usage, options, examples. */
export function formatCommandHelp(command: Command): string {
  const options = Object.entries({ ...command.options, help: { help: "Show this text." } });
  const rows = options.map(([name, option]) => {
    const value = "value" in option && option.value !== undefined ? ` ${option.value}` : "";
    return [`--${name}${value}`, option.help] as const;
  });
  const width = Math.max(...rows.map(([left]) => left.length));
  return [
    `Usage: counterchange ${command.name} ${command.usage}`,
    "",
    command.summary,
    ...(command.about === undefined ? [] : [command.about]),
    "",
    "Options:",
    ...rows.map(([left, right]) => `  ${left.padEnd(width)}  ${right}`),
    "",
    `Example${command.examples.length === 1 ? "" : "s"} (in a checkout, type npm run -s cli -- for counterchange):`,
    ...command.examples.map((example) => `  counterchange ${example}`),
  ].join("\n");
}
