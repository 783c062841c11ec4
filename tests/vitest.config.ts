// How the tests run: from the project's root, with time enough for a busy machine. Most files share their processes, so
// that a module is loaded once for all of them, and those of the browser one browser too; files that may leave the process
// changed have their own.
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { compile } from "../src/cli/compile.mjs";

const all = "tests/**/*.test.{ts,tsx}";
const apart =
  "tests/{faults,fuzz,preview}/**/!(eventstream|mediatype|origin|port|servedpage|serverpool).test.ts";
const browser = "tests/browser/**/*.test.ts";

// Children and commands start as compiled.
compile();

export default defineConfig({
  root: fileURLToPath(new URL("..", import.meta.url)),
  test: {
    globalSetup: "tests/kept.ts",
    testTimeout: 60_000,
    hookTimeout: 240_000,
    pool: "forks",
    maxWorkers: 2,
    // Loaded as Eleventy loads it: what is compiled is there once.
    server: { deps: { external: [/\/dist\//] } },
    projects: [
      { extends: true, test: { name: "apart", include: [apart] } },
      { extends: true, test: { name: "browser", isolate: false, include: [browser] } },
      { extends: true, test: { name: "shared", isolate: false, include: [all], exclude: [apart, browser] } },
    ],
  },
});
