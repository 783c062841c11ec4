// Test support. Processes of the tests as JavaScript, on the program as it was compiled: they start in a fraction of the time
// that teaching Node to read TypeScript takes.
import { chmod, mkdir } from "node:fs/promises";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { build, type PluginBuild } from "esbuild";
import { packageFolder, programFolder } from "../../src/content/disk/packagefile.ts";

/** Translates modules of the folder `from`, by their names without an ending, into `folder`, where they become NAME.mjs. */
export async function translateModules(
  folder: string,
  names: readonly string[],
  from = import.meta.dirname,
): Promise<void> {
  await mkdir(folder, { recursive: true });
  // Another user may be the one to read it.
  await chmod(folder, 0o755);
  await build({
    entryPoints: names.map((name) => path.join(from, `${name}.ts`)),
    outdir: folder,
    outExtension: { ".js": ".mjs" },
    bundle: true,
    format: "esm",
    platform: "node",
    logLevel: "silent",
    plugins: [{ name: "program", setup: useProgram }],
  });
}

/** Imports of `src/` become those of the compiled program, and those of packages what they are here. */
function useProgram(made: PluginBuild): void {
  made.onResolve({ filter: /\/src\/.*\.ts$/ }, ({ path: target, resolveDir }) => {
    const source = path.relative(packageFolder, path.resolve(resolveDir, target));
    const compiled = path.join(programFolder, source.replace(/\.ts$/, ".js"));
    return { path: pathToFileURL(compiled).href, external: true };
  });
  made.onResolve({ filter: /^[a-z@]/ }, ({ path: name, kind }) =>
    kind === "entry-point" || name.startsWith("node:")
      ? undefined
      : { path: import.meta.resolve(name), external: true },
  );
}
