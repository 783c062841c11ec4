import { expect, test } from "vitest";
import { hashText, orderSides } from "../../../src/views/vote/ballotsides.ts";
import { client } from "./client.ts";

// draft-eastlake-fnv, “The FNV Non-Cryptographic Hash Algorithm”, test vectors of FNV-1a with 32 bits.
test.each([
  ["", 0x811c9dc5],
  ["a", 0xe40c292c],
  ["foobar", 0xbf9cf968],
])("%j as the draft has it", (text, hash) => {
  expect(hashText(text)).toBe(hash);
});

const seeds = Array.from({ length: 2000 }, (_, at) => at.toString(16).padStart(4, "0"));

test("the page's script puts the sides in the same order", () => {
  const names = ["original", "kedgeport", "kedgeport-copper"];
  for (const seed of [...seeds.slice(0, 200), "7f3a", "spring-season"])
    expect(client.orderSides(seed, "kedgeport", names)).toEqual(orderSides(seed, "kedgeport", names));
});

test("neither side stands first more often than by lot, nor always with that of another flag", () => {
  const first = (seed: string, key: string) => orderSides(seed, key, ["original", key])[0] === "original";
  for (const key of ["harrowquay", "linnet-strand", "a"]) {
    const share = seeds.filter((seed) => first(seed, key)).length / seeds.length;
    // Three standard deviations of a fair coin thrown 2,000 times: 0.034.
    expect(Math.abs(share - 0.5)).toBeLessThan(0.034);
  }
  const together = seeds.filter((seed) => first(seed, "harrowquay") === first(seed, "linnet-strand")).length;
  expect(Math.abs(together / seeds.length - 0.5)).toBeLessThan(0.05);
});
