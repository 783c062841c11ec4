// Test support. Starts the real command in a process of its own, as an author does, and keeps everything it says.
import { execFile } from "node:child_process";
import { readdirSync, readlinkSync } from "node:fs";
import { join } from "node:path";
import { main } from "../../src/cli/main.ts";
import { spellCommands } from "../../src/cli/text/invocation.ts";
import { createTerminal } from "../../src/cli/text/terminal.ts";
import { shareKept } from "../kept.ts";

export const start = join(import.meta.dirname, "../../src/cli/start.mjs");

/** As `npm run -s cli --` starts it: hints then begin with these words, wherever the checkout lies. */
const asScript = { npm_command: "run-script", npm_lifecycle_event: "cli" };

export interface Run {
  readonly status: number;
  readonly data: string;
  readonly messages: string;
}

export function run(folder: string, ...words: readonly string[]): Promise<Run> {
  return execute(folder, process.execPath, [start, ...words], asScript);
}

/** Runs a program to its end; what it keeps it shares with the other commands of the tests. */
function execute(
  cwd: string,
  file: string,
  words: readonly string[],
  more: Readonly<Record<string, string>> = {},
): Promise<Run> {
  return shareKept(
    cwd,
    (kept) =>
      new Promise((resolve) => {
        const env = { ...process.env, ...more, ...kept };
        execFile(file, words, { cwd, timeout: 120_000, env }, (error, data, messages) => {
          const code = error?.code;
          resolve({ status: error === null ? 0 : typeof code === "number" ? code : -1, data, messages });
        });
      }),
  );
}

/**
 * Runs a command in this process, for what it makes and says and not for how it starts and ends: in a third of the time.
 * One at a time: the working folder is that of the process.
 */
export function runHere(folder: string, ...words: readonly string[]): Promise<Run> {
  return shareKept(folder, (kept) => runWith(folder, words, { ...asScript, ...kept }));
}

async function runWith(
  folder: string,
  words: readonly string[],
  environment: Readonly<Record<string, string>>,
): Promise<Run> {
  const said = { data: "", messages: "" };
  const keep = (kind: keyof typeof said) => ({
    write: (text: string) => {
      said[kind] += text;
    },
  });
  const putBack = actAsStarted(folder, environment);
  try {
    const terminal = createTerminal(keep("data"), keep("messages"), process.env);
    const message = (text: string) => terminal.message(spellCommands(text));
    const status = await main(words, { ...terminal, message });
    return { status, ...said };
  } finally {
    putBack();
  }
}

/** Makes this process look as one that was started by `run`; what is returned undoes that. */
function actAsStarted(folder: string, environment: Readonly<Record<string, string>>): () => void {
  const [before, script = ""] = [process.cwd(), process.argv[1]];
  const own = Object.keys(environment).map((name) => [name, process.env[name]] as const);
  process.chdir(folder);
  process.argv[1] = start;
  Object.assign(process.env, environment);
  return () => {
    process.chdir(before);
    process.argv[1] = script;
    for (const [name, value] of own) {
      if (value === undefined) delete process.env[name];
      else process.env[name] = value;
    }
  };
}

/** Runs a line as a shell does, with `counterchange` as the command. */
export function runShell(folder: string, line: string): Promise<Run> {
  const define = `counterchange() { "${process.execPath}" "${start}" "$@"; }`;
  return execute(folder, "bash", ["-c", `${define}\n${line}`]);
}

/** The processes that have `folder` as their working folder (Linux: as /proc says). */
export function listWorkingIn(folder: string): readonly string[] {
  return readdirSync("/proc").filter((pid) => {
    try {
      return /^\d+$/.test(pid) && readlinkSync(`/proc/${pid}/cwd`) === folder;
    } catch {
      return false;
    }
  });
}
