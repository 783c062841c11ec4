#!/usr/bin/env node
// Floor 7. Where the command begins: teaches Node to read TypeScript, from any working folder, and runs main.ts.
import { fileURLToPath } from "node:url";
import { register } from "tsx/esm/api";

// The JSX settings are ours, not those of the folder the command happens to be called from.
register({ tsconfig: fileURLToPath(new URL("../../tsconfig.json", import.meta.url)) });
const { runProcess } = await import("./main.ts");
await runProcess();
