import fc from "fast-check";
import { expect, test } from "vitest";
import { isAddress, readAddressLine } from "../../../src/content/folder/addressline.ts";

test("an address alone, with its lead, and with why it was withdrawn", () => {
  const address = "/studies/old/edges/1b2a5c-7a1020s-2/";
  expect(readAddressLine(address)).toEqual({ address, note: {} });
  expect(readAddressLine(`  ${address}\t->  /studies/new/ `)).toEqual({
    address,
    note: { to: "/studies/new/" },
  });
  expect(readAddressLine(`${address} withdrawn 2026-05-02, by its author`)).toEqual({
    address,
    note: { withdrawn: "2026-05-02, by its author" },
  });
  expect(readAddressLine(`${address} withdrawn`)).toEqual({ address, note: { withdrawn: "" } });
  for (const line of ["", "  ", "# kept"]) expect(readAddressLine(line)).toBeUndefined();
});

test.each([
  ["", "//flags.example/"],
  ["", "https://flags.example/"],
  ["", "/studies/../index/"],
  ["", "/studies/a_b/"],
  ["", "/studies/%2e%2e/"],
  ["", "javascript:alert(1)"],
  ["", "/studies/Ferry/"],
  ["", "/studies/ferry"],
  ["", "/studies/aux/"],
  ["", "/<script>/"],
  ["", `/${"a".repeat(201)}/`],
  ["", `/${"abc/".repeat(200)}`],
  ["/a/ -> ", "//flags.example/"],
  ["/a/ -> ", "https://flags.example/"],
  ["/a/ -> ", "/b/ /c/"],
  ["/a/ -> ", "/a/"],
  ["/a/ ", "="],
])("%s%s is told, at its place", (before, part) => {
  const read = readAddressLine(`${before}${part}`);
  expect(read).toMatchObject({ part, at: before.length });
});

test("a lead that is cut off, and words that nobody sees or that are too many", () => {
  expect(readAddressLine("/a/ ->")).toMatchObject({ part: "->", at: 4 });
  for (const words of ["a\u202eb", "a\u0007b", "x".repeat(301)])
    expect(readAddressLine(`/a/ withdrawn ${words}`)).toMatchObject({ part: "withdrawn", at: 4 });
  expect(readAddressLine(`/a/ withdrawn ${"x".repeat(300)}`)).toMatchObject({ address: "/a/" });
});

test("the last slash is put behind, with the rest of the line", () => {
  expect(readAddressLine("/a -> /b/")).toMatchObject({ hint: "Type: /a/ -> /b/" });
});

test("whatever is an address stays inside the site", () => {
  const sign = fc.constantFrom("/", ".", "..", "a", "-", "%", "\\", ":", "?", "#", "@", " ", "é", "<", "0");
  fc.assert(
    fc.property(fc.array(sign, { maxLength: 12 }), (signs) => {
      const text = `/${signs.join("")}`;
      if (!isAddress(text)) return;
      const url = new URL(text, "https://flags.example/");
      expect([url.origin, url.pathname]).toEqual(["https://flags.example", text]);
    }),
    { numRuns: 2000 },
  );
});
