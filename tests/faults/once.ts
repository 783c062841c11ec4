// Test support, a process of its own: builds once. Words: content, output, cache folder or -.

import { openStore } from "../../src/analysis/store/resultstore.ts";
import { buildSite } from "../../src/publish/buildsite.ts";

async function run(content: string, out: string, cache: string): Promise<void> {
  const store = cache === "-" ? undefined : await openStore({ folder: cache, secretFile: `${cache}-key` });
  await buildSite(content, out, store === undefined ? {} : { store });
  await store?.close();
}

const [content = "", out = "", cache = "-"] = process.argv.slice(2);
run(content, out, cache).then(
  () => process.exit(0),
  (error: unknown) => {
    process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`);
    process.exit(1);
  },
);
