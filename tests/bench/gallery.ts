// Benchmark: what a gallery of N studies costs to build, in seconds and in memory of the main process, beside what Eleventy
// alone needs to write the same pages from ready texts.
import { spawn } from "node:child_process";
import { mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";

const top = join(import.meta.dirname, "../..");

/** Colours of the invented flags: far enough apart that each pair has an edge. */
const paints = ["#15244a", "#7a1020", "#e6b436", "#f7f3e8", "#1d5b3a", "#6fa8d6"] as const;

/** Distinct flags: what is measured once serves all studies that show the same flag. */
const distinct = 12;

export interface GalleryBench {
  readonly studies: number;
  readonly broken: number;
  readonly pages: number;
  readonly seconds: number;
  /** Highest resident memory in MB: of our main process, and of Eleventy alone with the same pages. */
  readonly residentMain: number;
  readonly residentFloor: number;
}

/** Numbers from 0 up to 1, the same for the same seed. Source: mulberry32, public domain. */
function createRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** Stripes, and a disc on every second flag. */
function drawFlag(random: () => number, index: number): { readonly svg: string; readonly field: string } {
  const shuffled = paints.map((hex) => [random(), hex] as const).sort(([a], [b]) => a - b);
  const colours = shuffled.slice(0, 2 + (index % 3)).map(([, hex]) => hex);
  const [field = paints[0], charge = paints[1]] = colours;
  const stripes = colours.map((hex, at) => {
    const height = 360 / colours.length;
    return `<rect y="${at * height}" width="540" height="${height}" fill="${hex}"/>`;
  });
  const disc = `<circle cx="180" cy="60" r="${40 + Math.round(20 * random())}" fill="${charge}"/>`;
  const shapes = [...stripes, ...(index % 2 === 0 ? [disc] : [])];
  return {
    svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 540 360">${shapes.join("")}</svg>\n`,
    field,
  };
}

/** Writes a gallery of `studies` studies with invented flags; the last `broken` of them change a colour that is not there. */
export async function writeGallery(folder: string, studies: number, broken: number, seed = 1): Promise<void> {
  const random = createRandom(seed);
  const flags = Array.from({ length: distinct }, (_, index) => drawFlag(random, index));
  await mkdir(join(folder, "studies"), { recursive: true });
  const settings = ["title: Bench", "description: Invented flags.", "address: https://example.org/bench/"];
  await writeFile(join(folder, "gallery.yaml"), `${settings.join("\n")}\n`);
  for (let index = 0; index < studies; index += 1) {
    const flag = flags[index % distinct];
    if (flag === undefined) throw new Error("no flag");
    const own = join(folder, "studies", `study-${String(index).padStart(5, "0")}`);
    await mkdir(own);
    const replace = index >= studies - broken ? "#123457" : flag.field;
    const front = [
      `title: Study of flag ${index % distinct}`,
      "original: original.svg",
      `change: { replace: "${replace}", with: "#0a0a0a" }`,
      `authors: [Author ${index % 40}]`,
      `tags: [flag ${index % distinct}]`,
      `date: 20${String(10 + (index % 16))}-0${1 + (index % 9)}-11`,
    ];
    await writeFile(
      join(own, "study.md"),
      `---\n${front.join("\n")}\n---\nProse of a study.\n\n::figure{kind="gain chart"}\n`,
    );
    await writeFile(join(own, "original.svg"), flag.svg);
  }
}

/** Runs a program and returns the seconds it took and its highest resident memory in MB. Source: proc(5), VmHWM. */
async function watch(words: readonly string[], cwd: string): Promise<{ seconds: number; resident: number }> {
  const began = performance.now();
  const child = spawn(process.execPath, words, { cwd, stdio: ["ignore", "ignore", "inherit"] });
  let resident = 0;
  const look = setInterval(async () => {
    const status = await readFile(`/proc/${child.pid}/status`, "utf8").catch(() => "");
    const found = /^VmHWM:\s+(\d+) kB/m.exec(status)?.[1];
    if (found !== undefined) resident = Math.max(resident, Number(found) / 1024);
  }, 50);
  try {
    const code = await new Promise<number | null>((resolve) => child.once("exit", resolve));
    if (code === null || code > 1) throw new Error(`${words.join(" ")} ended with ${code}`);
  } finally {
    clearInterval(look);
  }
  return { seconds: (performance.now() - began) / 1000, resident };
}

/** Builds a gallery of `studies` studies, `broken` of them broken, and lets Eleventy alone write the same pages. */
export async function benchGallery(studies: number, broken = 0, keptIn?: string): Promise<GalleryBench> {
  const folder = await mkdtemp(join(tmpdir(), "counterchange-gallery-"));
  try {
    await writeGallery(join(folder, "content"), studies, broken);
    const cache = keptIn ?? join(folder, "kept");
    const start = join(top, "src/cli/start.mjs");
    const own = await watch([start, "publish", "content", "--out", "site", "--cache", cache], folder);
    const floor = await watch(
      ["--import", "tsx", join(import.meta.dirname, "floor.ts"), join(folder, "site")],
      top,
    );
    const manifest = await readFile(join(folder, "site/.counterchange-site"), "utf8");
    return {
      studies,
      broken,
      pages: manifest.match(/"path":"(?:[^"]*\/)?[^"/]*\.html"/g)?.length ?? 0,
      seconds: own.seconds,
      residentMain: own.resident,
      residentFloor: floor.resident,
    };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
