// Files as large as they may be: nothing takes for ever over any, and of none is much said. #security
import { expect, test } from "vitest";
import { listLarge } from "./large.ts";
import { sendLarge } from "./passing.ts";

/** A hang is what this is about: far longer than anything takes, on a machine with other work. */
const seconds = 20;

/** The characters of all forms in which problems are printed, handed on and kept, for one file. */
const mostSaid = 200_000;

test("one in two hundred of all, every kind and size of file among them", { timeout: 600_000 }, async () => {
  const step = 199;
  const { passed, stuck } = await sendLarge(7, step, seconds);
  expect(stuck).toEqual([]);
  expect(passed.length).toBe(Math.ceil(([...listLarge()].length - 7) / step));
  expect(new Set(passed.map(({ name }) => name.split(":")[0])).size).toBe(9);
  expect(passed.filter(({ size }) => size > mostSaid)).toEqual([]);
  const slowest = Math.max(...passed.map(({ milliseconds }) => milliseconds));
  process.stdout.write(`large: ${passed.length} files, slowest ${(slowest / 1000).toFixed(1)} s\n`);
});

test("a file that takes longer is named, and the next one is tried", { timeout: 120_000 }, async () => {
  const count = [...listLarge()].length;
  const { passed, stuck } = await sendLarge(count - 2, 1, 0);
  expect(passed).toEqual([]);
  expect(stuck).toHaveLength(2);
});
