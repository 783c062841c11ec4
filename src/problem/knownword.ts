// Floor 0. The known word that a mistyped one most likely stands for, so that a message can say what to type.
import { distance } from "fastest-levenshtein";

/**
 * Returns the word of `known` nearest to `word`, or undefined if none is near enough to be meant.
 *
 * Case, spaces, hyphens and underscores do not count. Near enough is up to one edit for each three characters
 * and at least two, but never as many as the shorter word is long. The first of equals wins. Nothing of more than 100
 * characters is a word.
 *
 * Example: `findNearest("orignal", ["original", "options"])` is `"original"`.
 */
export function findNearest(word: string, known: readonly string[]): string | undefined {
  if (word.length > 100) return undefined;
  const wanted = fold(word);
  let best: string | undefined;
  let bestDistance = Math.max(2, Math.floor(wanted.length / 3)) + 1;
  for (const candidate of known) {
    const folded = fold(candidate);
    const steps = distance(wanted, folded);
    if (steps < bestDistance && steps < Math.min(wanted.length, folded.length)) {
      best = candidate;
      bestDistance = steps;
    } else if (steps === 0 && best === undefined) {
      best = candidate;
    }
  }
  return best;
}

function fold(word: string): string {
  return word
    .normalize("NFC")
    .toLowerCase()
    .replace(/[\s_-]+/g, "");
}
