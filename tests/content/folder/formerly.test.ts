import { expect, test } from "vitest";
import type { AddressNote } from "../../../src/content/folder/addressline.ts";
import {
  checkFormerly,
  findClashes,
  findUnfollowed,
  listContested,
  listFormer,
} from "../../../src/content/folder/formerly.ts";
import { loadGallery } from "../../../src/content/folder/loadgallery.ts";
import { formatProblems } from "../../../src/problem/problemtext.ts";
import { parseText, printStudy, writeStudy } from "../../analysis/fixture.ts";
import { drawing, makeFolder, settings } from "../folder.ts";

test("addresses that a study had", () => {
  expect(printStudy("formerly: [ferry-wheel, old-ferry]")).toBe("");
  expect(parseText(writeStudy("formerly: [ferry-wheel]")).value?.formerly).toEqual(["ferry-wheel"]);
});

test.each<[string, string]>([
  [
    "formerly: [Ferry Wheel]",
    `\
ferry/study.md:5:12  error  “Ferry Wheel” was never the address of a study: small letters, digits and single hyphens only, 100 at most.  study/formerly-slug
    formerly: [Ferry Wheel]
               ^^^^^^^^^^^
    Type the name that the folder had: formerly: [ferry-wheel]`,
  ],
  [
    "formerly: [/studies/old/]",
    `\
ferry/study.md:5:12  error  “/studies/old/” was never the address of a study: small letters, digits and single hyphens only, 100 at most.  study/formerly-slug
    formerly: [/studies/old/]
               ^^^^^^^^^^^^^
    Type the name that the folder had: formerly: [old]`,
  ],
  [
    "formerly: [old, old]",
    `\
ferry/study.md:5:17  warning  “old” stands in “formerly” a second time.  study/formerly-twice
    formerly: [old, old]
                    ^^^
    Delete one.`,
  ],
])("%s", (line, report) => {
  expect(printStudy(line)).toBe(report);
});

test("what the schema reports is left to it", () => {
  expect(checkFormerly("old")).toEqual([]);
  expect(checkFormerly([7, "", null])).toEqual([]);
  expect(checkFormerly(undefined)).toEqual([]);
});

const study = (slug: string, formerly: string) => ({
  [`studies/${slug}/study.md`]: writeStudy(`formerly: ${formerly}`),
  [`studies/${slug}/original.svg`]: drawing,
});

test("an address in use, its own or another's; and one that two claim", async () => {
  const root = await makeFolder({
    "gallery.yaml": settings,
    ...study("a", "[a]"),
    ...study("b", "[c]"),
    ...study("c", "[old, older]"),
    ...study("d", "[old]"),
  });
  const { studies, problems } = await loadGallery(root);
  // No claim costs a study its page, neither the one that makes it nor another.
  expect(studies.map(({ slug }) => slug)).toEqual(["a", "b", "c", "d"]);
  expect(formatProblems(problems).replaceAll(`${root}/studies/`, "")).toBe(`\
a/study.md:5:12  warning  “a” is the study's address today.  study/formerly-taken
    formerly: [a]
               ^
    Delete it from “formerly”.

b/study.md:5:12  warning  “c” is the address of another study today, so it cannot lead here.  study/formerly-taken
    formerly: [c]
               ^
    Delete it from “formerly”, or rename the folder studies/c.

c/study.md:5:12  warning  “old” is claimed by “d” too, so nothing leads from it.  study/formerly-claimed
    formerly: [old, older]
               ^^^
    Leave it in the study that had this address, and delete it from the other.

d/study.md:5:12  warning  “old” is claimed by “c” too, so nothing leads from it.  study/formerly-claimed
    formerly: [old]
               ^^^
    Leave it in the study that had this address, and delete it from the other.`);
  expect(listFormer(studies)).toEqual([{ from: "older", to: "c" }]);
});

test("a folder that is no good study has its address all the same", async () => {
  const root = await makeFolder({ "gallery.yaml": settings, ...study("a", "[b]"), "studies/b/study.md": "" });
  const { studies, problems } = await loadGallery(root);
  expect(studies.map(({ slug }) => slug)).toEqual(["a"]);
  expect(listFormer(studies)).toEqual([]);
  expect(problems.map(({ rule }) => rule)).toContain("study/formerly-taken");
});

