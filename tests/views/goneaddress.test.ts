import { expect, test } from "vitest";
import type { AddressNote } from "../../src/content/folder/addressline.ts";
import { findGone } from "../../src/views/goneaddress.ts";

interface Case {
  readonly listed: Readonly<Record<string, AddressNote>>;
  readonly live: readonly string[];
  readonly leads?: Readonly<Record<string, string>>;
  readonly flags?: Readonly<Record<string, string>>;
  readonly folders?: readonly string[];
  readonly contested?: Readonly<Record<string, readonly string[]>>;
}

/** Each address that has gone, with what became of it and where it leads. */
const find = ({ listed, live, leads = {}, flags = {}, folders = [], contested = {} }: Case) =>
  findGone({
    notes: new Map(Object.entries(listed)),
    live: new Set(["/", ...live]),
    leads: new Map(Object.entries(leads)),
    flags: new Map(Object.entries(flags)),
    folders: new Set(folders),
    contested: new Map(Object.entries(contested)),
  }).map(({ address, fate, to = "", orTo = [] }) => [address, fate, [to, ...orTo].join(" ")]);

test("what is live needs nothing", () => {
  expect(find({ listed: { "/studies/a/": { to: "/studies/b/" } }, live: ["/studies/a/"] })).toEqual([]);
});

test("a study that was renamed, with all below it; what the new one lacks leads to what is nearest", () => {
  const listed = {
    "/studies/old/": {},
    "/studies/old/changes/": {},
    "/studies/old/sheet/": {},
    "/studies/old/edges/000000-ffffff/": {},
    "/studies/old/edges/000000-fe0000/": {},
  };
  const live = [
    "/studies/new/",
    "/studies/new/sheet/",
    "/studies/new/edges/000000-ffffff/",
    "/studies/new/edges/000000-f00000/",
  ];
  const leads = { "/studies/old/": "/studies/new/" };
  const found = find({ listed, live, leads });
  // A page that only leads on is no place to be led to.
  expect(
    find({ listed, live: [...live, "/studies/old/", "/studies/old/edges/000000-f00000/"], leads }),
  ).toEqual(found.slice(1));
  expect(found).toEqual([
    ["/studies/old/", "moved", "/studies/new/"],
    ["/studies/old/changes/", "near", "/studies/new/"],
    ["/studies/old/edges/000000-fe0000/", "edge", "/studies/new/edges/000000-f00000/"],
    ["/studies/old/edges/000000-ffffff/", "moved", "/studies/new/edges/000000-ffffff/"],
    ["/studies/old/sheet/", "moved", "/studies/new/sheet/"],
  ]);
});

// By hand: of two reds on black the one that differs by two steps of 255 is nearer than one that is a third darker, whichever
// of the two colours stands first; a white edge is nearer to a white one than to either.
test("the nearest edge is the one whose two colours differ least, in either order", () => {
  const live = [
    "/studies/a/",
    ...["0000aa-ffffff", "000000-c00000", "000000-fd0000s-2"].map((key) => `/studies/a/edges/${key}/`),
  ];
  const to = (key: string) => find({ listed: { [`/studies/a/edges/${key}/`]: {} }, live })[0]?.slice(1);
  expect(to("000000-ff0000")).toEqual(["edge", "/studies/a/edges/000000-fd0000s-2/"]);
  expect(to("000000s-bf0000")).toEqual(["edge", "/studies/a/edges/000000-c00000/"]);
  expect(to("fffff0-0000a0")).toEqual(["edge", "/studies/a/edges/0000aa-ffffff/"]);
  // No edge at all: the study.
  expect(find({ listed: { "/studies/b/edges/000000-ff0000/": {} }, live: ["/studies/b/"] })).toEqual([
    ["/studies/b/edges/000000-ff0000/", "near", "/studies/b/"],
  ]);
});

