import { expect, test } from "vitest";
import { presentRivals } from "../../../src/views/flag/rivalspage.ts";
import { createFormat } from "../../../src/words/format.ts";
import { survey } from "../../publish/surveyed.ts";
import { rivalResult } from "./rivals.ts";

const format = createFormat("en");
const named = (count: number) => rivalResult(Array.from({ length: count }, (_, at) => ({ slug: `s${at}` })));

test("the original first, then each redesign with its change and the way to its study", () => {
  const [page] = presentRivals(named(2), format);
  expect(
    page?.plates.map(({ plate, caption, clarity, address }) => [plate.label, caption, clarity, address]),
  ).toEqual([
    ["Original", "Weakest edge 25%", "74%", undefined],
    ["Proposal 1", "Red becomes yellow.", "100%", "../../studies/s0/"],
    ["Proposal 2", "Red becomes yellow.", "100%", "../../studies/s1/"],
  ]);
  expect(page?.plates[0]?.plate.src).toBe("../../studies/s0/original.svg");
});

test("each with the first sentence of its argument, its marks and the share that it changes", () => {
  const [page] = presentRivals(named(2), format);
  expect(
    page?.proposals.map(({ number, argument, share, focusClarity }) => [
      number,
      argument,
      share,
      focusClarity,
    ]),
  ).toEqual([
    ["1", "First words.", "17%", undefined],
    ["2", "First words.", "17%", undefined],
  ]);
});

test("one ruler of all: a line for each of them under every edge that moves", () => {
  const [page] = presentRivals(named(2), format);
  expect(page?.ruler?.rows.map(({ edge }) => edge.called)).toEqual([
    expect.stringMatching(/^1 /),
    expect.stringMatching(/^2 /),
  ]);
  expect(page?.ruler?.rows.map(({ group }) => group)).toEqual(["dark blue / red", undefined]);
});

test("each two of them have a page, where they are not all there are and not too many", () => {
  expect(presentRivals(named(2), format).map(({ folder }) => folder)).toEqual(["flags/the-flag-of-s0"]);
  const [all, ...pairs] = presentRivals(named(3), format);
  expect(all?.pairs.map(({ text, address }) => [text, address])).toEqual([
    ["1 and 2", "s0/s1/"],
    [", ", undefined],
    ["1 and 3", "s0/s2/"],
    [", ", undefined],
    ["2 and 3", "s1/s2/"],
  ]);
  expect(pairs.map(({ folder }) => folder)).toEqual(
    all?.pairs.flatMap(({ address }) =>
      address === undefined ? [] : `${all.folder}/${address.slice(0, -1)}`,
    ),
  );
  expect(pairs[1]?.plates.map(({ plate }) => plate.label)).toEqual(["Proposal 1", "Proposal 3"]);
  expect(pairs[1]?.all).toBe("../../");
  expect(presentRivals(named(6), format)).toHaveLength(16);
  expect(presentRivals(named(7), format)).toHaveLength(1);
});

test("who named a flag stands on its page, where it has no study too", () => {
  const nominations = [
    { flag: "flags/harbour-pilots.svg", by: "Marit Osseny", reason: "It is gone at dusk." },
  ];
  const [page, ...others] = presentRivals({ ...named(1), survey, nominations }, format);
  expect(others).toEqual([]);
  expect(page).toMatchObject({
    folder: "flags/harbour-pilots",
    count: "No study of it yet",
    nominated: ["Marit Osseny: It is gone at dusk."],
    survey: "../../survey/#flag-flags-harbour-pilots",
    proposals: [],
    ruler: undefined,
  });
  expect(page?.frame.share?.picture?.alt).toMatch(/^A sheet of flags\./);
  expect(page?.plates.map(({ plate }) => plate.src)).toEqual(["../../survey/flags/harbour-pilots.svg"]);
});
