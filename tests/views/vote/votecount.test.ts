import { expect, test } from "vitest";
import { parseBallots } from "../../../src/content/vote/ballotfile.ts";
import { countQuestion } from "../../../src/views/vote/votecount.ts";
import { createFormat } from "../../../src/words/format.ts";
import { client } from "./client.ts";

const format = createFormat("en");
const sides = ["original", "ferry", "neither"].map((side) => ({ side, name: side.toUpperCase() }));

/** 30 ballots as the page hands them out: 18 for the redesign, 9 for the original, 3 for neither; every other as a line. */
const chosen = [
  ...Array<string>(18).fill("redesign"),
  ...Array<string>(9).fill("original"),
  ...Array<string>(3).fill("neither"),
];
const hostile = ['=HYPERLINK("https://x.example")', 'say "gold", not ochre', "'tis gold", "a=b \\ c;d"];
const made = chosen.map((choice, at) => ({
  id: at.toString(16).padStart(16, "0"),
  series: "quay",
  votes: [{ study: "ferry", choice, why: hostile[at] ?? "" }],
}));
const bytes = (text: string) => new TextEncoder().encode(text);
const poll = { slug: "quay", studies: ["ferry"], met: new Map(), contradicted: new Set<string>() };
const lines = made.filter((_, at) => at % 2 === 0).map((one) => `${client.formatBallotLine(one)}\n`);
const tables = made.filter((_, at) => at % 2 === 1).map(client.formatBallotTable);
const ballots = [lines.join(""), ...tables].flatMap((text, at) => {
  const { value, problems } = parseBallots(`${at}.csv`, bytes(text), poll);
  expect(problems).toEqual([]);
  return value;
});

test("thirty ballots come back as they were cast", () => {
  expect(ballots).toHaveLength(30);
  const counted = countQuestion(ballots, ["ferry"], sides, format, true);
  expect(counted?.total).toBe(30);
  expect(counted?.sides.map(({ name, count, share }) => [name, count, share])).toEqual([
    ["ORIGINAL", "9", "30%"],
    ["FERRY", "18", "60%"],
    ["NEITHER", "3", "10%"],
  ]);
  expect([...(counted?.words ?? [])].map(({ text }) => text).sort()).toEqual([...hostile].sort());
});

test("words are shown only where the series says so", () => {
  expect(countQuestion(ballots, ["ferry"], sides, format, false)?.words).toEqual([]);
});

test("a question that nobody answered has no count", () => {
  expect(countQuestion(ballots, ["wheel"], sides, format, true)).toBeUndefined();
});

test("of rivals that one ballot answers one by one the first counts", () => {
  const twice = {
    id: "f".repeat(16),
    votes: [
      { study: "ferry", choice: "redesign" },
      { study: "rival", choice: "redesign" },
    ],
  } as const;
  const rivals = [...sides, { side: "rival", name: "RIVAL" }];
  const counted = countQuestion([twice], ["ferry", "rival"], rivals, format, false);
  expect(counted?.sides.map(({ name, count }) => [name, count])).toContainEqual(["FERRY", "1"]);
  expect(counted?.sides.map(({ name, count }) => [name, count])).toContainEqual(["RIVAL", "0"]);
});
