import fc from "fast-check";
import { expect, test } from "vitest";
import { describeDevice, foldName, isSlug, proposeSlug } from "../../../src/content/study/slug.ts";

test.each(["a", "7", "ferry", "ferry-wheel", "a-1-b"])("%s is a slug", (name) =>
  expect(isSlug(name)).toBe(true),
);

test.each(["", "-", "a-", "-a", "a--b", "A", "a b", "a_b", "a.b", "é", "..", "a/b", "a\n"])(
  "%j is no slug",
  (name) => expect(isSlug(name)).toBe(false),
);

test("a name that leaves no room for the names of its files is no slug, and what is proposed is one", () => {
  expect(isSlug("a".repeat(100))).toBe(true);
  expect(isSlug("a".repeat(101))).toBe(false);
  expect(isSlug(proposeSlug("wheel ".repeat(40)) ?? "")).toBe(true);
});

test.each([
  ["Café du Port", "cafe-du-port"],
  ["cafe\u0301", "cafe"],
  ["a b 🏴 #%23?", "a-b-23"],
  ["--Ferry__Wheel--", "ferry-wheel"],
  ["ﬁn", "fin"],
  ["旗", undefined],
])("%j becomes %j", (name, slug) => {
  expect(proposeSlug(name)).toBe(slug);
});

// Source: Microsoft, "Naming Files, Paths, and Namespaces": "CON, PRN, AUX, NUL, COM1 … COM9, LPT1 … LPT9", and "these names
// followed immediately by an extension".
test.each(["con", "prn", "aux", "nul", "com1", "com9", "lpt1", "lpt9", "AUX", "nul.svg", "com1.tar.gz"])(
  "%s is kept for a device, and what is proposed is not",
  (name) => {
    const hint = describeDevice(name)?.hint.replace("Rename it, for example: ", "") ?? name;
    expect(hint).toMatch(/^\w+-flag(?:\.|$)/);
    expect(describeDevice(hint)).toBeUndefined();
    expect(describeDevice(proposeSlug(name) ?? name)).toBeUndefined();
  },
);

test.each(["console", "con-flag", "com", "com10", "lpt", "a.con", "auxiliary.svg", ""])(
  "%j is kept for no device",
  (name) => expect(describeDevice(name)).toBeUndefined(),
);

test("what is proposed is a slug, and a slug stays as it is", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), (name) => {
      const slug = proposeSlug(name);
      expect(slug === undefined || (isSlug(slug) && proposeSlug(slug) === slug)).toBe(true);
    }),
  );
});

test("names that some file systems take for one fold to the same text", () => {
  expect(foldName("Flag")).toBe(foldName("fLAG"));
  expect(foldName("cafe\u0301")).toBe(foldName("CAF\u00c9"));
  expect(foldName("stra\u00dfe")).toBe(foldName("STRASSE"));
  expect(foldName("a")).not.toBe(foldName("b"));
});
