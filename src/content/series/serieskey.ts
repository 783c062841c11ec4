// Floor 5. The keys of a series: which there are, what each may hold, and what one looks like.
import { z } from "zod";
import type { KeyGuide } from "../yaml/finding.ts";
import { line, prose } from "../yaml/textvalue.ts";

const flag = {
  flag: line(200).describe("A flag without a study: /flags/name.svg."),
  name: line(100).describe("What the flag is called.").exactOptional(),
  ask: line(300).describe("What is asked of the reader.").exactOptional(),
  note: note("it").exactOptional(),
};

function note(what: string): z.ZodString {
  return prose(1000).describe(`What the speaker is reminded of at ${what}: never on the projector.`);
}

/** The front matter of a series. The descriptions go into the JSON Schema that editors read. */
export const seriesSchema = z.strictObject({
  title: line(200).describe("The heading of the series' page."),
  authors: z.array(line(100)).max(20).describe("Who put it together.").default([]),
  date: line(40).describe("Year, month and day with hyphens.").exactOptional(),
  studies: z
    .array(z.union([line(100), z.strictObject(flag)]))
    .min(1)
    .max(100)
    .describe("In their order: folders of studies, and flags without a study."),
  showWords: z
    .boolean()
    .describe("Whether the page of the vote shows the words of ballots; false unless said otherwise.")
    .exactOptional(),
  show: z
    .strictObject({
      notes: z
        .strictObject({
          "the-opening": note("the opening").exactOptional(),
          "the-closing": note("the closing").exactOptional(),
        })
        .describe("Notes for the speaker; those to the steps of a study stand in the study.")
        .exactOptional(),
    })
    .describe("The series step by step, for a projector.")
    .exactOptional(),
  closing: line(500).describe("The question at the end.").exactOptional(),
});

/** Names and examples for messages. */
export const seriesGuide: KeyGuide = {
  whole: "A series",
  examples: {
    title: "title: Six flags from the quay",
    authors: "authors: [Ines Valcourt]",
    "authors.*": "authors: [Ines Valcourt]",
    date: "date: 2026-04-02",
    studies: "studies: [ferry-wheel, harbour-anchor]",
    "studies.*": "- ferry-wheel",
    "studies.*.flag": "flag: /flags/harbour.svg",
    "studies.*.name": "name: The harbour flag",
    "studies.*.ask": "ask: What would you change here?",
    "studies.*.note": "note: Wait until somebody has walked to the door.",
    showWords: "showWords: true",
    show: 'show: { notes: { the-opening: "Blinds half down." } }',
    "show.notes": 'notes: { the-opening: "Blinds half down." }',
    "show.notes.the-opening": 'the-opening: "Blinds half down."',
    "show.notes.the-closing": 'the-closing: "Count hands before anybody speaks."',
    closing: "closing: Which of these changes would you make?",
  },
};
