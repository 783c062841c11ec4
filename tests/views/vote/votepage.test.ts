import { expect, test } from "vitest";
import type { GalleryResult } from "../../../src/analysis/result.ts";
import { orderSides } from "../../../src/views/vote/ballotsides.ts";
import { ballotLine, presentVotes } from "../../../src/views/vote/votepage.ts";
import { createFormat } from "../../../src/words/format.ts";
import { galleryResult, series as quay, study, studyResult } from "../../publish/sample.ts";
import { survey } from "../../publish/surveyed.ts";

const format = createFormat("en");
const second = { ...studyResult, study: { ...study, slug: "second", title: "A straw square" } };
const result: GalleryResult = { ...galleryResult, studies: [studyResult, second], series: [quay] };
/** Both studies are of one flag. */
const rivals: GalleryResult = {
  ...result,
  survey: {
    ...survey,
    entries: survey.entries.map((entry, at) =>
      at === 0 ? { ...entry, slugs: ["a-square", "second"] } : entry,
    ),
  },
};

test("a question for each study, in the order of the series; sides by the seed of the series", () => {
  const [vote] = presentVotes(result, format);
  expect(vote?.frame.canonical).toBe("https://flags.example/sound/series/quay/vote/");
  expect(vote?.questions.map(({ key, sides }) => [key, sides.map(({ side }) => side)])).toEqual(
    ["second", "a-square"].map((key) => [key, orderSides("quay", key, ["original", key])]),
  );
});

test("rivals are one question", () => {
  const [vote] = presentVotes(rivals, format);
  expect(vote?.questions.map(({ key, sides }) => [key, sides.map(({ side }) => side).sort()])).toEqual([
    ["second", ["a-square", "original", "second"]],
  ]);
  expect(vote?.questions[0]?.sides.map(({ name }) => name)).toContain("The redesign “A straw square”");
});

test("nothing that stands before the choice tells the sides apart but what their flags show", () => {
  const [vote] = presentVotes(rivals, format);
  for (const { plate } of vote?.questions[0]?.sides ?? []) expect(plate.alt).toMatch(/^A flag: /);
  expect(vote?.questions[0]?.flag).not.toContain("straw");
});

test("a series without a study has no vote", () => {
  const flags = { ...quay, entries: [{ flag: "flags/a.svg" }] };
  expect(presentVotes({ ...result, series: [flags] }, format)).toEqual([]);
});

test("a ballot stands in its letter once, whatever the series is called", () => {
  const gallery = { ...result.gallery, answer: { way: "mail", address: "a@flags.example" } } as const;
  const named = { ...quay, slug: "ballot-line", title: `Which ${ballotLine} is it?` };
  const [vote] = presentVotes({ ...result, gallery, series: [named] }, format);
  expect(vote?.send?.href.split(ballotLine)).toHaveLength(2);
  expect(vote?.send?.href).toMatch(new RegExp(`body=.*${ballotLine}`));
});

test("a letter takes the ballot along, and the count of ballots is told", () => {
  const gallery = { ...result.gallery, answer: { way: "mail", address: "a@flags.example" } } as const;
  const ballots = [{ id: "0".repeat(16), votes: [{ study: "second", choice: "redesign" }] }] as const;
  const [vote] = presentVotes({ ...result, gallery, series: [{ ...quay, ballots }] }, format);
  expect(vote?.send?.href).toContain(ballotLine);
  expect(vote?.ballots).toBe(1);
  expect(vote?.questions.map(({ count }) => count?.total)).toEqual([1, undefined]);
});
