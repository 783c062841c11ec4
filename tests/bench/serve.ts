// Benchmark: how soon a served gallery shows its first page, and how soon an edit shows in a browser after it is saved.
import { type ChildProcess, spawn } from "node:child_process";
import { cp, mkdir, mkdtemp, readFile, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { launchBrowser } from "../browser/browser.ts";
import { writeGallery } from "./gallery.ts";

const top = join(import.meta.dirname, "../..");

/** Milliseconds of each edit, from the beginning of the write until the new text is in the page. */
export interface EditBench {
  readonly what: string;
  readonly median: number;
  readonly worst: number;
  readonly edits: number;
}

export interface ServeBench {
  /** Milliseconds from the start of the process until the whole first page has come. */
  readonly coldFront: number;
  readonly coldStudy: number;
  readonly warmFront: number;
  readonly edits: readonly EditBench[];
}

/** Serves a copy of the checkout's demo, or a gallery of `studies` invented ones, and edits it, `edits` times each. */
export async function benchServe(studies?: number, edits = 20): Promise<ServeBench> {
  const folder = await mkdtemp(join(tmpdir(), "counterchange-bench-"));
  try {
    await copyCheckout(folder, studies);
    // The sources are compiled once, as after an install.
    await timeFirst(folder, "", "none");
    const coldStudy = await timeFirst(folder, "studies/bench/", "first");
    const coldFront = await timeFirst(folder, "", "second");
    const warmFront = await timeFirst(folder, "", "second");
    return { coldFront, coldStudy, warmFront, edits: await benchEdits(folder, edits) };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** A checkout of its own, so that templates can be edited. */
async function copyCheckout(folder: string, studies: number | undefined): Promise<void> {
  const copied = ["src", "templates", "package.json", "tsconfig.json", "eleventy.config.ts"];
  for (const name of [...copied, ...(studies === undefined ? ["content"] : [])])
    await cp(join(top, name), join(folder, name), { recursive: true });
  if (studies !== undefined) await writeGallery(join(folder, "content"), studies, 0);
  await symlink(join(top, "node_modules"), join(folder, "node_modules"));
  const study = join(folder, "content/studies/bench");
  await mkdir(study);
  await cp(join(top, "content/studies/kedgeport/original.svg"), join(study, "original.svg"));
  const front = [
    "title: Title 0",
    "original: original.svg",
    'change: { replace: "#000000", with: "#e6b436" }',
  ];
  await writeFile(join(study, "study.md"), `---\n${front.join("\n")}\n---\nProse 0.\n`);
}

interface Running {
  readonly child: ChildProcess;
  readonly address: string;
}

async function start(folder: string, cache: string): Promise<Running> {
  const words = [
    join(folder, "src/cli/start.mjs"),
    "preview",
    "content",
    "--port",
    "0",
    "--cache",
    join(folder, cache),
  ];
  const child = spawn(process.execPath, words, { cwd: folder, stdio: ["ignore", "pipe", "ignore"] });
  const address = await new Promise<string>((resolve, reject) => {
    child.stdout?.on("data", (data: Buffer) => {
      const found = /http:\S+/.exec(data.toString());
      if (found !== null) resolve(found[0]);
    });
    child.once("exit", () => reject(new Error("the server ended")));
  });
  return { child, address };
}

async function stop({ child }: Running): Promise<void> {
  const ended = new Promise((resolve) => child.once("exit", resolve));
  child.kill("SIGTERM");
  await ended;
}

async function timeFirst(folder: string, page: string, cache: string): Promise<number> {
  const began = performance.now();
  const running = await start(folder, cache);
  try {
    const response = await fetch(running.address + page);
    if (response.status !== 200) throw new Error(`the first page has status ${response.status}`);
    await response.text();
    const took = performance.now() - began;
    await delay(untilKept);
    return took;
  } finally {
    await stop(running);
  }
}

interface Edit {
  readonly what: string;
  readonly file: string;
  readonly edit: (text: string, turn: number) => string;
  /** What the page has to say. */
  readonly says: (turn: number) => string;
}

const edits: readonly Edit[] = [
  {
    what: "study: its title",
    file: "content/studies/bench/study.md",
    edit: (text, turn) => text.replace(/title: .*/, `title: Title ${turn}`),
    says: (turn) => `Title ${turn}`,
  },
  {
    what: "study: its change",
    file: "content/studies/bench/study.md",
    edit: (text, turn) => text.replace(/with: "#......"/, `with: "#e6b4${hexOf(turn)}"`),
    says: (turn) => `#e6b4${hexOf(turn)}`,
  },
  {
    what: "drawing: a colour",
    file: "content/studies/bench/original.svg",
    edit: (text, turn) => text.replace(/#1524../g, `#1524${hexOf(turn)}`),
    says: (turn) => `#1524${hexOf(turn)}`,
  },
  {
    what: "setting: the title",
    file: "content/gallery.yaml",
    edit: (text, turn) => text.replace(/title: .*/, `title: Gallery ${turn}`),
    says: (turn) => `Gallery ${turn}`,
  },
  {
    what: "setting: the viewing distance",
    file: "content/gallery.yaml",
    edit: (text, turn) => text.replace(/viewingDistance: .*/, `viewingDistance: ${40 + turn}`),
    says: (turn) => `${40 + turn} flag heights`,
  },
  {
    what: "template: a heading",
    file: "templates/pages/study.11ty.tsx",
    edit: (text, turn) => text.replace(/<h2 id="edges">[^<]*</, `<h2 id="edges">Edges ${turn}<`),
    says: (turn) => `Edges ${turn}`,
  },
];

function hexOf(turn: number): string {
  return (64 + turn).toString(16);
}

async function benchEdits(folder: string, turns: number): Promise<readonly EditBench[]> {
  const running = await start(folder, "second");
  const browser = await launchBrowser();
  try {
    const page = await browser.newPage();
    const reader = await openReader(page);
    const versions = await openVersions(running.address);
    await page.goto(`${running.address}studies/bench/`);
    await versions.waitForRest();
    const found: EditBench[] = [];
    for (const one of edits) {
      const times: number[] = [];
      for (let turn = 1; turn <= turns; turn += 1) {
        versions.forget();
        times.push(await timeEdit(reader, join(folder, one.file), one, turn));
        await versions.waitForRest();
      }
      times.sort((a, b) => a - b);
      const median = times[Math.floor((times.length - 1) / 2)] ?? Number.NaN;
      found.push({ what: one.what, median, worst: times.at(-1) ?? Number.NaN, edits: turns });
    }
    return found;
  } finally {
    await browser.close();
    await stop(running);
  }
}

async function timeEdit(reader: Reader, file: string, { edit, says }: Edit, turn: number): Promise<number> {
  const text = edit(await readFile(file, "utf8"), turn);
  const seen = reader.waitFor(says(turn));
  const began = performance.now();
  await writeFile(file, text);
  await seen;
  return performance.now() - began;
}

interface Reader {
  /** Resolves when the text in the page says `wanted`. */
  waitFor(wanted: string): Promise<void>;
}

/** A page that tells its text itself, whenever its body is another: to ask it again and again would keep it busy. */
async function openReader(page: Page): Promise<Reader> {
  let hear: (text: string) => void = () => undefined;
  await page.exposeFunction("tellText", (text: string) => hear(text));
  await page.addInitScript(`{
    const tell = () => window.tellText(document.documentElement.textContent);
    addEventListener("DOMContentLoaded", () => {
      tell();
      new MutationObserver(tell).observe(document.documentElement, { childList: true });
    });
  }`);
  return {
    waitFor: (wanted) =>
      new Promise((resolve, reject) => {
        const timer = setTimeout(() => reject(new Error(`the page never said: ${wanted}`)), 30_000);
        hear = (text) => {
          if (!text.includes(wanted)) return;
          clearTimeout(timer);
          resolve();
        };
      }),
  };
}

interface Versions {
  /** From here on a version counts that is complete. */
  forget(): void;
  /** An author looks at what was changed before the next edit; meanwhile all the rest is measured. */
  waitForRest(): Promise<void>;
}

/** Hears of each version that is complete, as an open page does: of a page that is in no version, and so never another. */
async function openVersions(address: string): Promise<Versions> {
  const nowhere = "/studies/nowhere/";
  const mark = /data-mark="([^"]+)"/.exec(await (await fetch(address + nowhere.slice(1))).text())?.[1] ?? "";
  const { body } = await fetch(`${address}_serve/news?${new URLSearchParams({ path: nowhere, mark })}`);
  if (body === null) throw new Error("the server tells no news");
  let told = 0;
  let last = 0;
  void (async () => {
    for await (const chunk of body) {
      const text = new TextDecoder().decode(chunk);
      if (text.includes("event: changed")) throw new Error("a page that is nowhere changed");
      if (!text.includes("event: problems")) continue;
      told += 1;
      last = performance.now();
    }
  })().catch(() => undefined);
  return {
    forget: () => {
      told = 0;
    },
    waitForRest: async () => {
      const began = performance.now();
      while (told === 0 || performance.now() - last < quiet) {
        if (performance.now() - began > 300_000) throw new Error("the gallery was never complete");
        await delay(20);
      }
    },
  };
}

/** Milliseconds without anything new, after which nothing more is on its way and the page has its scripts. */
const quiet = 250;

/** Milliseconds until what was measured for a first page is on the disk. */
const untilKept = 1500;

function delay(milliseconds: number): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, milliseconds);
  });
}
