import { expect, test } from "vitest";
import { describeAnswer, describeReply } from "../../src/words/answerphrase.ts";
import { createFormat } from "../../src/words/format.ts";

const format = createFormat("en-GB");

test("who answers, and what it comes to", () => {
  const answer = { key: "1", by: "Dunstan Pelleray", text: "", at: { file: "" } };
  expect(describeAnswer({ ...answer, says: "disagree" }, format)).toBe("Dunstan Pelleray disagrees");
  expect(describeAnswer({ ...answer, says: "ask" }, format)).toBe("Dunstan Pelleray asks");
});

test("who replies, as far as it is said", () => {
  expect(describeReply({ text: "" }, format)).toBe("The author replies");
  expect(describeReply({ by: "Ines", date: "2026-04-12", text: "" }, format)).toBe(
    "Ines replies, 12 April 2026",
  );
});
