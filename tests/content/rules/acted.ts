// Rules that no content folder raises by itself: each side of them acted out, with limits that are reached at once, a child
// that is killed, or the command's own way to a file. The rules that come of it.
import { join } from "node:path";
import { vi } from "vitest";
import { compareDrawing } from "../../../src/analysis/analyse.ts";
import { analyseGallery } from "../../../src/analysis/analysegallery.ts";
import { catchFault } from "../../../src/analysis/jobs/catchfault.ts";
import { Pool, type PoolLimits } from "../../../src/analysis/jobs/pool.ts";
import { surveyFile } from "../../../src/analysis/survey/surveyflags.ts";
import { defaultCloth } from "../../../src/colour/cloth.ts";
import { loadAddresses } from "../../../src/content/folder/addressfile.ts";
import { readDrawing } from "../../../src/content/folder/drawingfile.ts";
import { keepWithin } from "../../../src/content/folder/gallerybudget.ts";
import { loadGallery } from "../../../src/content/folder/loadgallery.ts";
import type { Problem } from "../../../src/problem/problem.ts";
import { disk } from "../../../src/publish/folder/writedisk.ts";
import { findLacking, keepAddresses } from "../../../src/publish/keepaddresses.ts";
import { makeFiles } from "../../../src/publish/pictures/makefiles.ts";
import { readDrawing as readBytes } from "../../../src/svg/gate/sanitise.ts";
import { listWorkers } from "../../analysis/children.ts";
import { systemError } from "../../faults/disk.ts";
import { openKept } from "../../kept.ts";
import { rightDrawing, rightGallery, rightPage, rightSeries, rightStudy } from "../mistakes.ts";
import { inFolder, type Side } from "./making.ts";

type Asked = Promise<{ readonly problems: readonly Problem[] }>;

const plain = {
  "content/gallery.yaml": rightGallery,
  "content/studies/ferry/study.md": rightStudy,
  "content/studies/ferry/original.svg": rightDrawing,
};
const files = { ...plain, "content/flags/ferry.svg": rightDrawing };
const bytes = Buffer.from(rightDrawing);
const options = { cloth: defaultCloth, distance: 40, palette: new Map<string, string>() };

const open = (path: string): Asked => inFolder(files, (root) => readDrawing(join(root, path)));

/** What the examples share is measured once. */
const analyse = async (content: string, minutes = 60): Asked =>
  analyseGallery(content, { minutes, store: await openKept() });

/** Measures the drawing in a child of its own; `meanwhile` happens to the child while it works. */
async function measure(
  limits: Partial<PoolLimits>,
  meanwhile?: (worker: number) => void,
): Promise<{ readonly problems: readonly Problem[] }> {
  const pool = new Pool({ size: 1, ...limits });
  const ask = () => pool.run("measure", "ferry.svg", { bytes, options });
  try {
    if (meanwhile === undefined) return await ask();
    await ask();
    const [worker] = listWorkers();
    if (worker === undefined) throw new Error("no child is there");
    // Stopped first, so that it cannot finish before it dies.
    process.kill(worker, "SIGSTOP");
    const job = ask();
    meanwhile(worker);
    return await job;
  } finally {
    pool.close();
    await vi.waitUntil(() => listWorkers().length === 0, { timeout: 10_000 });
  }
}

const answer = (line: string, read: (content: string) => Asked): Asked =>
  inFolder(
    {
      ...plain,
      "content/studies/ferry/answers/marit.md": `---\nby: Marit Osseny\nsays: ask\n${line}\n---\nWhy?\n`,
    },
    (root) => read(join(root, "content")),
  );
const decided = "decided: { date: 2026-05-02, why: It reads from the quay. }";
const decide = (lines: string): Asked =>
  inFolder(
    { ...plain, "content/studies/ferry/study.md": rightStudy.replace("status: open", lines) },
    (root) => loadGallery(join(root, "content")),
  );
const listed = (problem: Problem | undefined) => ({ problems: problem === undefined ? [] : [problem] });
const entriesOf = (count: number) =>
  Array.from({ length: count }, (_, index) => ({ name: `a${index}`, kind: "folder" as const }));