test("where addresses lead", () => {
  expect(listFormer([])).toEqual([]);
  expect(
    listFormer([
      { slug: "b", formerly: ["z", "y", "z"] },
      { slug: "a", formerly: ["b", "x"] },
      { slug: "c", formerly: ["x"] },
      { slug: "d" },
    ]),
  ).toEqual([
    { from: "y", to: "b" },
    { from: "z", to: "b" },
  ]);
});

test("with a list of addresses, an old one stays with the study that had it, whoever claims it", () => {
  const studies = [
    { slug: "renamed", formerly: ["ferry"] },
    { slug: "stranger", formerly: ["ferry"] },
  ];
  const lead = [{ from: "ferry", to: "renamed" }];
  const listed = (...lines: readonly (readonly [string, AddressNote])[]) =>
    new Map([["/studies/stranger/", {}], ["/studies/ferry/", {}], ...lines]);
  // The stranger was there beside it: it cannot have been the same study.
  expect(listFormer(studies, listed())).toEqual(lead);
  // Nor has it been both, if it was renamed itself since.
  const moved = { slug: "moved", formerly: ["stranger", "ferry"] };
  expect(listFormer([moved], listed())).toEqual([]);
  expect(listFormer([{ ...moved, formerly: ["stranger"] }], listed())).toEqual([
    { from: "stranger", to: "moved" },
  ]);
  // It led to one once.
  const led = listed(["/studies/ferry/", { to: "/studies/renamed/" }], ["/studies/renamed/", {}]);
  expect(listFormer(studies, led)).toEqual(lead);
  expect(listFormer(studies.slice(1), led)).toEqual([]);
  // The one that it led to was renamed as well.
  const twice = listed(
    ["/studies/ferry/", { to: "/studies/wheel/" }],
    ["/studies/wheel/", { to: "/studies/renamed/" }],
    ["/studies/renamed/", { to: "/studies/ferry/" }],
  );
  expect(listFormer(studies, twice)).toEqual(lead);
  expect(listFormer(studies, listed(["/studies/ferry/", { withdrawn: "" }]))).toEqual([]);
  // Nobody can know which of two new ones it was; of an address that was never published there is nothing to know.
  const alone = new Map([["/studies/ferry/", {}]]);
  expect(listFormer(studies, alone)).toEqual([]);
  expect([...listContested(studies, alone)]).toEqual([["ferry", ["renamed", "stranger"]]]);
  expect([...listContested(studies, listed())]).toEqual([]);
  expect(listFormer(studies.slice(0, 1), new Map())).toEqual(lead);
});

test("an address that was never published cannot be claimed before somebody has it", () => {
  const claim = [{ slug: "stranger", formerly: ["anna"] }];
  const listed = new Map([["/studies/ferry/", {}]]);
  expect(listFormer(claim, listed)).toEqual([]);
  expect([...listContested([...claim, { slug: "other", formerly: ["anna"] }], listed)]).toEqual([]);
});

test("a claim that the list does not bear out is told, and the right one is not", async () => {
  const root = await makeFolder({
    "gallery.yaml": settings,
    ...study("renamed", "[old]"),
    ...study("stranger", "[old]"),
    "addresses.txt": "/studies/old/\n/studies/stranger/\n",
  });
  const { studies, addresses, problems } = await loadGallery(root);
  expect(listFormer(studies, addresses)).toEqual([{ from: "old", to: "renamed" }]);
  expect(formatProblems(problems).replaceAll(`${root}/studies/`, "")).toBe(`\
stranger/study.md:5:12  warning  Of “old” addresses.txt does not bear out that this study had it, so it does not lead here.  study/formerly-claimed
    formerly: [old]
               ^^^
    Delete it from “formerly”; or, if it is to lead here, type in addresses.txt: /studies/old/ -> /studies/stranger/`);
});

test("no studies, no clashes", () => {
  expect(findClashes([], ["a"])).toEqual([]);
});

test("a study follows another one, and not itself", () => {
  const { value: study } = parseText(writeStudy("follows: ferry-whel"));
  if (study === undefined) throw new Error("a right study");
  const tell = (follows: string) =>
    findUnfollowed([{ ...study, follows }], [study.slug, "ferry-wheel"]).map(
      ({ rule, severity, place, hint }) => [`${severity} ${rule} ${place?.line}`, hint],
    );
  expect(tell("ferry-wheel")).toEqual([]);
  expect(tell("ferry-whel")).toEqual([["warning study/follows 5", "Type: follows: ferry-wheel"]]);
  expect(tell(study.slug)[0]?.[0]).toBe("warning study/follows 5");
});
