// Floor 11. Where text goes: data and messages to their streams, and on a terminal a line that says how far work has come.
import { randomUUID } from "node:crypto";
import { showText } from "../../problem/quote.ts";
import type { Output } from "../command.ts";
import { guardText, isOnActions } from "./annotation.ts";

/** What is needed of a stream. */
export interface Sink {
  readonly isTTY?: boolean;
  readonly columns?: number;
  write(text: string): unknown;
}

/** An output, with the last progress line wiped away by `finish`. */
export interface Terminal extends Output {
  finish(): void;
}

/** Work that takes less time than this, in milliseconds, shows no progress; and how often a line is drawn anew. */
const pace = { quiet: 400, redraw: 100 };

const barColumns = 24;

const control = "\u001b";

/**
 * Makes the output of a process. `now` gives milliseconds. Off a terminal nothing but data and messages is written; where
 * both go to one, an empty line stands between them. Nothing that is written steers a terminal but our own blocks of colour,
 * and on GitHub Actions nothing is taken for a command of the runner but what is for it.
 *
 * Source: no-color.org for NO_COLOR; COLORTERM as terminals with 24-bit colour set it (common practice).
 */
export function createTerminal(
  stdout: Sink,
  stderr: Sink,
  env: Readonly<Record<string, string | undefined>>,
  now: () => number = () => performance.now(),
): Terminal {
  const isShared = stdout.isTTY === true && stderr.isTTY === true;
  const isLive = stderr.isTTY === true && env["TERM"] !== "dumb";
  const hasColour =
    stdout.isTTY === true && !env["NO_COLOR"] && /^(?:truecolor|24bit)$/i.test(env["COLORTERM"] ?? "");
  let last: "data" | "message" | undefined;
  let progress = { began: undefined as number | undefined, drawn: Number.NEGATIVE_INFINITY, shows: false };
  const wipe = (): void => {
    if (progress.shows) stderr.write(`\r${control}[K`);
    progress = { ...progress, shows: false };
  };
  const write = (kind: "data" | "message", sink: Sink, text: string, isForRunner = false): void => {
    wipe();
    const gap = isShared && last !== undefined && last !== kind ? "\n" : "";
    const shown = showLines(text);
    const isGuarded = isOnActions(env) && !isForRunner;
    sink.write(`${gap}${isGuarded ? guardText(shown, randomUUID()) : shown}\n`);
    last = kind;
  };
  return {
    data: (text, isForRunner) => write("data", stdout, text, isForRunner),
    message: (text) => write("message", stderr, text),
    progress: (done, total, what) => {
      const time = now();
      const began = progress.began ?? time;
      progress = { ...progress, began };
      if (!isLive || time - began < pace.quiet || time - progress.drawn < pace.redraw) return;
      stderr.write(`\r${control}[K${formatProgress(done, total, what)}`);
      progress = { began, drawn: time, shows: true };
    },
    finish: wipe,
    hasColour,
    ...(stdout.isTTY === true && stdout.columns ? { columns: stdout.columns } : {}),
  };
}

/** Lines as they are, blocks of colour too; whatever else could steer a terminal as its escape. */
function showLines(text: string): string {
  return text
    .split(new RegExp(`(\r?\n|\r$|\t|${control}\\[(?:48;2;[\\d;]{5,11}|0)m)`))
    .map((part, index) => (index % 2 === 1 ? part : showText(part)))
    .join("");
}

/** Returns the line without its end: `  [######------------------] 12 of 48 drawings`. */
export function formatProgress(done: number, total: number, what: string): string {
  const filled = total === 0 ? 0 : Math.floor((barColumns * done) / total);
  return `  [${"#".repeat(filled)}${"-".repeat(barColumns - filled)}] ${done} of ${total} ${what}`;
}
