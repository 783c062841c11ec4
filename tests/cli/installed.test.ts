// The package as somebody gets it: packed, unpacked into another folder's packages, every command run from there.
import { execFileSync, spawn } from "node:child_process";
import { mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, expect, onTestFinished, test, vi } from "vitest";
import { commands } from "../../src/cli/commands.ts";
import { makeFolder } from "../content/folder.ts";
import { flag, imported } from "../package/consumer.ts";
import { listWorkingIn, runShell } from "./run.ts";

vi.setConfig({ testTimeout: 240_000 });

const home = join(import.meta.dirname, "../..");

/** The package, packed once, in a folder of its own. */
let packed = "";
beforeAll(async () => {
  const folder = await mkdtemp(join(tmpdir(), "counterchange-test-"));
  const said = execFileSync("npm", ["pack", "--json", "--ignore-scripts", "--pack-destination", folder], {
    cwd: home,
  });
  const [{ filename }] = JSON.parse(said.toString());
  packed = join(folder, filename);
});
afterAll(() => rm(dirname(packed), { recursive: true, force: true }));

/** Puts the package into `node_modules` of a new folder, with links to what it depends on, no compiler among it: as npm does, without a network. */
async function install(): Promise<string> {
  const root = await makeFolder({ "package.json": '{ "private": true }', "flag.svg": flag });
  const packages = join(root, "node_modules");
  await mkdir(join(packages, ".bin"), { recursive: true });
  execFileSync("tar", ["-xzf", packed, "-C", packages]);
  execFileSync("mv", [join(packages, "package"), join(packages, "counterchange")]);
  for (const name of await readdir(join(home, "node_modules")))
    if (!/^\.|^(?:@?esbuild|tsx|typescript|@typescript)$/.test(name))
      await symlink(join(home, "node_modules", name), join(packages, name));
  await writeFile(
    join(packages, ".bin/counterchange"),
    `#!/bin/sh\nexec "${process.execPath}" "${join(packages, "counterchange/src/cli/start.mjs")}" "$@"\n`,
    { mode: 0o755 },
  );
  return root;
}

test("every command works where the package is installed, in a folder that is no checkout", async () => {
  const root = await install();
  const type = (line: string) =>
    runShell(root, line.replace(/^counterchange/, "node_modules/.bin/counterchange"));
  const lines = [
    "counterchange begin old-light --original flag.svg",
    "counterchange check --strict",
    "counterchange slice 1/1",
    "counterchange publish --strict",
    "counterchange begin old-light --original flag.svg --content mine --yaml",
    "counterchange check mine",
    "counterchange measure flag.svg --json",
    "counterchange try flag.svg",
    'counterchange try flag.svg --replace "#701c2b" --with white --out lighter.svg',
    "counterchange survey .",
    "counterchange stills old-light --out pictures",
    "counterchange sift flag.svg --out clean.svg",
    "counterchange --version",
  ];
  for (const line of lines) {
    const { status, messages } = await type(line);
    expect({ line, status, messages }).toMatchObject({ status: 0 });
  }
  expect(await readdir(join(root, "published"))).toContain("index.html");
  await writeFile(join(root, "imported.mjs"), imported);
  expect(await runShell(root, "node imported.mjs")).toMatchObject({ status: 0, data: "clearer\n" });
  // A server runs until it is stopped: the next test.
  const tried = lines.map((line) => line.split(" ")[1]);
  const names = commands.map(({ name }) => name).filter((name) => name !== "preview");
  expect(names.filter((name) => !tried.includes(name))).toEqual([]);
});

test("preview shows a study of an installed package, then what was edited, and ends without a process left", async () => {
  const root = await install();
  const { status } = await runShell(
    root,
    "node_modules/.bin/counterchange begin old-light --original flag.svg",
  );
  expect(status).toBe(0);
  const server = spawn(join(root, "node_modules/.bin/counterchange"), ["preview", "--port", "0"], {
    cwd: root,
  });
  onTestFinished(() => void server.kill("SIGKILL"));
  let said = "";
  server.stdout.on("data", (data: Buffer) => {
    said += data.toString();
  });
  const findAddress = () => /http:\S+/.exec(said)?.[0];
  await vi.waitUntil(findAddress, { timeout: 60_000 });
  const read = async (path: string) => {
    const response = await fetch(`${findAddress()}${path}`);
    expect([path, response.status]).toEqual([path, 200]);
    return response.text();
  };
  expect(await read("")).toContain("Old light");
  expect(await read("studies/old-light/")).toContain("<svg");
  const file = join(root, "studies/old-light/study.md");
  await writeFile(file, `${await readFile(file, "utf8")}\nThe lamp is out, and the keeper asleep.\n`);
  await vi.waitUntil(async () => (await read("studies/old-light/")).includes("and the keeper asleep"), {
    timeout: 20_000,
  });
  const ended = new Promise((resolve) => server.once("exit", resolve));
  server.kill("SIGINT");
  expect(await ended).toBe(0);
  await vi.waitFor(() => expect(listWorkingIn(root)).toEqual([]), { timeout: 10_000 });
});
