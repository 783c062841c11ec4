// Test support. A browser that comes from the npm registry alone, with the shared libraries its package ships.
import { mkdirSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { type Browser, chromium } from "playwright-core";

/** Bump with the package: an older browser must not be taken for this one. */
const folder = path.join(tmpdir(), "counterchange-chromium-147");

/** Where the browser is, and the environment it needs. */
export interface BrowserPlace {
  readonly executablePath: string;
  readonly env: Readonly<Record<string, string>>;
}

/**
 * Unpacks the browser once, into a folder of its own under the system's temporary one. Run this before several
 * processes want the browser: unpacking twice at once would leave half a file.
 *
 * The package unpacks its libraries (nss, nspr, expat) only where it believes it runs in the cloud it was made for, and
 * everything to `TMPDIR`; both are set around the call and put back.
 */
export async function unpackBrowser(): Promise<BrowserPlace> {
  mkdirSync(folder, { recursive: true });
  const kept = { TMPDIR: process.env.TMPDIR, AWS_EXECUTION_ENV: process.env.AWS_EXECUTION_ENV };
  const alsoSet = {
    LD_LIBRARY_PATH: process.env.LD_LIBRARY_PATH,
    FONTCONFIG_PATH: process.env.FONTCONFIG_PATH,
  };
  process.env.TMPDIR = folder;
  process.env.AWS_EXECUTION_ENV = "AWS_Lambda_nodejs20.x";
  try {
    const { default: packaged } = await import("@sparticuz/chromium");
    packaged.setGraphicsMode = false;
    const executablePath = await packaged.executablePath();
    const env = {
      ...process.env,
      LD_LIBRARY_PATH: path.join(folder, "al2023", "lib"),
      FONTCONFIG_PATH: path.join(folder, "fonts"),
    };
    return {
      executablePath,
      env: dropUndefined({ ...env, TMPDIR: kept.TMPDIR, AWS_EXECUTION_ENV: undefined }),
    };
  } finally {
    for (const [name, value] of Object.entries({ ...kept, ...alsoSet })) {
      if (value === undefined) delete process.env[name];
      else process.env[name] = value;
    }
  }
}

/** Starts the browser. Nothing but the loopback server can be reached: every other name resolves nowhere. */
export function launchBrowser(place: BrowserPlace): Promise<Browser> {
  return chromium.launch({
    executablePath: place.executablePath,
    env: { ...place.env },
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
    ],
  });
}

function dropUndefined(values: Record<string, string | undefined>): Record<string, string> {
  const kept: Record<string, string> = {};
  for (const [name, value] of Object.entries(values)) if (value !== undefined) kept[name] = value;
  return kept;
}
