import { expect, test } from "vitest";
import type { Command } from "../../../src/cli/command.ts";
import { formatCommandHelp, formatHelp } from "../../../src/cli/text/help.ts";

const command: Command = {
  name: "fold",
  usage: "FILE [--width N]",
  summary: "Folds a flag.",
  examples: ["fold a.svg --width 3"],
  operands: [1, 1],
  options: { width: { value: "N", help: "How wide." }, dry: { help: "Only say so." } },
  load: async () => ({ run: async () => 0 }),
};

test("the help of one command", () => {
  expect(formatCommandHelp(command)).toBe(`\
Usage: counterchange fold FILE [--width N]

Folds a flag.

Options:
  --width N  How wide.
  --dry      Only say so.
  --help     Show this text.

Example (in a checkout, type npm run -s cli -- for counterchange):
  counterchange fold a.svg --width 3`);
});

test("the help of all", () => {
  expect(formatHelp([command, { ...command, name: "unfold", summary: "Unfolds it." }])).toContain(`\
Commands:
  fold    Folds a flag.
  unfold  Unfolds it.
`);
});
