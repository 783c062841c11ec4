import { expect, test } from "vitest";
import { linkFrom } from "../../../src/views/address.ts";
import {
  formatFlagPath,
  indexRivals,
  listRivals,
  presentRivalPlace,
  sayNominated,
} from "../../../src/views/flag/findrivals.ts";
import { createFormat } from "../../../src/words/format.ts";
import { studyResult } from "../../publish/sample.ts";
import { survey } from "../../publish/surveyed.ts";
import { rivalResult, studiesNamed } from "./rivals.ts";

const format = createFormat("en");

test("the oldest study comes first, and names the flag where each has another name; undated ones come last", () => {
  const [flag, ...others] = listRivals(
    rivalResult(
      [["b", "2026-05-01"], ["undated"], ["a", "2026-06-01"]].map(([slug = "", date]) => ({ slug, date })),
    ),
  );
  expect(others).toEqual([]);
  expect(flag?.slug).toBe("the-flag-of-b");
  expect(flag?.studies.map(({ study }) => study.slug)).toEqual(["b", "a", "undated"]);
});

test("a flag with one study has no rivals, nor has a gallery without a survey", () => {
  expect(listRivals(rivalResult([{ slug: "b" }]))).toEqual([]);
  expect(listRivals({ studies: studiesNamed([{ slug: "a" }, { slug: "b" }]) })).toEqual([]);
});

test("a flag that readers name has a page, with or without a study, and no rivals for that", () => {
  const nominations = [
    { flag: "flags/harbour-pilots.svg", by: "Marit Osseny", reason: "It is gone at dusk." },
    { flag: "flags/harbour-pilots.svg", reason: "Too many stripes." },
    { flag: survey.entries[0]?.flag.file ?? "", reason: "Red on blue." },
  ];
  const flags = listRivals({ studies: [studyResult], survey, nominations });
  expect(flags.map((flag) => [flag.slug, flag.studies.length, sayNominated(flag, format)])).toEqual([
    ["harbour-pilots", 0, ["Marit Osseny: It is gone at dusk.", "Too many stripes."]],
    ["the-square", 1, ["Red on blue."]],
  ]);
  const index = indexRivals(flags);
  expect(presentRivalPlace(index.get("a-square"), linkFrom("/studies/a-square/"), format)).toBeUndefined();
});

test("two flags of one name have two addresses", () => {
  const one = rivalResult([{ slug: "a", flag: "The gull" }, { slug: "b" }]);
  const other = rivalResult([{ slug: "c", flag: "The gull" }, { slug: "d" }]);
  const both = {
    studies: [...one.studies, ...other.studies],
    survey: { entries: [...(other.survey?.entries ?? []), ...(one.survey?.entries ?? [])], failed: [] },
  };
  expect(listRivals(both).map(({ slug }) => slug)).toEqual(["the-gull", "the-gull-c"]);
});

test("a newcomer with an old date takes neither the name nor the address of a flag", () => {
  const honest = [
    { slug: "a", date: "2026-05-01", flag: "The gull" },
    { slug: "b", date: "2026-06-01", flag: "the Gull" },
  ];
  const backdated = { slug: "m", date: "1850-01-01", flag: "Stolen" };
  expect(listRivals(rivalResult([...honest, backdated]))).toMatchObject([
    { slug: "the-gull", name: "The gull" },
  ]);
  // Three against two: what was published before counts.
  const gang = [backdated, { ...backdated, slug: "n" }, { ...backdated, slug: "o" }];
  const addresses = new Map([
    ["/flags/the-gull/", {}],
    ["/studies/a/", {}],
    ["/studies/b/", {}],
  ]);
  expect(listRivals({ ...rivalResult([...honest, ...gang]), addresses })).toMatchObject([
    { slug: "the-gull" },
  ]);
  // Another flag of that name does not have its address either.
  const own = rivalResult(honest);
  const other = rivalResult(gang.map((one) => ({ ...one, flag: "The gull" })));
  const both = {
    addresses,
    studies: [...own.studies, ...other.studies],
    survey: { entries: [...(other.survey?.entries ?? []), ...(own.survey?.entries ?? [])], failed: [] },
  };
  const flags = listRivals(both).map(({ slug, studies }) => [slug, studies.length]);
  expect(flags).toEqual([
    ["the-gull", 2],
    ["the-gull-m", 3],
  ]);
});

test("a flag that readers named first keeps its address when studies name it", () => {
  const result = rivalResult([
    { slug: "a", flag: "Three weirs" },
    { slug: "b", flag: "Three weirs" },
  ]);
  const entries = (result.survey?.entries ?? []).map((entry) => ({
    ...entry,
    flag: { ...entry.flag, file: "flags/weirs.svg" },
  }));
  const list = (addresses: ReadonlyMap<string, object>) =>
    listRivals({ ...result, survey: { entries, failed: [] }, addresses }).map(({ slug, name }) => [
      slug,
      name,
    ]);
  expect(list(new Map())).toEqual([["three-weirs", "Three weirs"]]);
  expect(list(new Map([["/flags/weirs/", {}]]))).toEqual([["weirs", "Three weirs"]]);
});

test("each study says how many there are, and leads to them", () => {
  const index = indexRivals(listRivals(rivalResult([{ slug: "a" }, { slug: "b" }])));
  const link = linkFrom("/studies/a/");
  expect(presentRivalPlace(index.get("a"), link, format)).toEqual({
    text: "one of two proposals for it",
    address: "../../flags/the-flag-of-a/",
  });
  expect(presentRivalPlace(index.get("c"), link, format)).toBeUndefined();
});

test("no slug leads out of the folder", () => {
  expect(formatFlagPath("the-gull")).toBe("/flags/the-gull/");
  expect(() => formatFlagPath("../gull")).toThrow(RangeError);
});
