#!/usr/bin/env node
// Floor 11. Where the command begins, from any working folder: runs main.ts, as JavaScript where that is kept, else by
// teaching Node to read TypeScript.
import { fileURLToPath } from "node:url";
import { translate } from "./translate.mjs";

try {
  const { runProcess } = await load();
  await runProcess();
} catch (error) {
  // As where no more files may be open.
  if (error?.syscall === undefined) throw error;
  process.stderr.write(`Counterchange cannot start: ${error.message}\n    Mend that, and type it again.\n`);
  process.exitCode = 2;
}

async function load() {
  const translated = await translate();
  if (translated === undefined) {
    const { register } = await import("tsx/esm/api");
    // The JSX settings are ours, not those of the folder the command happens to be called from.
    register({ tsconfig: fileURLToPath(new URL("../../tsconfig.json", import.meta.url)) });
  }
  return import(translated ?? "./main.ts");
}
