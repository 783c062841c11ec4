import { expect, test } from "vitest";
import { createTerminal, formatProgress, type Sink } from "../../../src/cli/text/terminal.ts";

/** Streams that write into one text, as on a terminal, with a clock that a test sets. */
function open(ttys: { out: boolean; err: boolean }, env: Record<string, string> = {}) {
  const said = { all: "", out: "", err: "", time: 0 };
  const sink = (name: "out" | "err"): Sink => ({
    isTTY: ttys[name],
    columns: 72,
    write: (text: string) => {
      said[name] += text;
      said.all += text;
    },
  });
  return { said, terminal: createTerminal(sink("out"), sink("err"), env, () => said.time) };
}

const both = { out: true, err: true };
const neither = { out: false, err: false };

test("data and messages each on a line; on a terminal an empty line between them", () => {
  const onTerminal = open(both);
  const elsewhere = open(neither);
  for (const { terminal } of [onTerminal, elsewhere]) {
    terminal.data("a");
    terminal.data("b");
    terminal.message("c");
    terminal.data("d");
  }
  expect(onTerminal.said.all).toBe("a\nb\n\nc\n\nd\n");
  expect(elsewhere.said).toMatchObject({ out: "a\nb\nd\n", err: "c\n" });
});

test("progress shows on a terminal after a while, at most ten times a second, and is wiped away", () => {
  const { said, terminal } = open(both);
  terminal.progress(0, 4, "drawings");
  said.time = 300;
  terminal.progress(1, 4, "drawings");
  expect(said.err).toBe("");
  said.time = 500;
  terminal.progress(2, 4, "drawings");
  said.time = 520;
  terminal.progress(3, 4, "drawings");
  expect(said.err).toBe("\r\u001b[K  [############------------] 2 of 4 drawings");
  terminal.data("a");
  expect(said.all.endsWith("drawings\r\u001b[Ka\n")).toBe(true);
  terminal.finish();
  expect(said.all).toMatch(/a\n$/);
});

test.each([
  ["stderr is no terminal", { out: true, err: false }, {}],
  ["the terminal cannot move back", both, { TERM: "dumb" }],
])("no animation where %s", (_, ttys, env) => {
  const { said, terminal } = open(ttys, env);
  for (said.time = 0; said.time < 5000; said.time += 500) terminal.progress(said.time / 500, 10, "drawings");
  terminal.finish();
  expect(said.all).toBe("");
});

test.each<[boolean, Record<string, string>, boolean]>([
  [true, { COLORTERM: "truecolor" }, true],
  [true, { COLORTERM: "24bit", NO_COLOR: "" }, true],
  [true, { COLORTERM: "truecolor", NO_COLOR: "1" }, false],
  [true, {}, false],
  [true, { COLORTERM: "yes" }, false],
  [false, { COLORTERM: "truecolor" }, false],
])("stdout is a terminal: %s, %j: colour %s", (out, env, expected) => {
  expect(open({ out, err: true }, env).terminal.hasColour).toBe(expected);
});

test("the width is that of a terminal, or unknown", () => {
  expect(open(both).terminal.columns).toBe(72);
  expect(open(neither).terminal.columns).toBeUndefined();
});

test("nothing that is written steers a terminal, but for blocks of colour", () => {
  const { said, terminal } = open(both);
  terminal.data("a\u001b]0;title\u0007b\rc\u009b2J\u202e\n\u001b[48;2;1;22;255m  \u001b[0m d");
  terminal.message("content\u001b[2J/studies");
  expect(said.out).toBe(
    "a\\u001b]0;title\\u0007b\\u000dc\\u009b2J\\u202e\n\u001b[48;2;1;22;255m  \u001b[0m d\n",
  );
  expect(said.err).toBe("\ncontent\\u001b[2J/studies\n");
});

test("the line ends of CSV stay as they are", () => {
  const { said, terminal } = open(neither);
  terminal.data("a,b\r\nc,d\r");
  expect(said.out).toBe("a,b\r\nc,d\r\n");
});

test("on GitHub Actions neither data nor messages hold a command, but for what is ours", () => {
  const { said, terminal } = open(neither, { GITHUB_ACTIONS: "true" });
  terminal.data("  flag\n  ::error::x");
  terminal.data('{ "file": "##[error]x" }');
  terminal.data("::error file=a::b", true);
  expect(said.out).toMatch(
    /^::stop-commands::([\w-]{36})\n {2}flag\n {2}::error::x\n::\1::\n\{ "file": "#\\u0023\[error\]x" \}\n::error file=a::b\n$/,
  );
  terminal.message("a\n::debug::x");
  expect(said.err).toMatch(/^::stop-commands::/);
});

test("no work at all is no division by nothing", () => {
  expect(formatProgress(0, 0, "drawings")).toBe("  [------------------------] 0 of 0 drawings");
  expect(formatProgress(4, 4, "drawings")).toBe("  [########################] 4 of 4 drawings");
});
