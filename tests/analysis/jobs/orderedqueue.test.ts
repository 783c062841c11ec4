import { expect, test } from "vitest";
import { runOrdered } from "../../../src/analysis/jobs/orderedqueue.ts";

/** Promises that a test settles by hand. */
function hold() {
  const open = new Map<number, (text: string) => void>();
  const work = (item: number) => new Promise<string>((resolve) => open.set(item, resolve));
  return { open, work };
}

const turn = () => new Promise((resolve) => setImmediate(resolve));

test("results come in the order of the items, whichever is done first, and no more than asked for are begun", async () => {
  const { open, work } = hold();
  const taken: string[] = [];
  const all = runOrdered([0, 1, 2, 3], 2, work, (result, index) => taken.push(`${index}${result}`));
  await turn();
  expect([...open.keys()]).toEqual([0, 1]);
  open.get(1)?.("b");
  await turn();
  expect(taken).toEqual([]);
  expect([...open.keys()]).toEqual([0, 1, 2]);
  open.get(0)?.("a");
  await turn();
  expect(taken).toEqual(["0a", "1b"]);
  open.get(3)?.("d");
  open.get(2)?.("c");
  await all;
  expect(taken).toEqual(["0a", "1b", "2c", "3d"]);
});

test("a fault rejects, and nothing new is begun", async () => {
  const begun: number[] = [];
  const work = async (item: number) => {
    begun.push(item);
    if (item === 1) throw new RangeError("one");
    return item;
  };
  await expect(runOrdered([1, 2, 3], 1, work, () => undefined)).rejects.toThrow("one");
  expect(begun).toEqual([1]);
});

test("no items, no work", async () => {
  await runOrdered(
    [],
    4,
    async () => 1,
    () => expect.unreachable(),
  );
});
