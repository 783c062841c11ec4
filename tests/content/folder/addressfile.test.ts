import { symlink } from "node:fs/promises";
import { join } from "node:path";
import fc from "fast-check";
import { expect, test } from "vitest";
import {
  type AddressNotes,
  addAddresses,
  addressBytes,
  addressFile,
  loadAddresses,
} from "../../../src/content/folder/addressfile.ts";
import { makeFolder } from "../folder.ts";

const sourceOf = (text: string) => ({ file: addressFile, text, lines: text === "" ? [] : text.split("\n") });
const plain = (...addresses: readonly string[]): AddressNotes =>
  new Map(addresses.map((address) => [address, {}]));
const load = async (text: string) => loadAddresses(await makeFolder({ [addressFile]: text }), "content");

test("there is no list, and one that is a link is not followed", async () => {
  const root = await makeFolder({ "elsewhere.txt": "/a/\n" });
  expect(await loadAddresses(root, "content")).toEqual({ value: undefined, problems: [] });
  await symlink(join(root, "elsewhere.txt"), join(root, addressFile));
  const { value, problems } = await loadAddresses(root, "content");
  expect([value, problems.map(({ file, rule }) => [file, rule])]).toEqual([
    undefined,
    [[`content/${addressFile}`, "study/link"]],
  ]);
});

test("a line that is wrong costs no other, and is told with its place", async () => {
  const { value, problems } = await load("# ours\r\n/b/\r\n/a/ -> nowhere\r\n\r\n/a/ withdrawn so");
  expect([...(value ?? [])]).toEqual([
    ["/b/", {}],
    ["/a/", { withdrawn: "so" }],
  ]);
  expect(problems).toMatchObject([
    { rule: "address/line", severity: "error", place: { line: 3, column: 8, length: 7 } },
  ]);
});

test("the first of two leads counts, and the second is told; what is too large or no text is not read", async () => {
  const { value, problems } = await load("/a/\n/a/ -> /b/\n/a/ -> /b/\n/a/ -> /c/\n");
  expect(value?.get("/a/")).toEqual({ to: "/b/" });
  expect(problems).toMatchObject([
    { rule: "address/two-leads", severity: "warning", place: { line: 4, column: 8 } },
  ]);
  expect((await load("x".repeat(addressBytes + 1))).problems.map(({ rule }) => rule)).toEqual([
    "address/file-size",
  ]);
  const root = await makeFolder({ [addressFile]: new Uint8Array([0xff]) });
  expect((await loadAddresses(root, "content")).problems.map(({ rule }) => rule)).toEqual(["study/encoding"]);
});

test("a new list says what it is", () => {
  const lines = addAddresses(
    sourceOf(""),
    new Map([
      ["/b/", { to: "/a/" }],
      ["/a/", {}],
    ]),
  ).split("\n");
  expect(lines.slice(2)).toEqual(["/a/", "/b/ -> /a/", ""]);
  expect(lines[0]).toMatch(/^# /);
});

test("what is there stays, remarks and mistakes too; an address alone gets its lead, one with words does not", () => {
  const text = "# ours\n/a/\nwhat?\n/c/\n\n/d/ withdrawn\n/f/\n";
  const more = new Map([
    ["/d/", { to: "/z/" }],
    ["/c/", { to: "/y/" }],
    ["/b/", {}],
    ["/a/", {}],
    ["/e/", {}],
    ["/f/", { withdrawn: "" }],
  ]);
  expect(addAddresses(sourceOf(text), more)).toBe(
    "# ours\n/a/\nwhat?\n/b/\n/c/ -> /y/\n\n/d/ withdrawn\n/e/\n/f/ withdrawn\n",
  );
});

test("adding what is known changes no byte, and no address that was never one is taken in", () => {
  const text = addAddresses(sourceOf(""), plain("/", "/b/", "/a/"));
  expect(addAddresses(sourceOf(text), plain("/a/", "/b/", "/", "/A/", "//x/"))).toBe(text);
});

test("the lines of two branches, in any order and twice, say what both said", async () => {
  const address = fc.constantFrom("/", "/a/", "/b/", "/c/", "/studies/x/");
  await fc.assert(
    fc.asyncProperty(
      fc.array(address),
      fc.array(address),
      fc.array(address),
      async (before, mine, theirs) => {
        const base = addAddresses(sourceOf(""), plain(...before));
        const [one, two] = [mine, theirs].map((more) => addAddresses(sourceOf(base), plain(...more)));
        const { value, problems } = await load(`${one}${two}`);
        expect([[...(value ?? new Map()).keys()].sort(), problems]).toEqual([
          [...new Set([...before, ...mine, ...theirs])].sort(),
          [],
        ]);
      },
    ),
    { numRuns: 20 },
  );
});
