// The program as JavaScript that is kept: it says what the sources say, whatever happens to it.
import { execFile } from "node:child_process";
import { cp, mkdir, mkdtemp, readdir, readFile, rm, symlink, truncate, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { makeFolder } from "../content/folder.ts";
import { start } from "./run.ts";

vi.setConfig({ testTimeout: 120_000 });

const flag =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><path fill="#15244a" d="M0 0h3v2H0z"/><circle cx="1.5" cy="1" r=".5" fill="#701c2b"/></svg>';

/** Runs a command with the user's cache in `home`; a file in its place keeps anything from being kept. */
function run(home: string, folder: string, words: readonly string[], program = start): Promise<string> {
  const env = { ...process.env, XDG_CACHE_HOME: home };
  return new Promise((resolve) => {
    execFile(process.execPath, [program, ...words], { cwd: folder, env }, (error, data, messages) =>
      resolve(`${error?.code ?? 0}\n${data}\n${messages}`),
    );
  });
}

async function listKept(home: string): Promise<readonly string[]> {
  const shelf = join(home, "counterchange/code");
  const programs = await readdir(shelf).catch(() => []);
  const files = await Promise.all(
    programs.map(async (name) => (await readdir(join(shelf, name))).map((file) => join(shelf, name, file))),
  );
  return files.flat();
}

const words = ["try", "flag.svg", "--json"];

/** What the sources print, read by tsx. */
let plain = "";
/** A folder with a flag, and in `home` a user's cache with the program, as a first command left it; and what that said. */
let made = "";
let first = "";
beforeAll(async () => {
  made = await mkdtemp(join(tmpdir(), "counterchange-test-"));
  await mkdir(join(made, "home"));
  await writeFile(join(made, "blocked"), "");
  await writeFile(join(made, "flag.svg"), flag);
  plain = await run(join(made, "blocked"), made, words);
  expect(plain).toMatch(/^0\n\{/);
  first = await run(join(made, "home"), made, words);
}, 240_000);
afterAll(() => rm(made, { recursive: true, force: true }));

test("what is kept prints what the sources print, children included; nothing but the program is kept", async () => {
  const home = join(made, "home");
  expect(first).toBe(plain);
  const kept = await listKept(home);
  expect(kept.filter((file) => /\/(?:main|worker)\.mjs$/.test(file))).toHaveLength(2);
  expect(kept.filter((file) => !/\.mjs$|\/list\.json$/.test(file))).toEqual([]);
  expect(await run(home, made, words)).toBe(plain);
  expect(await listKept(home)).toEqual(kept);
  // A fault of a command is told alike.
  expect(await run(home, made, ["mesure"])).toBe(await run(join(made, "blocked"), made, ["mesure"]));
});

describe("a program that is damaged is made again, and prints the same", () => {
  const damages: Readonly<Record<string, (file: string) => Promise<void>>> = {
    truncated: (file) => truncate(file, 100),
    deleted: (file) => rm(file),
    "other code in it": (file) => writeFile(file, 'process.stdout.write("stranger")'),
  };

  test.each(Object.keys(damages))("%s", async (name) => {
    const home = join(made, "home");
    const kept = await listKept(home);
    const texts = await Promise.all(kept.map((file) => readFile(file, "utf8")));
    for (const which of ["main.mjs", "worker.mjs", "list.json"]) {
      const file = kept.find((one) => one.endsWith(`/${which}`)) ?? which;
      await damages[name]?.(file);
      expect(await run(home, made, words)).toBe(plain);
    }
    expect(await Promise.all(kept.map((file) => readFile(file, "utf8")))).toEqual(texts);
  });
});

test("four that begin at once all do their work, and one program is kept", async () => {
  const home = await makeFolder({});
  const said = await Promise.all([1, 2, 3, 4].map(() => run(home, made, words)));
  expect(said).toEqual([plain, plain, plain, plain]);
  expect(await readdir(join(home, "counterchange/code"))).toHaveLength(1);
});

test("an edit of a source counts at once, and so does one that takes it back", async () => {
  const home = await makeFolder({});
  const top = join(start, "../../..");
  const copy = await makeFolder({});
  for (const name of ["src", "package.json", "tsconfig.json"])
    await cp(join(top, name), join(copy, name), { recursive: true });
  await symlink(join(top, "node_modules"), join(copy, "node_modules"));
  const program = join(copy, "src/cli/start.mjs");
  const source = join(copy, "src/cli/main.ts");
  const text = await readFile(source, "utf8");
  const version = () => run(home, copy, ["--version"], program);
  expect(await version()).toContain("counterchange ");
  await writeFile(source, text.replace("`counterchange $", "`edited $"));
  expect(await version()).toContain("edited ");
  await writeFile(source, text);
  expect(await version()).toContain("counterchange ");
  // A source that cannot be translated is for Node to complain of.
  await writeFile(source, `${text}\n}`);
  expect(await version()).toMatch(/^1\n(?:.*\n)*.*main\.ts/);
});
