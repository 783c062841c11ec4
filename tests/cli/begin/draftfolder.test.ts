// What a killed new leaves: made by a real process that is really killed, and swept by the next.
import { spawn } from "node:child_process";
import { mkdir, readdir, symlink, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { expect, test, vi } from "vitest";
import { makeWork, sweepLeavings } from "../../../src/cli/begin/draftfolder.ts";
import { harbour, makeFolder } from "../../content/folder.ts";
import { runHere } from "../run.ts";

vi.setConfig({ testTimeout: 60_000 });

const source = pathToFileURL(join(import.meta.dirname, "../../../src/cli/begin/layout.ts")).href;

/** Starts a process that lays ready in `root` and never comes to an end, and kills it there. */
async function killHalfway(root: string): Promise<string> {
  const script = `
    const { layOut } = await import(${JSON.stringify(source)});
    const pieces = { *entries() { yield [0, { path: "a", content: "text" }]; process.stdout.write("here"); for (;;); } };
    await layOut(${JSON.stringify(root)}, pieces);`;
  const child = spawn(process.execPath, ["--import", "tsx", "--input-type=module", "-e", script], {
    cwd: join(import.meta.dirname, "../../.."),
  });
  const ended = new Promise((resolve) => child.once("exit", resolve));
  await new Promise((resolve) => child.stdout.once("data", resolve));
  child.kill("SIGKILL");
  await ended;
  const [left = ""] = (await readdir(root)).filter((name) => name.startsWith(".counterchange-begin-"));
  return left;
}

test("a process that is killed leaves its folder, and the next one takes it away", async () => {
  const root = await makeFolder({});
  const left = await killHalfway(root);
  expect(left).toMatch(/^\.counterchange-begin-\d+\./);
  await sweepLeavings(root);
  expect(await readdir(root)).toEqual([]);
});

test("begin and publish take it away", async () => {
  const root = await makeFolder({ ...harbour, "flag.svg": harbour["studies/ferry/original.svg"] ?? "" });
  const isSwept = async () => !(await readdir(root)).some((name) => name.startsWith(".counterchange-begin-"));
  await killHalfway(root);
  expect((await runHere(root, "begin", "other", "--original", "flag.svg")).status).toBe(0);
  expect(await isSwept()).toBe(true);
  await killHalfway(root);
  expect(await isSwept()).toBe(false);
  await runHere(root, "publish", "--cache", "off");
  expect(await isSwept()).toBe(true);
});

test("what is in use, of another machine, a link, a file, or holds anything else stays", async () => {
  const root = await makeFolder({});
  const mine = await makeWork(root);
  await writeFile(join(mine, "0"), "");
  const dead = await killHalfway(await makeFolder({}));
  const named = (id: string) => dead.replace(/[0-9a-f]{12}$/, id);
  const elsewhere = dead.replace(/^(\.counterchange-begin-\d+\.\d+\.)[0-9a-f]{8}/, "$100000000");
  await mkdir(join(root, elsewhere));
  await mkdir(join(root, named("000000000001")));
  await writeFile(join(root, named("000000000001"), "notes.txt"), "mine");
  await symlink(root, join(root, named("000000000002")));
  await writeFile(join(root, named("000000000003")), "");
  await mkdir(join(root, ".counterchange-begin-abc"));
  const before = (await readdir(root)).sort();
  await sweepLeavings(root);
  expect((await readdir(root)).sort()).toEqual(before);
  await sweepLeavings(join(root, "none"));
});
