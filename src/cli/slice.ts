// Floor 11. The command slice: measures and draws one slice of a large gallery, keeps that, and publishes nothing.
import type { Slice, SliceReport } from "../analysis/analyseslice.ts";
import type { Store } from "../analysis/store/resultstore.ts";
import { formatProblems } from "../problem/problemtext.ts";
import { quoteText } from "../problem/quote.ts";
import { openCache } from "./cacheoption.ts";
import { type Given, type Output, UsageError } from "./command.ts";
import { findContent } from "./contentfolder.ts";
import { checkTemporary } from "./temporary.ts";
import { count, countProblems, statusOfGallery } from "./text/exitstatus.ts";

export async function run(given: Given, output: Output): Promise<number> {
  const [words = "", ...operands] = given.operands;
  const slice = readSlice(words);
  const content = await findContent({ operands });
  await checkTemporary();
  const store = await openKept(given, content, output);
  const report = await work(given, content, slice, store, output);
  const { problems, studies, flags } = report;
  if (problems.length > 0)
    output.message(`${formatProblems(problems)}\n\n${countProblems(problems)} in slice ${words}.`);
  if (store.lost > 0) {
    const lost = count(store.lost, "result", "results");
    output.message(
      `${lost} could not be kept in ${store.folder}: they would be made again.\n    Make room there, or name another folder with --cache, and type the same command again.`,
    );
    return 2;
  }
  const status = statusOfGallery(problems);
  if (status === 2) return status;
  const beside = flags === 0 ? "" : ` and ${count(flags, "flag", "flags")} beside them`;
  output.data(`Slice ${words}: ${count(studies, "study", "studies")}${beside}, kept in ${store.folder}`);
  return status;
}

/** Measures and draws, and returns once all is on the disk. */
async function work(
  given: Given,
  content: string,
  slice: Slice,
  store: Store,
  output: Output,
): Promise<SliceReport> {
  const [{ analyseSlice }, { drawStudy, withPool }] = await Promise.all([
    import("../analysis/analyseslice.ts"),
    import("../publish/pictures/drawfiles.ts"),
  ]);
  try {
    return await withPool(store, (line) =>
      analyseSlice(content, slice, {
        line,
        drafts: given.switches.has("with-drafts"),
        use: async (one, gallery) => (await drawStudy(one, gallery, { line, store })).problems,
        onProgress: (done, total, what) => output.progress(done, total, what),
      }),
    );
  } finally {
    await store.close();
  }
}

/**
 * Opens the folder that the slice goes to, and makes it. Nothing in it goes for its size: slices that share one would delete
 * each other's. Throws UsageError where nothing can be kept.
 */
async function openKept(given: Given, content: string, output: Output): Promise<Store> {
  const store = await openCache(given, content, output, { most: Number.POSITIVE_INFINITY });
  if (await store?.prepare()) return store as Store;
  const { cache } = given.values;
  const where = store === undefined ? (cache ?? "here") : store.folder;
  throw new UsageError(
    `A slice is what is kept of it, and ${cache === "off" ? "--cache off keeps nothing" : `nothing can be kept in ${where}`}.`,
    "Name a folder that can be written, and holds nothing else: --cache kept",
  );
}

/** Returns the slice that `I/N` names. Throws UsageError with what to type. */
function readSlice(words: string): Slice {
  const [, first = "", last = ""] = /^(\d{1,6})\/(\d{1,6})$/.exec(words) ?? [];
  const [index, all] = [Number(first), Number(last)];
  if (index >= 1 && index <= all) return { index, count: all };
  if (all < 1)
    throw new UsageError(
      `${quoteText(words)} is no slice: that is its number, a slash, and how many there are.`,
      "Type, for the second of four: counterchange slice 2/4",
    );
  throw new UsageError(
    index < 1
      ? `There is no slice ${words}: the first is 1/${all}.`
      : `There is no slice ${words}: the last is ${all}/${all}.`,
    `Slices are counted from 1 to ${all}. Type, for example: counterchange slice ${index < 1 ? 1 : all}/${all}`,
  );
}
