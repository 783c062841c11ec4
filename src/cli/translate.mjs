// Floor 11. The program as JavaScript in few files, made once and kept in the user's home: it starts in half the time that
// teaching Node to read TypeScript takes, and so does each child process. Whatever happens to it, the program is the same.
import { createHash, randomUUID } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { homedir } from "node:os";
import { dirname, join, relative } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const home = fileURLToPath(new URL("../..", import.meta.url));
const source = join(home, "src");
const list = "list.json";

/** So many are kept, and all of the last day: who edits the program makes a new one each time. */
const kept = 8;
const day = 86_400_000;

/** Packages that stay as they are: with machine code, or teaching Node, or read by Eleventy in its own way. */
const apart = ["sharp", "tsx", "esbuild", "@11ty/eleventy", "@11ty/eleventy-img", "subset-font"];

/** Where programs are kept. In a folder that others write to, they could put another one in its place. */
function findShelf() {
  return join(process.env.XDG_CACHE_HOME || join(homedir(), ".cache"), "counterchange", "code");
}

/**
 * Returns the URL of main.ts as JavaScript, made now if it is not there; undefined where it can be neither made nor kept,
 * or `shelf` is no place for it.
 */
export async function translate(shelf = findShelf()) {
  try {
    const program = digestProgram();
    const folder = join(shelf, program.slice(0, 32));
    if (!isWhole(folder)) await make(folder, shelf, program);
    return isWhole(folder) ? pathToFileURL(join(folder, "main.mjs")).href : undefined;
  } catch {
    // The usual way says what is wrong with a source.
    return undefined;
  }
}

/** A digest of the sources, and of all that has a say in what becomes of them and in where packages are found. */
function digestProgram() {
  const hash = createHash("sha256").update(`${home} ${process.versions.node}`);
  const add = (file) => {
    const text = readFileSync(file);
    hash.update(`\n${file} ${text.length}\n`).update(text);
  };
  const files = readdirSync(source, { recursive: true }).filter((name) => /\.m?ts$|\.mjs$/.test(name));
  for (const name of files.sort()) add(join(source, name));
  add(join(home, "tsconfig.json"));
  add(join(home, "package.json"));
  for (const name of apart) add(findPackage(name, home));
  return hash.digest("hex");
}

function findPackage(name, folder) {
  const file = join(folder, "node_modules", name, "package.json");
  if (existsSync(file)) return file;
  if (dirname(folder) === folder) throw new Error(`${name} is not installed`);
  return findPackage(name, dirname(folder));
}

/** Whether every file is there as it was made, and made from the libraries that are installed. */
function isWhole(folder) {
  try {
    const { files, packages } = JSON.parse(readFileSync(join(folder, list), "utf8"));
    const isSame = ([path, sum]) => digest(readFileSync(path)) === sum;
    return (
      "main.mjs" in files &&
      Object.entries(packages).every(isSame) &&
      Object.entries(files).every(([name, sum]) => isSame([join(folder, name), sum]))
    );
  } catch {
    return false;
  }
}

function digest(bytes) {
  return createHash("sha256").update(bytes).digest("hex");
}

/** Made beside its place and moved there whole; of two that do it at once the first one counts. */
async function make(folder, shelf, program) {
  const fresh = `${folder}.${randomUUID()}`;
  makeFolder(fresh);
  try {
    const { outputFiles, metafile } = await bundle(folder);
    const files = {};
    for (const { path, contents } of outputFiles) {
      const name = relative(folder, path);
      writeFileSync(join(fresh, name), contents);
      files[name] = digest(contents);
    }
    const packages = Object.fromEntries(
      listPackages(metafile).map((path) => [path, digest(readFileSync(path))]),
    );
    writeFileSync(join(fresh, list), JSON.stringify({ files, packages }));
    if (digestProgram() !== program) throw new Error("a source was edited meanwhile");
    if (!isWhole(folder)) rmSync(folder, { recursive: true, force: true });
    renameSync(fresh, folder);
  } finally {
    rmSync(fresh, { recursive: true, force: true });
  }
  clear(shelf);
}

/** With those it lies in. Node's own way of doing that never ends in a folder that takes none, as in /proc. */
function makeFolder(folder) {
  try {
    mkdirSync(folder, { mode: 0o700 });
  } catch (error) {
    if (error.code === "EEXIST") return;
    if (error.code !== "ENOENT" || dirname(folder) === folder) throw error;
    makeFolder(dirname(folder));
    mkdirSync(folder, { mode: 0o700 });
  }
}

/** The package.json of every library that was taken in: another version of it has another one. */
function listPackages({ inputs }) {
  const found = Object.keys(inputs).flatMap(
    (path) => /^.*node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+[\\/]/.exec(join(home, path)) ?? [],
  );
  return [...new Set(found)].map((folder) => join(folder, "package.json"));
}

/**
 * Translates main.ts, or `entries` in its place, the child process and what it publishes with, for files in `folder`.
 * Packages stay where they are; so do our own paths.
 */
export async function bundle(folder, entries = [join(source, "cli/main.ts")]) {
  const { build } = await import("esbuild");
  return build({
    absWorkingDir: home,
    metafile: true,
    entryPoints: [
      ...entries,
      join(source, "analysis/jobs/worker.ts"),
      join(source, "publish/pictures/makefiles.ts"),
    ],
    outdir: folder,
    outExtension: { ".js": ".mjs" },
    entryNames: "[name]",
    bundle: true,
    splitting: true,
    format: "esm",
    platform: "node",
    target: `node${process.versions.node}`,
    tsconfig: join(home, "tsconfig.json"),
    // What CommonJS libraries ask for by themselves.
    banner: {
      js: 'import { createRequire as ask } from "node:module"; const require = ask(import.meta.url);',
    },
    define: {
      translatedWorker: JSON.stringify(join(folder, "worker.mjs")),
      translatedMaker: JSON.stringify(pathToFileURL(join(folder, "makefiles.mjs")).href),
    },
    logLevel: "silent",
    write: false,
    plugins: [{ name: "places", setup: keepPlaces }],
  });
}

function keepPlaces(build) {
  const filter = new RegExp(`^(?:${apart.join("|")})(?:/|$)`);
  build.onResolve({ filter }, ({ path }) => ({ path: import.meta.resolve(path), external: true }));
  build.onLoad({ filter: /\.[mc]?[jt]s$/ }, ({ path }) => ({
    loader: path.endsWith(".ts") ? "ts" : "js",
    contents: readFileSync(path, "utf8")
      .replaceAll("import.meta.dirname", JSON.stringify(dirname(path)))
      .replaceAll("import.meta.url", JSON.stringify(pathToFileURL(path).href)),
  }));
}

function clear(shelf) {
  const found = readdirSync(shelf).map((name) => {
    const path = join(shelf, name);
    return { path, made: statSync(path).mtimeMs };
  });
  for (const { path, made } of found.sort((a, b) => b.made - a.made).slice(kept))
    if (Date.now() - made > day) rmSync(path, { recursive: true, force: true });
}
