import { execFileSync } from "node:child_process";
import { expect, test, vi } from "vitest";
import { commands, main } from "../../src/cli/main.ts";
import { run, start } from "./run.ts";

vi.setConfig({ testTimeout: 60_000 });

/** Runs the command line in this process: what it says does not depend on the process it says it in. */
async function call(...words: readonly string[]) {
  const said = { data: "", messages: "" };
  const status = await main(words, {
    data: (text) => {
      said.data += `${text}\n`;
    },
    message: (text) => {
      said.messages += `${text}\n`;
    },
  });
  return { status, ...said };
}

test("--help names every command and the exit statuses", async () => {
  for (const words of [["--help"], ["-h"], ["help"]]) {
    const { status, data, messages } = await call(...words);
    expect({ status, messages }).toEqual({ status: 0, messages: "" });
    for (const { name } of commands) expect(data).toMatch(new RegExp(`^ {2}${name} `, "m"));
    expect(data).toContain("0 fine, 1 something in the content is wrong, 2 wrong use");
  }
});

test.each(commands.map(({ name }) => name))(
  "%s --help has its usage, its options and an example",
  async (name) => {
    for (const words of [
      [name, "--help"],
      ["help", name],
      [name, "x", "-h"],
    ]) {
      const { status, data } = await call(...words);
      expect(status).toBe(0);
      expect(data).toMatch(new RegExp(`^Usage: counterchange ${name} `));
      expect(data).toMatch(new RegExp(`\nExample:\n {2}counterchange ${name} `));
    }
  },
);

// What is typed, and the whole answer on stderr. The status is always 2, and nothing is on stdout.
test.each<[string[], string]>([
  [
    ["mesure"],
    `\
There is no command “mesure”.
    Did you mean measure?
`,
  ],
  [
    ["publish"],
    `\
There is no command “publish”.
    The commands are: build, check, measure, try.
`,
  ],
  [
    ["--json"],
    `\
“--json” stands where a command should.
    Type: counterchange --help
`,
  ],
  [
    ["measure", "--jsno", "a.svg"],
    `\
measure has no option “--jsno”.
    Did you mean --json?
`,
  ],
  [
    ["check", "-x"],
    `\
check has no option “-x”.
    The options are: --json, --help.
`,
  ],
  [
    ["measure"],
    `\
measure needs a file.
    Type: counterchange measure FILE.svg… [--distance N] [--json]
`,
  ],
  [
    ["check", "content", "more"],
    `\
check does not know what to do with “more”.
    Type: counterchange check [CONTENT] [--json]
`,
  ],
  [
    ["measure", "a.svg", "--distance", "far"],
    `\
--distance is “far”; it must be a number from 0 to 1000.
    Type, for example: --distance 40
`,
  ],
  [
    ["measure", "a.svg", "--json=yes"],
    `\
--json takes no value.
    Type --json alone.
`,
  ],
  [
    ["build", "--out"],
    `\
--out needs a value behind it.
    Type: --out DIR
`,
  ],
])("%j", async (words, messages) => {
  expect(await call(...words)).toEqual({ status: 2, data: "", messages });
});

test("no command at all is wrong use, and shows the help", async () => {
  const { status, data, messages } = await call();
  expect({ status, data }).toEqual({ status: 2, data: "" });
  expect(messages).toContain("Usage: counterchange COMMAND");
});

test("a reader that closes the pipe at once is no fault: nothing is said, status 0", () => {
  const line = `"${process.execPath}" "${start}" --help | true; echo "\${PIPESTATUS[0]}"`;
  const all = execFileSync("bash", ["-c", `{ ${line}; } 2>&1`], { encoding: "utf8" });
  expect(all).toBe("0\n");
});

test("no colour codes are ever written", async () => {
  const { data, messages } = await run(import.meta.dirname, "measure", "nowhere.svg");
  expect(data + messages).not.toContain("\u001b");
});

test("a fault of ours is told from a fault of theirs", async () => {
  const [build] = commands;
  if (!build) throw new Error("there is no command");
  const original = build.run;
  Object.assign(build, { run: () => Promise.reject(new RangeError("edge 3 has no length")) });
  const { status, data, messages } = await call("build");
  Object.assign(build, { run: original });
  expect([status, data]).toEqual([2, ""]);
  expect(messages).toMatch(
    /^This is a fault of Counterchange, not of what you typed\.[\s\S]*RangeError: edge 3 has no length/,
  );
});
