// Starts the real command in a process of its own, as an author does, and keeps everything it says.
import { execFile } from "node:child_process";
import { join } from "node:path";

export const start = join(import.meta.dirname, "../../src/cli/start.mjs");

export interface Run {
  readonly status: number;
  readonly data: string;
  readonly messages: string;
}

export function run(folder: string, ...words: readonly string[]): Promise<Run> {
  return new Promise((resolve) => {
    execFile(
      process.execPath,
      [start, ...words],
      { cwd: folder, timeout: 60_000 },
      (error, data, messages) => {
        const code = error?.code;
        resolve({ status: error === null ? 0 : typeof code === "number" ? code : -1, data, messages });
      },
    );
  });
}