/** Sixty colours, each showing less than the one before. */
const manyColours = Buffer.from(
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 200">${Array.from({ length: 60 }, (_, index) => {
    const code = index === 0 ? "c02030" : (index + 1).toString(16).padStart(6, "0");
    return `<path fill="#${code}" d="M${index * 5} 0h${300 - index * 5}v200H${index * 5}z"/>`;
  }).join("")}</svg>`,
);

/** 450 KB of drawing. */
const largeDrawing = rightDrawing.replace("</svg>", `<desc>${"a".repeat(450 * 1024)}</desc></svg>`);

/** Publishes drawings in this process. */
const publish = (drawings: readonly string[]): Asked =>
  makeFiles({
    file: "ferry.svg",
    bytes,
    recipes: drawings.map((drawing) => ({ kind: "drawing", drawing })),
    isTrial: false,
  });

const acts: Readonly<Record<string, (isWrong: boolean) => Asked>> = {
  "study/content-missing": (isWrong) =>
    inFolder(files, (root) => loadGallery(join(root, isWrong ? "contnet" : "content"))),
  "study/too-many-folders": async (isWrong) =>
    keepWithin("studies", entriesOf(isWrong ? 5001 : 5000), "folders"),
  "study/too-many-files": async (isWrong) =>
    keepWithin("studies/ferry", entriesOf(isWrong ? 501 : 500), "files"),
  "study/out-of-time": (isWrong) =>
    inFolder(plain, (root) => analyse(join(root, "content"), isWrong ? 0 : 60)),
  "study/folder-named": (isWrong) => open(isWrong ? "content/flags" : "content/flags/ferry.svg"),
  // No system opens a name of 300 letters; which user may read what depends on who runs the test.
  "study/unreadable": (isWrong) => open(isWrong ? `${"a".repeat(300)}.svg` : "content/flags/ferry.svg"),
  // No drawing of ours makes the renderer give up: what fails here is a cloth that no gallery can have.
  "study/not-drawable": (isWrong) =>
    surveyFile("ferry.svg", bytes, isWrong ? { ...options, cloth: { black: 90, white: 10 } } : options),
  // The child stays stopped. A limit of a millisecond would be a race: a quick child can be heard before the clock.
  "study/too-slow": (isWrong) => (isWrong ? measure({ seconds: 0.5 }, () => undefined) : measure({})),
  "study/too-much-memory": (isWrong) => measure(isWrong ? { megabytes: 30 } : {}),
  "study/crashed": (isWrong) =>
    measure({}, (worker) => process.kill(worker, isWrong ? "SIGKILL" : "SIGCONT")),
  "study/machine": (isWrong) =>
    catchFault("ferry.svg", async () => {
      if (isWrong) throw systemError("EMFILE", "open", "ferry.svg");
      return { value: 1, problems: [] };
    }),
  "study/fault": (isWrong) =>
    catchFault("ferry.svg", async () => {
      if (isWrong) throw new Error("nothing an author did");
      return { value: 1, problems: [] };
    }),
  "page/left-out": (isWrong) => {
    const study = isWrong ? rightStudy.replace("status: open", "status: draft") : rightStudy;
    const page = { "content/studies/ferry/study.md": study, "content/pages/about.md": rightPage };
    return inFolder({ ...plain, ...page }, (root) => analyse(join(root, "content")));
  },
  "series/left-out": (isWrong) => {
    const study = isWrong ? rightStudy.replace("status: open", "status: draft") : rightStudy;
    const series = { "content/studies/ferry/study.md": study, "content/series/quay.md": rightSeries };
    return inFolder({ ...plain, ...series }, (root) => analyse(join(root, "content")));
  },
  "address/file-size": (isWrong) =>
    inFolder({ "addresses.txt": "/a/\n".repeat(isWrong ? 2_200_000 : 2) }, (root) =>
      loadAddresses(root, "content"),
    ),
  "address/lacking": async (isWrong) =>
    listed(findLacking("content", new Map([["/", {}]]), isWrong ? ["/", "/a/"] : ["/"])),
  "address/not-written": (isWrong) =>
    inFolder(plain, async (root) => {
      const write = () => Promise.reject(systemError("EROFS", "open", "addresses.txt"));
      const broken = isWrong ? { ...disk, write } : disk;
      return listed(await keepAddresses(join(root, "content"), new Map([["/a/", {}]]), broken));
    }),
  "study/answer-link": (isWrong) => answer(`link: ${isWrong ? "" : "https://"}forum.example/77`, loadGallery),
  "study/answer-edge": (isWrong) => answer(`edge: white / ${isWrong ? "pink" : "dark blue"}`, analyse),
  "study/answer-option": (isWrong) => answer(`option: ${isWrong ? "pink" : "white"} to yellow`, analyse),
  "study/follows": (isWrong) => decide(isWrong ? "follows: fery-wheel" : "status: open"),
  "study/decision-twice": (isWrong) =>
    decide(`status: adopted\n${isWrong ? "decision: So.\n" : ""}${decided}`),
  "study/decision-open": (isWrong) => decide(`status: ${isWrong ? "open" : "adopted"}\n${decided}`),
  "study/adopted-twice": (isWrong) => {
    const decideBy = (status: string) =>
      rightStudy.replace("status: open", `status: ${status}\ndecision: At the meeting.`);
    const adopted = decideBy("adopted");
    const rival = isWrong ? adopted : decideBy("declined");
    const files = {
      "content/studies/ferry/study.md": adopted,
      "content/studies/rival/study.md": rival,
      "content/studies/rival/original.svg": rightDrawing,
    };
    return inFolder({ ...plain, ...files }, (root) => analyse(join(root, "content")));
  },
  "study/flag-called": (isWrong) => {
    const called = (name: string) => rightStudy.replace("status: open", `status: open\nflag: ${name}`);
    const files = {
      "content/studies/ferry/study.md": called("The ferry flag"),
      "content/studies/rival/study.md": called(isWrong ? "The old wheel" : "The ferry flag"),
      "content/studies/rival/original.svg": rightDrawing,
    };
    return inFolder({ ...plain, ...files }, (root) => analyse(join(root, "content")));
  },
  "study/colour-small": (isWrong) =>
    compareDrawing(
      "ferry.svg",
      manyColours,
      { replace: isWrong ? "#00003b" : "#c02030", with: "#f4c430" },
      options,
    ),
  "study/not-published": (isWrong) => publish([isWrong ? rightDrawing.replace("</svg>", "") : rightDrawing]),
  // A drawing is read once, however many files show it.
  "study/too-much-output": (isWrong) => publish(new Array<string>(isWrong ? 160 : 100).fill(largeDrawing)),
  "svg/too-big": async (isWrong) => readBytes("ferry.svg", isWrong ? Buffer.alloc(700 * 1024, "<") : bytes),
};

/** The rules that are acted out here. */
export const acted: readonly string[] = Object.keys(acts);

/** Acts out one side of a rule and returns the rules of all problems that come of it. */
export async function act(id: string, side: Side): Promise<readonly string[]> {
  const { problems } = (await acts[id]?.(side === "wrong")) ?? { problems: [] };
  return problems.map(({ rule }) => rule);
}
