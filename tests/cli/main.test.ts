import { execFileSync } from "node:child_process";
import { expect, test, vi } from "vitest";
import { commands } from "../../src/cli/commands.ts";
import { main } from "../../src/cli/main.ts";
import { makeFolder } from "../content/folder.ts";
import { halved } from "./flag.ts";
import { listWorkingIn, run, start } from "./run.ts";

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
    progress: () => undefined,
    hasColour: false,
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
      expect(data).toMatch(new RegExp(`\nExamples? .*:\n {2}counterchange ${name} `));
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
    ["picture"],
    `\
There is no command “picture”.
    The commands are: publish, preview, check, begin, measure, try, survey, stills, sift, slice.
`,
  ],
  [
    ["build", "build", "--out", "my site", "--drafts"],
    `\
“build” is called publish now.
    Type: counterchange publish build --out 'my site' --with-drafts
`,
  ],
  [
    ["new", "heron", "--original", "a.svg"],
    `\
“new” is called begin now.
    Type: counterchange begin heron --original a.svg
`,
  ],
  [
    ["help", "serve"],
    `\
“serve” is called preview now.
    Type: counterchange help preview
`,
  ],
  [
    ["clean", "--help"],
    `\
“clean” is called sift now.
    Type: counterchange sift --help
`,
  ],
  [
    ["preview", "--drafts"],
    `\
preview has no option “--drafts”.
    Did you mean --with-drafts?
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
    ["publish", "--port", "8080"],
    `\
publish has no option “--port”.
    That is an option of preview. Those of publish are: --out, --base, --with-drafts, --strict, --force, --cache, --help.
`,
  ],
  [
    ["preview", "--strict"],
    `\
preview has no option “--strict”.
    That is an option of publish and check. Those of preview are: --port, --host, --with-drafts, --cache, --help.
`,
  ],
  [
    ["check", "-x"],
    `\
check has no option “-x”.
    The options are: --json, --markdown, --against, --strict, --cache, --help.
`,
  ],
  [
    ["measure"],
    `\
measure needs a file.
    Type: counterchange measure FILE.svg… [--distance N] [--focus X] [--json]
`,
  ],
  [
    ["check", "content", "more"],
    `\
check does not know what to do with “more”.
    Type: counterchange check [CONTENT] [--json | --markdown] [--against DIR] [--strict] [--cache DIR]
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
    ["publish", "--out"],
    `\
--out needs a value behind it.
    Type, for example: --out DIR
`,
  ],
  [
    ["try", "a.svg", "--replace"],
    `\
--replace needs a value behind it. From a # on, a shell passes nothing on, unless it stands in quotes.
    Type, for example: --replace "#701c2b"
`,
  ],
  [
    ["try", "a.svg", "--replace", "red"],
    `\
--replace needs --with beside it.
    Type, for example: counterchange try FILE.svg --replace "#701c2b" --with "#e6b436"
`,
  ],
  [
    ["try", "a.svg", "--out", "b.svg"],
    `\
--out needs --replace beside it.
    Type, for example: counterchange try FILE.svg --replace "#701c2b" --with "#e6b436"
`,
  ],
  [
    ["survey", ".", "--json", "--csv"],
    `\
--json and --csv are two forms of one thing.
    Give one of them.
`,
  ],
  [
    ["survey", "nowhere"],
    `\
There is no folder nowhere.
    Name the folder with the drawings.
`,
  ],
  [
    ["survey", "package.json"],
    `\
package.json is a file; survey takes a folder.
    Type: counterchange measure package.json
`,
  ],
  [
    ["survey", "src/problem"],
    `\
There is no SVG file in src/problem.
    Name the folder with the drawings.
`,
  ],
])("%j", async (words, messages) => {
  expect(await call(...words)).toEqual({ status: 2, data: "", messages });
});

test("--version names the program, Node and the system", async () => {
  for (const word of ["--version", "-V"]) {
    const { status, data, messages } = await call(word);
    expect({ status, messages }).toEqual({ status: 0, messages: "" });
    expect(data).toBe(
      `counterchange 0.1.0 (Node ${process.versions.node}, ${process.platform} ${process.arch})\n`,
    );
  }
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

test("a reader that closes the pipe while a drawing is measured ends the child too", async () => {
  const root = await makeFolder({ "halved.svg": halved });
  const files = Array.from({ length: 6 }, () => "halved.svg").join(" ");
  const line = `"${process.execPath}" "${start}" measure ${files} | head -1; echo "\${PIPESTATUS[0]}"`;
  const all = execFileSync("bash", ["-c", `{ ${line}; } 2>&1`], { encoding: "utf8", cwd: root });
  expect(all).toBe("halved.svg: 2:3, seen from 40 flag heights away (a model of sight)\n0\n");
  // A child works in the folder of its parent, and nobody else works in this one.
  await vi.waitFor(() => expect(listWorkingIn(root)).toEqual([]), { timeout: 5000 });
});

test("no colour codes are ever written off a terminal", async () => {
  const { data, messages } = await run(import.meta.dirname, "measure", "nowhere.svg");
  expect(data + messages).not.toContain("\u001b");
});

test("a fault of ours is told from a fault of theirs", async () => {
  const [publish] = commands;
  if (!publish) throw new Error("there is no command");
  const original = publish.load;
  const run = () => Promise.reject(new RangeError("edge 3 has no length"));
  Object.assign(publish, { load: async () => ({ run }) });
  const { status, data, messages } = await call("publish");
  Object.assign(publish, { load: original });
  expect([status, data]).toEqual([2, ""]);
  expect(messages).toMatch(
    /^This is a fault of Counterchange, not of what you typed\.[\s\S]*RangeError: edge 3 has no length/,
  );
});