test("what nothing took the place of was withdrawn, or is not shown now", () => {
  const listed = {
    "/studies/a/": { withdrawn: "2026-05-02" },
    "/studies/a/show/": {},
    "/studies/b/show/": {},
    "/series/c/": {},
    "/series/c/vote/": {},
  };
  expect(find({ listed, live: [], folders: ["b"] })).toEqual([
    ["/series/c/", "withdrawn", ""],
    ["/series/c/vote/", "withdrawn", ""],
    ["/studies/a/", "withdrawn", ""],
    ["/studies/a/show/", "withdrawn", ""],
    ["/studies/b/show/", "absent", ""],
  ]);
  const notes = new Map<string, AddressNote>(Object.entries(listed));
  const found = findGone({
    notes,
    live: new Set(),
    leads: new Map(),
    flags: new Map(),
    folders: new Set(),
    contested: new Map(),
  });
  expect(found.map(({ address, why }) => [address, why])).toContainEqual(["/studies/a/show/", "2026-05-02"]);
  // The old address of a study that cannot be shown now.
  const led = {
    listed: { "/studies/old/": {} },
    live: [],
    leads: { "/studies/old/": "/studies/b/" },
    folders: ["b"],
  };
  expect(find(led)).toEqual([["/studies/old/", "absent", ""]]);
});

test("lists lead to the list above them, or to the front", () => {
  const listed = { "/tags/x/": {}, "/authors/x/page/2/": {}, "/list/page/2/": {}, "/decisions/": {} };
  expect(find({ listed, live: ["/tags/", "/authors/x/"] })).toEqual([
    ["/authors/x/page/2/", "near", "/authors/x/"],
    ["/decisions/", "near", "/"],
    ["/list/page/2/", "near", "/"],
    ["/tags/x/", "near", "/tags/"],
  ]);
});

test("a flag whose name changed leads to its rivals, or to its study where there are none any more", () => {
  const listed = { "/flags/old/": { to: "/studies/a/" }, "/flags/old/a/b/": {} };
  const live = ["/studies/a/", "/flags/new/"];
  expect(find({ listed, live, flags: { "/studies/a/": "/flags/new/" } })).toEqual([
    ["/flags/old/", "moved", "/flags/new/"],
    ["/flags/old/a/b/", "near", "/flags/new/"],
  ]);
  expect(find({ listed, live })[0]).toEqual(["/flags/old/", "moved", "/studies/a/"]);
});

test("leads in a circle, to nowhere, and one behind the other", () => {
  const listed = {
    "/studies/a/": { to: "/studies/b/" },
    "/studies/b/": { to: "/studies/a/" },
    "/studies/c/": { to: "/studies/never/" },
    "/studies/d/": { to: "/studies/e/" },
    "/studies/e/": { to: "/studies/f/" },
    "/studies/d/show/": {},
  };
  expect(find({ listed, live: ["/studies/f/", "/studies/f/show/"] })).toEqual([
    ["/studies/a/", "withdrawn", ""],
    ["/studies/b/", "withdrawn", ""],
    ["/studies/c/", "withdrawn", ""],
    ["/studies/d/", "moved", "/studies/f/"],
    ["/studies/d/show/", "moved", "/studies/f/show/"],
    ["/studies/e/", "moved", "/studies/f/"],
  ]);
});

test("an address that several studies claim leads to each of them that is shown, with all below it", () => {
  const listed = { "/studies/old/": {}, "/studies/old/edges/000000-ffffff/": {} };
  const contested = { old: ["renamed", "stranger", "draft"] };
  const live = ["/studies/renamed/", "/studies/stranger/"];
  const both = "/studies/renamed/ /studies/stranger/";
  expect(find({ listed, live, contested })).toEqual([
    ["/studies/old/", "claimedHidden", both],
    ["/studies/old/edges/000000-ffffff/", "claimedHidden", both],
  ]);
  const shown = { old: ["renamed", "stranger"] };
  expect(find({ listed, live, contested: shown }).map(([, fate]) => fate)).toEqual(["claimed", "claimed"]);
  expect(find({ listed, live: [], contested }).map(([, fate]) => fate)).toEqual(["withdrawn", "withdrawn"]);
});
