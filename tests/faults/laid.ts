// Test support. The command begin while the Nth call to the system fails: the whole new study or nothing, and what was there
// stays as it was.
import { mkdir, readdir, readFile, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { layOut, type Piece } from "../../src/cli/begin/layout.ts";
import { type Output, UsageError } from "../../src/cli/command.ts";
import { main } from "../../src/cli/main.ts";
import { drawFlag, makeContent, writeContent } from "./gallery.ts";
import { failSystem, type SystemCall, writingCalls } from "./system.ts";
import { message, type Tally } from "./tally.ts";

/** Puts a new study into the gallery `root`. Throws UsageError where it cannot. */
type New = (root: string, drawing: string) => Promise<void>;

/** All of the command, in this process. */
export const wholeCommand: New = async (root, drawing) => {
  const said: string[] = [];
  const output: Output = {
    data: () => undefined,
    message: (text) => void said.push(text),
    progress: () => undefined,
    hasColour: false,
  };
  const status = await main(["begin", "slack-water", "--original", drawing, "--content", root], output);
  if (status === 0) return;
  const text = said.join("\n");
  throw /fault of Counterchange/.test(text) || text === "" ? new Error(text) : new UsageError(text, "");
};

/** What of it writes, without measuring. */
export const layingAlone: New = (root) =>
  layOut(root, [
    { path: ".schemas", content: new Map([["a.json", "{}\n"]]) },
    { path: "notes.txt", content: "Notes.\n" },
    {
      path: "studies/slack-water",
      content: new Map<string, string | Uint8Array>([
        ["study.md", "---\ntitle: Slack water\n---\n"],
        ["original.svg", new Uint8Array(2_000).fill(32)],
      ]),
    },
  ] satisfies readonly Piece[]);

interface Trial {
  readonly make: New;
  readonly room: string;
  readonly isThere: boolean;
  readonly code: string;
  /** For good, in the calls that write, as on a full disk; or once, in any call. */
  readonly forGood: boolean;
}

/**
 * Fails call after call, or every `step`th, until one is not reached, in a gallery that is there and in one that is made with
 * the study.
 */
export async function runLaid(room: string, make: New, codes: readonly string[], step = 1): Promise<Tally> {
  const lost: string[] = [];
  const counts = { tried: 0, refused: 0 };
  for (const isThere of [true, false])
    for (const code of codes)
      for (const forGood of [false, true]) {
        const model = await makeModel({ make, room, isThere, code, forGood });
        for (let at = 1; ; at += step) {
          const found = await tryOnce({ make, room, isThere, code, forGood }, model, at);
          if (!found.wasReached) break;
          counts.tried += 1;
          if (found.wasRefused) counts.refused += 1;
          const what = `${isThere ? "a gallery" : "no gallery"}, ${code} at call ${at}${forGood ? " that writes and after" : ""}`;
          lost.push(...found.lost.map((line) => `${what}: ${line}`));
        }
      }
  // Each of them writes a dozen times: fewer calls were none of theirs.
  if (counts.tried < 20 / step || counts.refused < 10 / step)
    lost.push(`only ${counts.tried} calls, ${counts.refused} refused`);
  const note = `${counts.refused} refused with nothing changed, ${counts.tried - counts.refused} made the whole study all the same`;
  return { name: "new, and the Nth call fails", tried: counts.tried, lost, note };
}

interface Model {
  readonly before: string;
  readonly after: string;
}

const rootIn = (room: string): string => path.join(room, "gallery/content");
const drawingIn = (room: string): string => path.join(room, "new.svg");

async function reset({ room, isThere }: Trial): Promise<void> {
  await rm(path.dirname(rootIn(room)), { recursive: true, force: true });
  await mkdir(path.dirname(rootIn(room)));
  await writeFile(drawingIn(room), drawFlag({ field: "#15244a", charge: "#3a2a20", size: 1.5 }));
  if (isThere) await writeContent(rootIn(room), makeContent());
}

async function makeModel(trial: Trial): Promise<Model> {
  await reset(trial);
  const before = await readAll(trial.room);
  await trial.make(rootIn(trial.room), drawingIn(trial.room));
  return { before, after: await readAll(trial.room) };
}

async function tryOnce(trial: Trial, { before, after }: Model, at: number) {
  const { room, make, code, forGood } = trial;
  await reset(trial);
  let isRemoval = false;
  const calls: readonly SystemCall[] | undefined = forGood ? writingCalls : undefined;
  const { count, error } = await failSystem(
    {
      within: path.dirname(rootIn(room)),
      at,
      code,
      forGood,
      ...(calls === undefined ? {} : { calls }),
      onFail: (call) => {
        isRemoval ||= call === "rm";
      },
    },
    () => make(rootIn(room), drawingIn(room)),
  );
  const lost: string[] = [];
  const wasRefused = error !== undefined;
  if (wasRefused && !(error instanceof UsageError)) lost.push(`no calm message: ${message(error)}`);
  // What it laid ready may stay where the call that failed was its removal: a later new clears it away.
  const found = await readAll(room, isRemoval);
  if (found !== (wasRefused ? before : after))
    lost.push(`${wasRefused ? "refused" : "made"}, and there is ${found.replace(/\s+/g, " ").slice(0, 300)}`);
  return { wasReached: count >= at, wasRefused, lost };
}

/** Every file and folder with its bytes, as one text. */
async function readAll(room: string, isClean = false): Promise<string> {
  const top = path.dirname(rootIn(room));
  const lines: string[] = [];
  for (const entry of await readdir(top, { recursive: true, withFileTypes: true })) {
    const file = path.join(entry.parentPath, entry.name);
    if (isClean && file.includes("/.counterchange-begin-")) continue;
    lines.push(
      `${path.relative(top, file)} ${entry.isFile() ? await readFile(file, "base64") : "is a folder"}`,
    );
  }
  return lines.sort().join("\n");
}
