import { expect, test } from "vitest";
import { tellClosing, tellOpening } from "../../../src/views/show/seriesends.ts";
import { createFormat } from "../../../src/words/format.ts";
import { gallery, series } from "../../publish/sample.ts";

const notes = { "the-opening": "Blinds half down.", "the-closing": "Count hands." };
const told = { ...series, title: "From the quay", authors: ["Ines Valcourt"], show: { notes } };

test("a series begins with its author's words, and with a note to the speaker", () => {
  const body = "Look *twice*. Then walk back.\n\nMore to say.";
  expect(tellOpening({ ...told, body }, [], gallery, createFormat("en"))).toMatchObject({
    heading: "From the quay",
    says: "Ines Valcourt: Look twice. Then walk back.",
    speech: "From the quay. Look twice. Then walk back. More to say.",
    note: "Blinds half down.",
  });
});

test("it ends with its question, or with the usual one, and a note", () => {
  expect(tellClosing({ ...told, closing: "Which?" }, [], createFormat("en"))).toMatchObject({
    heading: "Which?",
    note: "Count hands.",
  });
  const { closing: _, show: __, ...bare } = { ...told, closing: "" };
  expect(tellClosing(bare, [], createFormat("en"))).toMatchObject({
    heading: "What would you change?",
    note: undefined,
  });
});
