// The program as it is compiled: it says what the sources say, whatever happens to it and whoever makes it.
import { execFile, spawn } from "node:child_process";
import { cp, mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { sample } from "../sample.ts";
import { start } from "./run.ts";

vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

const top = join(start, "../../..");

/** A checkout to edit, without what was compiled, and a temporary folder of its own. */
let copy = "";
beforeAll(async () => {
  copy = await mkdtemp(join(tmpdir(), "counterchange-test-"));
  await mkdir(join(copy, "room"));
  for (const name of ["src", "templates", "package.json", "tsconfig.json", "eleventy.config.ts"])
    await cp(join(top, name), join(copy, name), { recursive: true });
  await symlink(join(top, "node_modules"), join(copy, "node_modules"));
});
afterAll(() => rm(copy, { recursive: true, force: true }));

const env = () => ({ ...process.env, TMPDIR: join(copy, "room") });

/** The status, and all that `--version` says. */
function version(): Promise<string> {
  return new Promise((resolve) => {
    execFile(
      process.execPath,
      [join(copy, "src/cli/start.mjs"), "--version"],
      { cwd: copy, env: env() },
      (error, data, messages) => resolve(`${error?.code ?? 0} ${data}${messages}`),
    );
  });
}

async function listCompiled(): Promise<readonly string[]> {
  const entries = await readdir(join(copy, "dist"), { recursive: true, withFileTypes: true });
  return entries.flatMap((entry) => (entry.isFile() ? [join(entry.parentPath, entry.name)] : [])).sort();
}

async function readFloors(): Promise<Readonly<Record<string, { digest: string; libraries: string[] }>>> {
  return JSON.parse(await readFile(join(copy, "dist/program.json"), "utf8")).floors;
}

/** Edits a file of the checkout while `use` runs. */
async function edited(name: string, edit: (text: string) => string, use: () => Promise<void>): Promise<void> {
  const text = await readFile(join(copy, name), "utf8");
  await writeFile(join(copy, name), edit(text));
  await use();
  await writeFile(join(copy, name), text);
}

test("two that begin at once both do their work, and leave one program and nothing else", async () => {
  const said = await Promise.all([version(), version()]);
  for (const one of said) expect(one).toMatch(/^0 counterchange \d/);
  const compiled = await listCompiled();
  expect(compiled.filter((file) => file.endsWith(".tmp"))).toEqual([]);
  expect(await readdir(join(copy, "room"))).toEqual([]);
  // What a module reads beside itself is there too; TypeScript and what compiles it is not.
  for (const name of ["templates/styles/base.css", "src/preview/reload.js", "src/cli/schema/try.schema.json"])
    expect(compiled).toContain(join(copy, "dist", name));
  expect(compiled.filter((file) => /\.tsx?$|compile/.test(file))).toEqual([]);
});

test("an edit of a source counts at once, and so does one that takes it back; a new source, and one that is gone", async () => {
  const compiled = join(copy, "dist/src/cli/more.js");
  await edited(
    "src/cli/main.ts",
    (text) => text.replace("`counterchange $", "`edited $"),
    async () => {
      await writeFile(join(copy, "src/cli/more.ts"), "export const more = 1;\n");
      expect(await version()).toContain("0 edited ");
      expect(await listCompiled()).toContain(compiled);
      await rm(join(copy, "src/cli/more.ts"));
    },
  );
  expect(await version()).toContain("0 counterchange ");
  expect(await listCompiled()).not.toContain(compiled);
});

test("a source that cannot be compiled is named with its line, and mended all is as before", async () => {
  const before = await listCompiled();
  await edited(
    "src/cli/main.ts",
    (text) => `${text}\n}`,
    async () =>
      expect(await version()).toMatch(
        /^2 Counterchange cannot start: a source cannot be compiled\.\nsrc\/cli\/main\.ts\(\d+,1\): error TS1128.*\n {4}Mend that/,
      ),
  );
  expect(await version()).toContain("0 counterchange ");
  expect(await listCompiled()).toEqual(before);
});

test("one that is killed at any moment leaves a checkout that works", async () => {
  const whole = await readFile(join(copy, "dist/src/cli/main.js"), "utf8");
  for (const delay of sample([500, 150, 1000], 2)) {
    await rm(join(copy, "dist"), { recursive: true });
    const child = spawn(process.execPath, [join(copy, "src/cli/compile.mjs")], { cwd: copy, env: env() });
    const ended = new Promise((resolve) => child.once("exit", resolve));
    setTimeout(() => child.kill("SIGKILL"), delay);
    await ended;
    expect([delay, await version()]).toEqual([delay, expect.stringMatching(/^0 counterchange /)]);
    expect(await readFile(join(copy, "dist/src/cli/main.js"), "utf8")).toBe(whole);
  }
});

test("of what is kept, the edition goes by the code of a floor and the packages it imports, not by comments", async () => {
  await version();
  const before = await readFloors();
  expect(before["colour"]?.libraries).toEqual(["culori", "xkcd-colors"]);
  expect(before["regions"]?.libraries).toContain("sharp");
  const file = "src/colour/contrast.ts";
  await edited(
    file,
    (text) => `${text}\n// A remark.\n`,
    async () => {
      await version();
      expect(await readFloors()).toEqual(before);
    },
  );
  await edited(
    file,
    (text) => `${text}\nexport const more = 1;\n`,
    async () => {
      await version();
      const { colour, ...others } = await readFloors();
      expect(colour?.digest).not.toBe(before["colour"]?.digest);
      expect({ ...others, colour: before["colour"] }).toEqual(before);
    },
  );
});
