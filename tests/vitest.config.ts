// How the tests run: from the project's root, with time enough for a busy machine. Most files share their processes, so
// that a module is loaded once for all of them; those that change the process itself, or start one, have their own.
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { compile } from "../src/cli/compile.mjs";

const all = "tests/**/*.test.{ts,tsx}";
const apart = ["tests/{browser,cli,faults,fuzz}/**", "tests/preview/**"];

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
    projects: [
      { extends: true, test: { name: "apart", include: apart.map((folder) => `${folder}/*.test.{ts,tsx}`) } },
      { extends: true, test: { name: "shared", isolate: false, include: [all], exclude: apart } },
    ],
  },
});
