// Floor 11. The program as JavaScript in dist/, by the TypeScript compiler: made by npm after an install, and in a checkout by
// the next command after an edit. Whatever stops it, dist/ is used only where its record says that it is whole.
import { spawnSync } from "node:child_process";
import { createHash, randomUUID } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join, sep } from "node:path";
import { fileURLToPath } from "node:url";

const home = fileURLToPath(new URL("../..", import.meta.url));
const dist = join(home, "dist");
const record = "program.json";
const project = "src/cli/tsconfig.compile.json";

/** Styles, scripts for browsers, schemas, workflows of hosts: read as they are, beside the modules that read them. */
const plain = /^templates\/.*\.(?:css|js)$|^src\/.*\.(?:css|js|schema\.json|yml)$/;

/**
 * Libraries in CommonJS, which the program loads by `require`: `import` first reads their text for the names that they export,
 * which took a quarter of the time of a child until it has started. One belongs here only where `require` returns what
 * `import` has as its default.
 */
const required = [
  "culori/require",
  "fastest-levenshtein",
  "markdown-it",
  "saxes",
  "sharp",
  "unhomoglyph",
  "xkcd-colors",
  "yaml",
];

/** Files half written by a process that was killed are left for so long, in milliseconds: another may be writing them. */
const patience = 60_000;

/** Brings dist/ up to the sources, if it is not. Throws an Error with what the compiler says. */
export function compile() {
  for (;;) {
    const sources = readSources();
    const digest = digestOf(sources);
    if (readRecord()?.sources === digest) return;
    const fresh = mkdtempSync(join(tmpdir(), "counterchange-compile-"));
    try {
      runCompiler(fresh);
      for (const name of listFiles(fresh)) requireLibraries(join(fresh, name));
      for (const [name, bytes] of sources) if (plain.test(name)) put(join(fresh, name), bytes);
      bundle(fresh);
      // Who saves a file meanwhile has it compiled too.
      if (digestOf(readSources()) !== digest) continue;
      bring(fresh, digest);
      return;
    } finally {
      rmSync(fresh, { recursive: true, force: true });
    }
  }
}

/** Everything that has a say in what is compiled: names with `/`, and bytes. */
function readSources() {
  const names = [
    "package.json",
    "tsconfig.json",
    ...listFiles(join(home, "src"), "src/"),
    ...listFiles(join(home, "templates"), "templates/"),
  ];
  return names.map((name) => [name, readFileSync(join(home, name))]);
}

function listFiles(folder, beginning = "") {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(
      ({ parentPath, name }) =>
        beginning +
        join(parentPath, name)
          .slice(folder.length + 1)
          .replaceAll(sep, "/"),
    )
    .sort();
}

/** Lengths keep one file from running into the next. */
function digestOf(files) {
  const hash = createHash("sha256");
  for (const [name, bytes] of files) hash.update(`${name}\n${bytes.length}\n`).update(bytes);
  return hash.digest("hex");
}

function readRecord() {
  try {
    return JSON.parse(readFileSync(join(dist, record), "utf8"));
  } catch {
    return undefined;
  }
}

function runCompiler(folder) {
  const command = join(dirname(createRequire(import.meta.url).resolve("typescript/package.json")), "bin/tsc");
  const words = [command, "-p", project, "--outDir", folder, "--pretty", "false"];
  const { status, stdout, stderr, error } = spawnSync(process.execPath, words, {
    cwd: home,
    encoding: "utf8",
  });
  if (error !== undefined) throw error;
  if (status !== 0)
    throw Object.assign(new Error(`a source cannot be compiled.\n${stdout}${stderr}`.trimEnd()), {
      code: "SOURCE",
    });
}

/** Puts `require` in the place of what a module imports of the libraries for which that is faster, line by line. */
function requireLibraries(file) {
  const text = readFileSync(file, "utf8");
  const changed = text.replace(
    /^import (?:(\w+)(?:, \{\})?|(\{[\w, ]+\})) from ("[^"]+");$/gm,
    (line, name, names, library, at) =>
      required.includes(JSON.parse(library))
        ? `import { createRequire as from${at} } from "node:module"; const ${name ?? names} = from${at}(import.meta.url)(${library});`
        : line,
  );
  if (changed !== text) writeFileSync(file, changed);
}

/** Puts modules that start often together with what they import: a child has started in two thirds of the time. */
function bundle(folder) {
  const name = "templates/client/takepart.js";
  // The script that measures in a page, in one file.
  build("a script", {
    entryPoints: [join(home, name)],
    outfile: join(folder, name),
    minify: true,
    format: "iife",
    target: "es2022",
  });
  rmSync(join(folder, "templates/client/drawing.js"));
  const children = ["src/analysis/jobs/worker.js", "src/publish/pictures/makefiles.js"];
  build("a child", {
    entryPoints: children.map((child) => join(folder, child)),
    outdir: join(folder, "children"),
    entryNames: "[name]",
    splitting: true,
    format: "esm",
    platform: "node",
    packages: "external",
    // Loaded where pages are made apart, with all the words of pages.
    external: [join(folder, "src/publish/renderpages.js")],
  });
}

function build(what, options) {
  const { buildSync } = createRequire(import.meta.url)("esbuild");
  try {
    buildSync({ ...options, bundle: true, allowOverwrite: true, charset: "utf8", logLevel: "silent" });
  } catch (error) {
    throw Object.assign(new Error(`${what} cannot be bundled.\n${error.message}`), { code: "SOURCE" });
  }
}

/**
 * Brings what was compiled into dist/, file by file and each in one step, so that a command that runs finds all it needs, and
 * of two that compile at once both are right. The record comes last: without it, all is compiled again.
 */
function bring(fresh, digest) {
  const names = listFiles(fresh);
  for (const name of names) {
    const bytes = readFileSync(join(fresh, name));
    const target = join(dist, name);
    if (!existsSync(target) || !readFileSync(target).equals(bytes)) put(target, bytes);
  }
  const text = JSON.stringify({ sources: digest, floors: describeFloors(fresh, names) }, undefined, 1);
  const known = new Set([...names, record]);
  for (const name of listFiles(dist)) if (!known.has(name)) drop(join(dist, name));
  put(join(dist, record), text);
}

function put(file, bytes) {
  const half = `${file}.${randomUUID()}.tmp`;
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(half, bytes);
  renameSync(half, file);
}

function drop(file) {
  const { mtimeMs } = statSync(file, { throwIfNoEntry: false }) ?? { mtimeMs: 0 };
  if (!file.endsWith(".tmp") || Date.now() - mtimeMs > patience) rmSync(file, { force: true });
}

/** Of each floor the digest of its modules and the packages that they import: what is kept from run to run goes by it. */
function describeFloors(folder, names) {
  const floors = readdirSync(join(folder, "src"));
  return Object.fromEntries(
    floors.map((floor) => {
      const modules = names
        .filter((name) => name.startsWith(`src/${floor}/`) && name.endsWith(".js"))
        .map((name) => [name, readFileSync(join(folder, name))]);
      const libraries = new Set(modules.flatMap(([, bytes]) => listLibraries(bytes.toString())));
      return [floor, { digest: digestOf(modules), libraries: [...libraries].sort() }];
    }),
  );
}

/** Names of the packages that a module imports. */
function listLibraries(text) {
  const imports = text.matchAll(
    /(?:\bfrom|\bimport|\(import\.meta\.url\))[\s(]*"((?:@[\w-]+\/)?[\w-]+)(?:\/[^"]*)?"/g,
  );
  return [...imports].map(([, name]) => name);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) compile();
