// Floor 6. Many pieces of work side by side, a few at a time, each result handed on when its turn comes.
import { pMapIterable } from "p-map";

/** Results that may wait for one before them, for each piece of work at once: a slow one holds nobody up for long. */
const mostWaiting = 8;

/**
 * Does `work` on every item, at most `width` at once, and calls `take` with the results in the order of the items, each as
 * soon as those before it are done. An item is not touched before there is room for it, so memory stays flat.
 *
 * Rejects with the first fault of `work`; nothing new is begun after it.
 */
export async function runOrdered<Item, Result>(
  items: readonly Item[],
  width: number,
  work: (item: Item) => Promise<Result>,
  take: (result: Result, index: number) => void,
): Promise<void> {
  let index = 0;
  const limits = { concurrency: width, backpressure: mostWaiting * width };
  for await (const result of pMapIterable(items, work, limits)) {
    take(result as Result, index);
    index += 1;
  }
}
