// npm run audit: Lighthouse over the front page, a page of each kind around a study and a series of the demo, on a phone and on a desk.
// It prints the four scores of each and what costs points; it ends with 1 unless every score is 100.
import { mkdtemp, rm } from "node:fs/promises";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import path from "node:path";
import lighthouse, { desktopConfig, type Flags, type Result } from "lighthouse";
import { buildSite } from "../../src/publish/buildsite.ts";
import { launchBrowser } from "../browser/browser.ts";
import { serveSite } from "../browser/server.ts";

const pages = [
  "/",
  "/studies/kedgeport/",
  "/studies/kedgeport/edges/000000-15244a/",
  "/studies/kedgeport/show/",
  "/studies/kedgeport/sheet/",
  "/series/half-dark/",
  "/series/half-dark/vote/",
  "/survey/",
  "/method/",
] as const;
const categories = ["performance", "accessibility", "best-practices", "seo"] as const;
const devices = ["phone", "desk"] as const;

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}

/** A port nobody listens on right now. */
function findPort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      server.close(() => {
        if (address === null || typeof address === "string") reject(new Error("no port"));
        else resolve(address.port);
      });
    });
  });
}

/** What costs points in one category: its audits that weigh something and are not perfect. */
function listCosts(result: Result, category: (typeof categories)[number]): readonly string[] {
  const { auditRefs = [] } = result.categories[category] ?? {};
  return auditRefs
    .map(({ id, weight }) => ({ audit: result.audits[id], weight }))
    .filter(({ audit, weight }) => weight > 0 && typeof audit?.score === "number" && audit.score < 1)
    .map(({ audit }) => `    ${audit?.id}: ${audit?.title} ${audit?.displayValue ?? ""}`.trimEnd());
}

const room = await mkdtemp(path.join(tmpdir(), "counterchange-audit-"));
const port = await findPort();
const browser = await launchBrowser([`--remote-debugging-port=${port}`]);
let isPerfect = true;
try {
  const site = path.join(room, "site");
  await buildSite(path.resolve(import.meta.dirname, "../../content"), site, { base: "/" });
  const server = await serveSite(site);
  say(`  ${"page".padEnd(44)} device  ${categories.join("  ")}`);
  for (const page of pages) {
    for (const device of devices) {
      const flags: Flags = { port, output: "json", logLevel: "error", onlyCategories: [...categories] };
      const config = device === "desk" ? desktopConfig : undefined;
      const outcome = await lighthouse(`${server.address}${page}`, flags, config);
      if (outcome === undefined) throw new Error(`${page}: no result`);
      const { lhr } = outcome;
      if (lhr.runtimeError) throw new Error(`${page}: ${lhr.runtimeError.message}`);
      const scores = categories.map((category) => Math.round(100 * (lhr.categories[category]?.score ?? 0)));
      const cells = scores.map((score, index) => String(score).padStart(categories[index]?.length ?? 0));
      say(`  ${page.padEnd(44)} ${device.padEnd(6)}  ${cells.join("  ")}`);
      if (scores.some((score) => score < 100)) {
        isPerfect = false;
        for (const category of categories) for (const line of listCosts(lhr, category)) say(line);
      }
    }
  }
  await server.close();
} finally {
  await browser.close();
  await rm(room, { recursive: true });
}
say(isPerfect ? "Every score is 100." : "Not every score is 100.");
process.exitCode = isPerfect ? 0 : 1;
