// Floor 11. What a command is: its words for the help, its options, and the work it does.

/** Where a command's output goes: data to stdout, messages to stderr. Each call writes `text` and a newline. */
export interface Output {
  /** `isForRunner`: commands of ours to GitHub Actions, which nothing else that is written can be. */
  data(text: string, isForRunner?: boolean): void;
  message(text: string): void;
  /** Says on a terminal how far long work has come (`12 of 300 drawings`); elsewhere nothing. */
  progress(done: number, total: number, what: string): void;
  /** Columns of the terminal that data go to, where they go to one. */
  readonly columns?: number;
  /** Whether data go to a terminal that shows every sRGB colour, and may. */
  readonly hasColour: boolean;
}

export interface Option {
  /** The placeholder of the value in the help, `N`; an option without one is a switch. */
  readonly value?: string;
  /** Its name in an earlier version, to be told of. */
  readonly formerly?: string;
  readonly help: string;
}

/** What was typed behind the command: files and folders, options with a value, switches. */
export interface Given {
  readonly operands: readonly string[];
  readonly values: Readonly<Record<string, string>>;
  readonly switches: ReadonlySet<string>;
}

/** Does the work and returns the exit status: 0 fine, 1 something in the content is wrong. Throws UsageError. */
export type Run = (given: Given, output: Output) => Promise<number>;

export interface Command {
  readonly name: string;
  /** Its name in an earlier version, to be told of. */
  readonly formerly?: string;
  /** The line behind the command's name: `FILE.svg… [--json]`. */
  readonly usage: string;
  /** What it does, in one sentence. */
  readonly summary: string;
  /** What else has to be known before it is typed, in a sentence or two. */
  readonly about?: string;
  /** What might be typed behind `counterchange`. Each of them runs as it stands, on the demo. */
  readonly examples: readonly string[];
  /** Fewest and most operands; what it needs where there are too few is “a file” unless `needs` says otherwise. */
  readonly operands: readonly [number, number];
  readonly needs?: string;
  /** What somebody types as an operand too many, where it belongs behind an option: `is` says what it is. */
  readonly misplaced?: { readonly pattern: RegExp; readonly is: string; readonly option: string };
  readonly options: Readonly<Record<string, Option>>;
  /** Loads what does the work. */
  load(): Promise<{ readonly run: Run }>;
}

/** The command was called in a way it cannot be: exit status 2. `hint` says what to type. */
export class UsageError extends Error {
  readonly hint: string;

  constructor(reason: string, hint: string) {
    super(reason);
    this.hint = hint;
  }
}
