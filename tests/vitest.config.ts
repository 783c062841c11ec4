// How the tests run: from the project's root, with time enough for a busy machine. Most files share their processes, so
// that a module is loaded once for all of them; those that change the process itself, or start one, have their own.
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { defineConfig } from "vitest/config";
import { translate } from "../src/cli/translate.mjs";

const all = "tests/**/*.test.{ts,tsx}";
const apart = ["tests/{browser,cli,faults,fuzz}/**", "tests/preview/**"];

/** Children start from JavaScript, as those of the command do: in a fifth of the time. Who edits on reads the sources. */
async function translateChildren(): Promise<Record<string, string>> {
  const main = process.argv.includes("run") ? await translate() : undefined;
  if (main === undefined) return {};
  const folder = fileURLToPath(new URL(".", main));
  return {
    translatedWorker: JSON.stringify(join(folder, "worker.mjs")),
    translatedMaker: JSON.stringify(pathToFileURL(join(folder, "makefiles.mjs")).href),
  };
}

export default defineConfig({
  root: fileURLToPath(new URL("..", import.meta.url)),
  define: await translateChildren(),
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
