import fc from "fast-check";
import { expect, test } from "vitest";
import { slugOf } from "../../src/words/addressslug.ts";

test.each([
  ["Ines Valcourt", "ines-valcourt"],
  ["dark on dark", "dark-on-dark"],
  ["two-colour charge", "two-colour-charge"],
  ["INES valcourt", "ines-valcourt"],
])("%s is %s", (name, slug) => expect(slugOf(name)).toBe(slug));

test("a name of other letters has an address of its own, and keeps what can be kept", () => {
  expect(slugOf("Zoë Ñáñez")).toMatch(/^zoe-nanez-[0-9a-f]{16}$/);
  expect(slugOf("ש. כהן")).toMatch(/^name-[0-9a-f]{16}$/);
  expect(slugOf("Zoë")).not.toBe(slugOf("Zoé"));
  // The same letters, composed and not.
  expect(slugOf("Zo\u00eb")).toBe(slugOf("Zoe\u0308"));
});

test("a folder of that name can be made on Windows", () => {
  for (const name of ["Con", "aux", "LPT1"]) expect(slugOf(name)).toMatch(/^[a-z0-9]+-[0-9a-f]{16}$/);
  expect(slugOf("Con Brio")).toBe("con-brio");
});

test("whatever the name, its address is one plain part of a path", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme", maxLength: 200 }), (name) => {
      expect(slugOf(name)).toMatch(/^[a-z0-9]+(?:-[a-z0-9]+)*$/);
      expect(slugOf(name).length).toBeLessThanOrEqual(80);
    }),
  );
});

test("no name can be made to meet the address of another", () => {
  const own = slugOf("Zoë");
  const typed = own.replaceAll("-", " ");
  expect(slugOf(typed)).not.toBe(own);
  expect(slugOf(typed.toUpperCase())).not.toBe(own);
  // 2^16 names would meet each other in addresses of four digits: of so many, nearly all would.
  const many = new Set(Array.from({ length: 20_000 }, (_, index) => slugOf(`é${index}`).slice(-16)));
  expect(many.size).toBe(20_000);
});
