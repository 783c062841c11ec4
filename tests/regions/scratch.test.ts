import { expect, test } from "vitest";
import { giveBack, takeBytes, takeFloats, takeIntegers, takeWords } from "../../src/regions/scratch.ts";

test("bytes are 0, whatever was written in them before", () => {
  const first = takeBytes(70_000).fill(7);
  giveBack(first);
  const second = takeBytes(69_000);
  expect(second.buffer).toBe(first.buffer);
  expect(second.every((byte) => byte === 0)).toBe(true);
});

test("what was given back is taken again, what was not is nobody else's", () => {
  const first = takeWords(50_000);
  giveBack(first);
  const second = takeWords(49_999);
  expect(second.buffer).toBe(first.buffer);
  expect(takeWords(49_999).buffer).not.toBe(second.buffer);
});

test("given back twice it is taken once", () => {
  const first = takeFloats(30_000);
  giveBack(first, first);
  giveBack(first);
  expect(takeFloats(30_000).buffer).toBe(first.buffer);
  expect(takeFloats(30_000).buffer).not.toBe(first.buffer);
});

test("lengths are those that were asked for, also of nothing", () => {
  const lengths = [takeBytes(0), takeWords(3), takeFloats(1025), takeIntegers(7)].map(({ length }) => length);
  expect(lengths).toEqual([0, 3, 1025, 7]);
});

test("memory of any number of flags does not grow", () => {
  const keptOf = (count: number, bytes: number): number => {
    const many = Array.from({ length: count }, () => takeBytes(bytes));
    giveBack(...many);
    const again = new Set(Array.from({ length: count }, () => takeBytes(bytes).buffer));
    return many.filter(({ buffer }) => again.has(buffer)).length;
  };
  expect(keptOf(40, 2 ** 16)).toBeLessThanOrEqual(24);
  // 64 MB at most.
  expect(keptOf(10, 2 ** 24)).toBeLessThanOrEqual(4);
});

test("small pieces take no place, of others or of large ones", () => {
  const small = Array.from({ length: 40 }, () => takeBytes(1000));
  const large = takeBytes(2 ** 20);
  giveBack(...small, large);
  expect(takeBytes(2 ** 17).buffer).not.toBe(large.buffer);
  expect(takeBytes(2 ** 20).buffer).toBe(large.buffer);
});

test("what was given back last is kept, in place of what was longest ago", () => {
  const [first, ...others] = Array.from({ length: 25 }, () => takeBytes(2 ** 17));
  if (first === undefined) throw new Error("no first");
  giveBack(first, ...others);
  const again = new Set(Array.from({ length: 24 }, () => takeBytes(2 ** 17).buffer));
  expect(others.every(({ buffer }) => again.has(buffer))).toBe(true);
  expect(again.has(first.buffer)).toBe(false);
});
