// How the tests run: from the project's root, with time enough for a busy machine.
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

export default defineConfig({
  root: fileURLToPath(new URL("..", import.meta.url)),
  test: {
    include: ["tests/**/*.test.{ts,tsx}"],
    testTimeout: 60_000,
    hookTimeout: 240_000,
    pool: "forks",
    maxWorkers: 2,
  },
});
