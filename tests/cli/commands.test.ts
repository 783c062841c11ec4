import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { commands } from "../../src/cli/commands.ts";
import { formatCommandHelp } from "../../src/cli/text/help.ts";
import { copyDemo } from "../demo.ts";
import { type Run, runShell } from "./run.ts";

/** A checkout as far as the examples know it: a working folder with two studies of the demo in it. */
let folder = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "counterchange-test-"));
  await copyDemo(join(folder, "content"), ["harrowquay", "kedgeport"]);
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const examples = commands.flatMap((command) =>
  formatCommandHelp(command)
    .split("\n")
    .filter((line) => line.startsWith("  counterchange "))
    .map((line) => [line.trim()] as const),
);

test("every command has an example", () => {
  for (const { name, examples: own } of commands) {
    expect(own.length).toBeGreaterThan(0);
    for (const example of own) expect(example.startsWith(`${name} `)).toBe(true);
  }
  expect(examples).toHaveLength(commands.flatMap(({ examples: own }) => own).length);
});

/** A server runs until it is told to end: preview.test.ts does that. */
const ending = examples.filter(([line]) => !line.startsWith("counterchange preview"));

test.each(ending)("%s runs as it stands", { timeout: 120_000 }, async (line) => {
  const { status, data, messages }: Run = await runShell(folder, line);
  expect({ status, messages }).toMatchObject({ status: 0 });
  expect(messages).not.toContain("  error  ");
  expect(data + messages).not.toBe("");
});

test("a command is loaded only when it runs", async () => {
  for (const { load } of commands) expect(typeof (await load()).run).toBe("function");
});

test("every option in a usage line is an option, and the other way round", () => {
  for (const { name, usage, options } of commands) {
    const named = [...usage.matchAll(/--([a-z-]+)/g)].map(([, option]) => option);
    expect([name, ...[...named].sort()]).toEqual([name, ...Object.keys(options).sort()]);
  }
});
