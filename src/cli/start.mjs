#!/usr/bin/env node
// Floor 11. Where the command begins, from any working folder: runs main.ts, as compiled. In a checkout what was edited is
// compiled first; an installed package has no sources.
import { existsSync } from "node:fs";

try {
  if (existsSync(new URL("main.ts", import.meta.url))) (await import("./compile.mjs")).compile();
  const { runProcess } = await import("../../dist/src/cli/main.js");
  await runProcess();
} catch (error) {
  // As where no more files may be open, or a source has a fault.
  if (error?.syscall === undefined && error?.code !== "SOURCE") throw error;
  process.stderr.write(`Counterchange cannot start: ${error.message}\n    Mend that, and type it again.\n`);
  process.exitCode = 2;
}
