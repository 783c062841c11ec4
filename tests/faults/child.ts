// Test support. Processes of the tests as JavaScript: they and their children start in a fraction of the time that teaching
// Node to read TypeScript takes.
import { chmod, mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { bundle } from "../../src/cli/translate.mjs";

/** Translates modules of this folder, by their names without an ending, into `folder`, where they become NAME.mjs. */
export async function translateModules(folder: string, names: readonly string[]): Promise<void> {
  await mkdir(folder);
  // Another user may be the one to read it.
  await chmod(folder, 0o755);
  const { outputFiles } = await bundle(
    folder,
    names.map((name) => path.join(import.meta.dirname, `${name}.ts`)),
  );
  for (const file of outputFiles) await writeFile(file.path, file.contents);
}
