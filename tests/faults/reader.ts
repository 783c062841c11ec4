// Test support, a process of its own: the command build where something of the content cannot be read. It may be a user
// without permission; or the system's calls to a path fail with a code.
import type { Output } from "../../src/cli/command.ts";
import { main } from "../../src/cli/main.ts";
import { failSystem } from "./system.ts";

export interface Order {
  readonly content: string;
  readonly site: string;
  readonly cache: string;
  /** What cannot be read: with all that is in it. Without a code the system itself refuses. */
  readonly path: string;
  readonly code?: string;
}

export interface Answer {
  /** How many calls were made to fail. */
  readonly failed: number;
  readonly status: number;
  /** All that the command said. */
  readonly said: string;
}

async function build({ content, site, cache, path, code }: Order): Promise<Answer> {
  let [failed, said] = [0, ""];
  const hear = (text: string) => {
    said += `${text}\n`;
  };
  const output: Output = { data: hear, message: hear, progress: () => undefined, hasColour: false };
  const { value, error } = await failSystem(
    {
      within: path,
      at: code === undefined ? Number.POSITIVE_INFINITY : 1,
      code: code ?? "",
      forGood: true,
      // Looking goes well, as it does on a disk with a fault: a file cannot be opened, a folder not listed.
      calls: ["open", "readdir"],
      onFail: () => {
        failed += 1;
      },
    },
    () => main(["publish", content, "--out", site, "--cache", cache], output),
  );
  return { failed, status: value ?? -1, said: error === undefined ? said : `${said}${error}` };
}

process.on("message", (order: Order) => void build(order).then((answer) => process.send?.(answer)));
process.on("disconnect", () => process.exit(0));
process.send?.("ready");
