// Test support. Whether a cache is used at all: what it was asked, and what it had. A cache that is never read, or that is
// read for nothing, would pass every comparison of bytes.

import type { Store } from "../../src/analysis/store/resultstore.ts";
import type { Outcome } from "../../src/problem/problem.ts";
import { digest } from "./whole.ts";

/** What became of the questions of one build. */
export interface Hits {
  /** Answered without the work being done. */
  readonly hit: number;
  /** Answered by the work. */
  readonly worked: number;
  /** Questions that a build before had answered, and for which the work was done all the same. */
  readonly missed: number;
  /** Questions that no build before had answered, and for which the work was not done. */
  readonly invented: number;
}

/** Remembers, over all builds, which questions were answered with a value. */
export class Memory {
  private readonly known = new Set<string>();

  /** Watches what is asked of `store`; what comes back counts until then. */
  watch(store: Store): () => Hits {
    const counts = { hit: 0, worked: 0, missed: 0, invented: 0 };
    const before = new Set(this.known);
    const recall = store.recall.bind(store);
    store.recall = async <T>(question: unknown, work: () => Promise<Outcome<T>>): Promise<Outcome<T>> => {
      const key = keyOf(question);
      let isWorked = false;
      const outcome = await recall(question, async () => {
        isWorked = true;
        const made = await work();
        if (made.value !== undefined) this.known.add(key);
        return made;
      });
      counts[isWorked ? "worked" : "hit"] += 1;
      if (isWorked && before.has(key)) counts.missed += 1;
      // Asked twice in one build: the second time it may be there already.
      if (!isWorked && !before.has(key) && !this.known.has(key)) counts.invented += 1;
      if (outcome.value !== undefined) this.known.add(key);
      return outcome;
    };
    const find = store.find.bind(store);
    store.find = async <T>(question: unknown): Promise<Outcome<T> | undefined> => {
      const outcome = await find<T>(question);
      if (outcome === undefined) return undefined;
      const key = keyOf(question);
      counts.hit += 1;
      // Asked twice in one build: the second time it may be there already.
      if (!before.has(key) && !this.known.has(key)) counts.invented += 1;
      if (outcome.value !== undefined) this.known.add(key);
      return outcome;
    };
    const put = store.put.bind(store);
    store.put = (question, outcome) => {
      const key = keyOf(question);
      counts.worked += 1;
      if (before.has(key)) counts.missed += 1;
      if (outcome.value !== undefined) this.known.add(key);
      put(question, outcome);
    };
    return () => ({ ...counts });
  }
}

const keyOf = (question: unknown): string => digest(JSON.stringify(flatten(question)));

/** The same data as JSON can hold them: bytes as text, maps and objects as pairs in order, a Buffer like any other bytes. */
function flatten(value: unknown): unknown {
  if (ArrayBuffer.isView(value))
    return `bytes ${Buffer.from(value.buffer, value.byteOffset, value.byteLength).toString("base64")}`;
  if (value instanceof Map || value instanceof Set) return [...value].map(flatten);
  if (Array.isArray(value)) return value.map(flatten);
  if (typeof value !== "object" || value === null) return value ?? String(value);
  return Object.entries(value)
    .filter(([, inner]) => inner !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, inner]) => [key, flatten(inner)]);
}
