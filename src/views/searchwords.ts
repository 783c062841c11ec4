// Floor 8. The words by which the front page finds a study or a page: one script of data, fetched by a page once somebody searches.
import type { StudyResult } from "../analysis/result.ts";
import type { Page } from "../content/page/pagefile.ts";
import type { Format } from "../words/format.ts";
import { outcomeIds } from "../words/gradeword.ts";
import { describeVerdict } from "../words/verdict.ts";
import { presentStatus } from "./status.ts";

/** Site path of the script. A script, because pages opened from a disk may fetch nothing else. */
export const wordsFile = "/assets/words.js";

/**
 * Returns the script: it sets `studyWords`, the words of each study by its slug, each once, parted by spaces and with one
 * before the first. They are of title, prose, decision, names, tags, credit, colours by name and hex, outcomes, verdict
 * and status. And `pageWords`, the gallery's own pages with title, address from the front page, and words.
 */
export function formatWords(
  results: readonly StudyResult[],
  format: Format,
  pages: readonly Page[] = [],
): string {
  const words = Object.fromEntries(
    results.map((result) => [result.study.slug, ` ${listWords(result, format).join(" ")}`]),
  );
  const own = pages.map(({ path, title, body }) => ({
    title,
    address: `${path}/`,
    words: ` ${[...new Set(foldWords(`${title} ${readProse(body)}`))].join(" ")}`,
  }));
  return `globalThis.studyWords = ${JSON.stringify(words, null, 1)};\nglobalThis.pageWords = ${JSON.stringify(own, null, 1)};\n`;
}

/** Every word once, folded. */
export function listWords({ study, comparison, change }: StudyResult, format: Format): readonly string[] {
  const { before, after } = comparison;
  const { credit } = study;
  const texts = [
    study.title,
    study.flag ?? "",
    ...study.authors,
    ...study.tags,
    ...[...before.colours, ...after.colours].flatMap(({ name, hex }) => [name, hex]),
    ...[study.change.with, change.with, change.only ?? ""],
    ...comparison.edges.map(({ outcome }) => format.say(outcomeIds[outcome])),
    describeVerdict(comparison, format).word,
    presentStatus(study.status, format).word,
    study.decision?.why ?? "",
    study.symbolism ?? "",
    ...[credit?.title ?? "", credit?.author ?? ""],
    readProse(study.body),
  ];
  return [...new Set(foldWords(texts.join(" ")))];
}

/** Prose without what is not read: figures, and where links lead. */
function readProse(body: string): string {
  return body.replace(/^::.*$/gm, " ").replace(/\]\([^()]*\)/g, " ");
}

/** Small letters without their marks, so that `Café` is found by `cafe`. The script find.js folds the same way. */
export function foldWords(text: string): readonly string[] {
  const plain = text.toLowerCase().normalize("NFKD").replace(/\p{M}/gu, "");
  return plain.match(/[\p{L}\p{N}]+/gu) ?? [];
}
