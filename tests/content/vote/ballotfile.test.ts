import { expect, test } from "vitest";
import { type Poll, parseBallots } from "../../../src/content/vote/ballotfile.ts";

const ids = ["70ccec313571810a", "7961fd925d39d0a8", "5c9bcf35873be078"] as const;
const head = "ballot,series,study,choice,why\n";
const open = (): Poll => ({
  slug: "quay",
  studies: ["ferry", "wheel"],
  met: new Map(),
  contradicted: new Set(),
});
const parse = (text: string, poll = open()) => {
  const { value, problems } = parseBallots("votes/quay/a.csv", new TextEncoder().encode(text), poll);
  return { value, told: problems.map(({ rule, place }) => [rule, place?.line, place?.column]) };
};
const row = (id: string, study = "ferry", choice = "redesign") => `${id},quay,${study},${choice},\n`;

test("the rows of one id are one ballot; one that is bad costs no other", () => {
  const text = `\ufeff${head}${row(ids[0])}${row(ids[0], "wheel", "neither")}${row(ids[1])}${row(ids[1], "fery")}${row(ids[2])}x\n`;
  expect(parse(text.replaceAll("\n", "\r\n"))).toEqual({
    value: [
      {
        id: ids[0],
        votes: [
          { study: "ferry", choice: "redesign" },
          { study: "wheel", choice: "neither" },
        ],
      },
      { id: ids[2], votes: [{ study: "ferry", choice: "redesign" }] },
    ],
    told: [
      ["vote/row", 7, 1],
      ["vote/unknown-study", 5, 23],
    ],
  });
});

test("of what stands twice the first counts, in one file and in the next", () => {
  const poll = open();
  const first = parse(`${head}${row(ids[0])}${row(ids[0])}`, poll);
  expect(first.value).toEqual([{ id: ids[0], votes: [{ study: "ferry", choice: "redesign" }] }]);
  expect(first.told).toEqual([["vote/ballot-twice", 3, 1]]);
  const next = parse(
    `ballot ${ids[0]} quay ferry=redesign wheel=original\nballot ${ids[1]} quay wheel=neither\n`,
    poll,
  );
  expect(next.value).toEqual([{ id: ids[1], votes: [{ study: "wheel", choice: "neither" }] }]);
  expect(next.told).toEqual([["vote/ballot-twice", 1, 8]]);
  expect([...poll.contradicted]).toEqual([]);
});

test("a ballot that is contradicted, in its file or in another, is told as an error", () => {
  const poll = open();
  const first = parse(`${head}${row(ids[0])}${row(ids[0], "ferry", "original")}${row(ids[1])}`, poll);
  expect(first.told).toEqual([["vote/ballot-contradicted", 3, 1]]);
  const next = parse(`ballot ${ids[1]} quay ferry=original\n`, poll);
  expect([next.value, next.told]).toEqual([[], [["vote/ballot-contradicted", 1, 8]]]);
  expect([...poll.contradicted]).toEqual([ids[0], ids[1]]);
});

test.each([
  ["", "vote/no-ballots"],
  ["study,choice\n", "vote/no-ballots"],
  [`\u0089PNG\u0000`, "vote/no-ballots"],
])("%j holds no ballots", (text, rule) => {
  expect(parse(text)).toMatchObject({ value: [], told: [[rule, 1, 1]] });
});

test("of a mail every ballot counts, and the other lines are told once", () => {
  const text = `Dear Ines,\n\n> ballot ${ids[0]} quay ferry=redesign\n>  > ballot ${ids[1]} quay fery=redesign\n  ballot ${ids[2]} quay wheel=neither\n-- \nOtto\n`;
  expect(parse(text)).toEqual({
    value: [
      { id: ids[0], votes: [{ study: "ferry", choice: "redesign" }] },
      { id: ids[2], votes: [{ study: "wheel", choice: "neither" }] },
    ],
    told: [
      ["vote/other-lines", 1, 1],
      ["vote/unknown-study", 4, (text.split("\n")[3] ?? "").indexOf("fery=") + 1],
    ],
  });
});

test("what a mail program broke off a ballot is told", () => {
  expect(parse(`ballot ${ids[0]} quay ferry=redesign\nwheel=neither\n`).told).toEqual([["vote/row", 2, 1]]);
});
