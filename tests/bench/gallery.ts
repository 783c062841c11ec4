// Benchmark: what a gallery of N studies costs to publish, with nothing kept and with all kept, in processor time and in memory
// of the main process; beside it the floor: Eleventy alone writes the same pages from ready texts, sharp alone the same pictures.
import { spawn } from "node:child_process";
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";

const top = join(import.meta.dirname, "../..");

/** Colours of the invented flags: far enough apart that each pair has an edge. */
const paints = ["#15244a", "#7a1020", "#e6b436", "#f7f3e8", "#1d5b3a", "#6fa8d6"] as const;

/** Distinct flags unless told: what is measured once serves all studies that show the same flag. */
const usualFlags = 12;

export interface GalleryBench {
  readonly studies: number;
  readonly broken: number;
  readonly flags: number;
  readonly pages: number;
  /** Files and KB of a study besides its edge pages, and those of its edge pages. */
  readonly own: Weight;
  readonly edges: Weight;
  readonly cold: Cost;
  readonly warm: Cost;
  readonly pagesAlone: Cost;
  readonly picturesAlone: Cost;
}

export interface Weight {
  readonly files: number;
  readonly kilobytes: number;
}

/** `processor` is that of all processes together, in seconds; `resident` the highest memory of the main process in MB. */
export interface Cost {
  readonly seconds: number;
  readonly processor: number;
  readonly resident: number;
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
export async function writeGallery(
  folder: string,
  studies: number,
  broken: number,
  distinct = usualFlags,
  seed = 1,
): Promise<void> {
  const random = createRandom(seed);
  const flags = Array.from({ length: distinct }, (_, index) => drawFlag(random, index));
  await mkdir(join(folder, "studies"), { recursive: true });
  const settings = ["title: Bench", "description: Invented flags.", "address: https://example.org/bench/"];
  settings.push("viewingDistance: 40");
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

/** Seconds of processor time that a process and its children have had until now, by process. Source: proc(5), stat. */
async function readProcessors(parent: number): Promise<readonly (readonly [string, number])[]> {
  const ids = (await readdir("/proc")).filter((name) => /^\d+$/.test(name));
  const read = ids.map(async (id): Promise<readonly (readonly [string, number])[]> => {
    const text = await readFile(`/proc/${id}/stat`, "utf8").catch(() => "");
    const fields = text.slice(text.lastIndexOf(")") + 2).split(" ");
    const isOurs = Number(id) === parent || Number(fields[1]) === parent;
    return isOurs ? [[id, (Number(fields[11]) + Number(fields[12])) / 100]] : [];
  });
  return (await Promise.all(read)).flat();
}

/** Runs a program and returns what it cost. Source of the memory: proc(5), VmHWM. */
async function watch(words: readonly string[], cwd: string): Promise<Cost> {
  const began = performance.now();
  const child = spawn(process.execPath, words, { cwd, stdio: ["ignore", "ignore", "inherit"] });
  let resident = 0;
  const processors = new Map<string, number>();
  const look = setInterval(async () => {
    const status = await readFile(`/proc/${child.pid}/status`, "utf8").catch(() => "");
    const found = /^VmHWM:\s+(\d+) kB/m.exec(status)?.[1];
    if (found !== undefined) resident = Math.max(resident, Number(found) / 1024);
    for (const [id, seconds] of await readProcessors(child.pid ?? 0)) processors.set(id, seconds);
  }, 100);
  try {
    const code = await new Promise<number | null>((resolve) => child.once("exit", resolve));
    if (code === null || code > 1) throw new Error(`${words.join(" ")} ended with ${code}`);
  } finally {
    clearInterval(look);
  }
  const processor = [...processors.values()].reduce((a, b) => a + b, 0);
  return { seconds: (performance.now() - began) / 1000, processor, resident };
}

interface Entry {
  readonly path: string;
  readonly size: number;
}

function weigh(entries: readonly Entry[], studies: number): Weight {
  const bytes = entries.reduce((sum, { size }) => sum + size, 0);
  return { files: entries.length / studies, kilobytes: bytes / 1024 / studies };
}

/** What a gallery is made of: `broken` studies change a colour that is not there, `flags` of the flags are distinct. */
export interface GalleryPlan {
  readonly studies: number;
  readonly broken?: number;
  readonly flags?: number;
}

/** Publishes a gallery twice, and lets Eleventy and sharp alone write the same pages and pictures. */
export async function benchGallery({
  studies,
  broken = 0,
  flags = usualFlags,
}: GalleryPlan): Promise<GalleryBench> {
  const folder = await mkdtemp(join(tmpdir(), "counterchange-gallery-"));
  try {
    await writeGallery(join(folder, "content"), studies, broken, flags);
    const start = join(top, "src/cli/start.mjs");
    const publish = () =>
      watch([start, "publish", "content", "--out", "site", "--cache", join(folder, "kept")], folder);
    const floor = (what: string) =>
      watch(["--import", "tsx", join(import.meta.dirname, "floor.ts"), join(folder, "site"), what], top);
    const cold = await publish();
    const warm = await publish();
    const manifest = await readFile(join(folder, "site/.counterchange-site"), "utf8");
    const entries: readonly Entry[] = JSON.parse(manifest).files;
    const ofStudies = entries.filter(({ path }) => path.startsWith("studies/"));
    const isEdge = ({ path }: Entry) => /^studies\/[^/]+\/edges\//.test(path);
    return {
      studies,
      broken,
      flags,
      pages: entries.filter(({ path }) => path.endsWith(".html")).length,
      own: weigh(
        ofStudies.filter((entry) => !isEdge(entry)),
        studies - broken,
      ),
      edges: weigh(ofStudies.filter(isEdge), studies - broken),
      cold,
      warm,
      pagesAlone: await floor("pages"),
      picturesAlone: await floor("pictures"),
    };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** What was found, as lines to read. */
export function galleryLines(found: GalleryBench): readonly string[] {
  const { cold, warm, pagesAlone, picturesAlone, own, edges } = found;
  const floor = pagesAlone.processor + picturesAlone.processor;
  const row = (name: string, { processor, seconds, resident }: Cost) =>
    `  ${name.padEnd(32)}${processor.toFixed(1).padStart(10)}${seconds.toFixed(1).padStart(10)}${resident.toFixed(0).padStart(10)}`;
  return [
    `Gallery of ${found.studies} studies of ${found.flags} flags, ${found.broken} broken: ${found.pages} pages`,
    `  ${"".padEnd(32)}${"processor".padStart(10)}${"seconds".padStart(10)}${"main, MB".padStart(10)}`,
    row("cold", cold),
    row("warm", warm),
    row("floor: Eleventy alone, the pages", pagesAlone),
    row("floor: sharp alone, the pictures", picturesAlone),
    `  processor: cold ${(cold.processor / floor).toFixed(2)}, warm ${(warm.processor / floor).toFixed(2)} of the floor; warm ${(warm.processor / pagesAlone.processor).toFixed(2)} of Eleventy alone`,
    `  memory: ${(Math.max(cold.resident, warm.resident) - pagesAlone.resident).toFixed(0)} MB more than Eleventy alone`,
    `  a study: ${own.files.toFixed(1)} files of ${own.kilobytes.toFixed(0)} KB, and edge pages ${edges.files.toFixed(1)} of ${edges.kilobytes.toFixed(0)} KB`,
  ];
}
