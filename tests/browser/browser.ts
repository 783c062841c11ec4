// Test support. A browser that comes from the npm registry alone, with the shared libraries its package ships.
import { existsSync } from "node:fs";
import { mkdtemp, rename, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { type Browser, chromium } from "playwright-core";

/** Bump with the package: an older browser must not be taken for this one. */
const folder = path.join(tmpdir(), "counterchange-chromium-147");

/**
 * Unpacks the browser, unless an earlier run did, into a folder of its own under the system's temporary one, and starts
 * it. It can reach nothing but the loopback server: every other name resolves nowhere. `more`: further switches.
 */
export async function launchBrowser(more: readonly string[] = []): Promise<Browser> {
  if (!existsSync(folder)) await unpackBrowser();
  return chromium.launch({
    executablePath: path.join(folder, "chromium"),
    env: {
      ...dropUndefined(process.env),
      LD_LIBRARY_PATH: path.join(folder, "al2023", "lib"),
      FONTCONFIG_PATH: path.join(folder, "fonts"),
    },
    headless: true,
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-dev-shm-usage",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-domain-reliability",
      "--no-first-run",
      "--no-pings",
      "--no-zygote",
      "--font-render-hinting=none",
      "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1",
      ...more,
    ],
  });
}

/**
 * The package unpacks everything to `TMPDIR`, and its libraries (nss, nspr, expat) only where it believes it runs in the
 * cloud it was made for. Both are set around the call and put back. Unpacked beside its place and renamed, so that a run
 * that is killed, or two at once, leave no half browser.
 */
async function unpackBrowser(): Promise<void> {
  const fresh = await mkdtemp(`${folder}-`);
  const names = ["TMPDIR", "AWS_EXECUTION_ENV", "LD_LIBRARY_PATH", "FONTCONFIG_PATH", "HOME"] as const;
  const kept = names.map((name) => [name, process.env[name]] as const);
  process.env.TMPDIR = fresh;
  process.env.AWS_EXECUTION_ENV = "AWS_Lambda_nodejs20.x";
  try {
    const { default: packaged } = await import("@sparticuz/chromium");
    await packaged.executablePath();
    await writeFile(path.join(fresh, "fonts", "fonts.conf"), formatFontSettings());
    await rename(fresh, folder).catch((error: unknown) => {
      if (!existsSync(folder)) throw error;
    });
  } finally {
    for (const [name, value] of kept) {
      if (value === undefined) delete process.env[name];
      else process.env[name] = value;
    }
    await rm(fresh, { recursive: true, force: true });
  }
}

/** The package's own settings look for its one font family where that cloud would have it. */
function formatFontSettings(): string {
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${path.join(folder, "fonts")}</dir>
  <cachedir>${path.join(folder, "fonts-cache")}</cachedir>
</fontconfig>
`;
}

function dropUndefined(values: NodeJS.ProcessEnv): Record<string, string> {
  const kept: Record<string, string> = {};
  for (const [name, value] of Object.entries(values)) if (value !== undefined) kept[name] = value;
  return kept;
}
