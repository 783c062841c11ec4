// Floor 6. Many pieces of work side by side, a few at a time, each result handed on when its turn comes.

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
  const waiting = new Map<number, Result>();
  let begun = 0;
  let taken = 0;
  let isBroken = false;
  const runOne = async (): Promise<void> => {
    while (begun < items.length && !isBroken) {
      const index = begun;
      begun += 1;
      try {
        waiting.set(index, await work(items[index] as Item));
      } catch (fault) {
        isBroken = true;
        throw fault;
      }
      for (let next = waiting.get(taken); next !== undefined; next = waiting.get(taken)) {
        waiting.delete(taken);
        taken += 1;
        take(next, taken - 1);
      }
    }
  };
  await Promise.all(Array.from({ length: Math.min(width, items.length) }, runOne));
}
