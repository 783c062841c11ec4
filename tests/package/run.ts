// npm run package: the package as somebody gets it. Packs it, asks publint and arethetypeswrong, installs it from the registry
// under Node 20, 22 and 24 in empty folders, and there imports it, begins a gallery, and publishes the demo, whose files must
// be those of this checkout. Needs the network. It ends with 1 where anything is found.
import { execFileSync, spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { flag, imported } from "./consumer.ts";

const home = join(import.meta.dirname, "../..");
const root = mkdtempSync(join(tmpdir(), "counterchange-package-"));
let found = 0;

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}

function hold(what: string, isTrue: boolean, said = ""): void {
  if (!isTrue) found++;
  say(`${isTrue ? "holds" : "FAILS"}  ${what}${isTrue || said === "" ? "" : `\n${said}`}`);
}

/** Runs a line in `folder`, under another Node if its folder is given. Returns what it printed, and whether it ended with 0. */
function run(folder: string, line: readonly string[], node?: string) {
  const PATH = node === undefined ? process.env.PATH : `${node}:${process.env.PATH}`;
  const [command = "", ...words] = line;
  const began = performance.now();
  const { status, stdout, stderr } = spawnSync(command, words, {
    cwd: folder,
    encoding: "utf8",
    env: { ...process.env, PATH },
  });
  return { isGood: status === 0, said: `${stdout}${stderr}`, seconds: (performance.now() - began) / 1000 };
}

function makeFolder(name: string): string {
  const folder = join(root, name);
  mkdirSync(folder);
  writeFileSync(join(folder, "package.json"), '{ "private": true, "type": "module" }');
  return folder;
}

/** Path → bytes of all files below `folder`, as one text to compare. */
function readSite(folder: string): ReadonlyMap<string, string> {
  const names = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) =>
    entry.isFile(),
  );
  const paths = names.map(({ parentPath, name }) => join(parentPath, name));
  return new Map(paths.map((path) => [path.slice(folder.length), readFileSync(path, "base64")]));
}

function publish(command: readonly string[], folder: string, node?: string) {
  const content = join(folder, "content");
  cpSync(join(home, "content"), content, { recursive: true, filter: (path) => !path.endsWith("/.cache") });
  const published = run(folder, [...command, "publish", content, "--out", join(folder, "site")], node);
  hold(`publishes the demo, ${published.seconds.toFixed(0)} s`, published.isGood, published.said);
  return published.isGood ? readSite(join(folder, "site")) : new Map<string, string>();
}

function tryNode(version: number, packed: string, site: ReadonlyMap<string, string>): void {
  const engine = makeFolder(`node-${version}`);
  execFileSync("npm", ["install", "--silent", "--no-audit", "--no-fund", `node@${version}`], { cwd: engine });
  execFileSync("npm", ["rebuild", "--silent", "node"], { cwd: engine });
  const bin = join(engine, "node_modules/node/bin");
  const folder = makeFolder(`installed-${version}`);
  say(`\nNode ${run(folder, ["node", "--version"], bin).said.trim()}`);
  const installed = run(folder, ["npm", "install", "--no-audit", "--no-fund", packed], bin);
  hold("installs", installed.isGood, installed.said);
  const packages = readdirSync(join(folder, "node_modules"), { recursive: true, encoding: "utf8" });
  const sharps = packages.filter((path) => path === "sharp" || path.endsWith("node_modules/sharp"));
  hold("one sharp", sharps.length === 1, sharps.join("\n"));
  writeFileSync(join(folder, "imported.mjs"), imported);
  const used = run(folder, ["node", "imported.mjs"], bin);
  hold("is imported", used.isGood && used.said === "clearer\n", used.said);
  writeFileSync(join(folder, "flag.svg"), flag);
  const line = (words: string) => ["npx", "counterchange", ...words.split(" ")];
  for (const words of ["begin old-light --original flag.svg", "check --strict", "publish --strict"]) {
    const typed = run(folder, line(words), bin);
    hold(`npx counterchange ${words}, ${typed.seconds.toFixed(1)} s`, typed.isGood, typed.said);
  }
  const same = publish(["npx", "counterchange"], folder, bin);
  const other = [...site].filter(([path, bytes]) => same.get(path) !== bytes).map(([path]) => path);
  hold(
    `the same ${site.size} files`,
    other.length === 0 && same.size === site.size,
    other.slice(0, 10).join("\n"),
  );
}

try {
  const said = execFileSync("npm", ["pack", "--json", "--pack-destination", root], { cwd: home });
  const packed = join(root, JSON.parse(said.toString().slice(said.toString().indexOf("[")))[0].filename);
  for (const words of ["publint@0.3.25", "@arethetypeswrong/cli@0.18.5 --profile esm-only"]) {
    const judged = run(dirname(packed), ["npx", "--yes", ...words.split(" "), packed]);
    hold(words, judged.isGood, judged.said);
  }
  say("\nThis checkout");
  const site = publish(["node", join(home, "src/cli/start.mjs")], makeFolder("checkout"));
  for (const version of [20, 22, 24]) tryNode(version, packed, site);
} finally {
  rmSync(root, { recursive: true, force: true });
}
process.exitCode = found === 0 ? 0 : 1;
