import fc from "fast-check";
import { expect, test } from "vitest";
import { fingerprint } from "../../../src/analysis/store/fingerprint.ts";

test("64 hex digits, the same in every process", () => {
  expect(fingerprint({ a: [1, "x"] })).toMatch(/^[0-9a-f]{64}$/);
  // SHA-256 of the text `s3:abc`, by coreutils: printf 's3:abc' | sha256sum
  expect(fingerprint("abc")).toBe("4773c535ad69b2967b18f9178f4dd697e226dd58f8ffd0bab9df42ab112a5e3b");
});

test("the order of keys and keys that are undefined do not matter", () => {
  expect(fingerprint({ a: 1, b: { c: 2, d: undefined } })).toBe(fingerprint({ b: { c: 2 }, a: 1 }));
});

test("the order of a palette matters: equals are listed in it", () => {
  const one = new Map([
    ["red", "#f00"],
    ["blue", "#00f"],
  ]);
  expect(fingerprint(one)).not.toBe(fingerprint(new Map([...one].reverse())));
});

test.each([
  [1, "1"],
  [null, undefined],
  [0, -0],
  [Number.NaN, null],
  [[], {}],
  [
    ["ab", "c"],
    ["a", "bc"],
  ],
  [
    [["a"], "b"],
    ["a", ["b"]],
  ],
  [{ a: "b" }, new Map([["a", "b"]])],
  [{ a: { b: 1 } }, { a: 1, b: 1 }],
  [new Uint8Array([1, 2]), [1, 2]],
  [new Uint8Array([97]), "a"],
])("%j and %j differ", (one, other) => {
  expect(fingerprint(one)).not.toBe(fingerprint(other));
});

test("different plain data have different fingerprints, equal ones the same", () => {
  const value = fc.jsonValue();
  fc.assert(
    fc.property(value, value, (one, other) => {
      const isSame = fingerprint(one) === fingerprint(other);
      // An object may hold the key __proto__, which a literal would not set: compared as text with sorted keys.
      expect(isSame).toBe(sorted(one) === sorted(other));
      expect(fingerprint(structuredClone(one))).toBe(fingerprint(one));
    }),
    { numRuns: 2000 },
  );
});

test("a function is no plain data", () => {
  expect(() => fingerprint({ locate: () => 1 })).toThrow(RangeError);
});

function sorted(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(sorted).join()}]`;
  if (typeof value !== "object" || value === null) return Object.is(value, -0) ? "-0" : JSON.stringify(value);
  const parts = Object.entries(value).map(([key, inner]) => `${JSON.stringify(key)}:${sorted(inner)}`);
  return `{${parts.sort().join()}}`;
}
