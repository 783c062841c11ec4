// How the tests run: from the project's root, with time enough for a busy machine. Most files share their processes, so
// that a module is loaded once for all of them, and those of the browser one browser too; files that may leave the process
// changed have their own.
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { compile } from "../src/cli/compile.mjs";

const all = "tests/**/*.test.{ts,tsx}";
const apart =
  "tests/{faults,fuzz,preview}/**/!(eventstream|mediatype|origin|port|servedpage|serverpool).test.ts";
const browser = "tests/browser/**/*.test.ts";

compile();

const root = fileURLToPath(new URL("..", import.meta.url));

/**
 * Modules of the program are those that were compiled, as in its children and in its package: Node loads them itself, in a
 * fraction of the time that translating the sources takes, and each is there once.
 */
const asCompiled = {
  name: "as-compiled",
  enforce: "pre" as const,
  resolveId(source: string, importer?: string) {
    const path = importer === undefined ? source : resolve(dirname(importer), source);
    const module = /^(?:src|templates)\/.*(?=\.tsx?$)/.exec(path.slice(root.length));
    if (!path.startsWith(root) || module === null) return null;
    return { id: join(root, "dist", `${module[0]}.js`), external: true };
  },
};

export default defineConfig({
  root,
  plugins: [asCompiled],
  test: {
    globalSetup: "tests/kept.ts",
    testTimeout: 60_000,
    hookTimeout: 240_000,
    pool: "forks",
    maxWorkers: 2,
    server: { deps: { external: [/\/dist\//] } },
    projects: [
      { extends: true, test: { name: "apart", include: [apart] } },
      { extends: true, test: { name: "browser", isolate: false, include: [browser] } },
      { extends: true, test: { name: "shared", isolate: false, include: [all], exclude: [apart, browser] } },
    ],
  },
});
