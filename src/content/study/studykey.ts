// Floor 5. The keys of a study file: which there are, what each may hold, and what one looks like.
import { z } from "zod";
import { line, prose } from "../yaml/textvalue.ts";
import { answerExamples, answerItem } from "./answerkey.ts";

export const statuses = ["draft", "open", "adopted", "declined", "withdrawn"] as const;

const change = {
  replace: line(100).describe("A colour of the drawing: hex in quotes, or the name that its page shows."),
  with: line(100).describe(
    "The new colour: hex in quotes, a name of the gallery's palette, or a CSS colour.",
  ),
  only: line(500).describe("A CSS selector: only what it matches is recoloured.").exactOptional(),
  part: line(40).describe("With only: what readers call that part.").exactOptional(),
};

const votes = () => z.int().min(0).max(1_000_000);

const decided = {
  date: line(40).describe("When: year, month and day with hyphens."),
  by: line(200).describe("Who decided.").exactOptional(),
  for: votes().describe("Votes for it.").exactOptional(),
  against: votes().describe("Votes against it.").exactOptional(),
  abstained: votes().describe("Who voted neither way.").exactOptional(),
  why: line(500).describe("Why, in a sentence."),
};

const credit = {
  title: line(200).describe("What the drawing is called.").exactOptional(),
  author: line(200).describe("Who made it.").exactOptional(),
  source: line(500).describe("Where it comes from.").exactOptional(),
  licence: line(100).describe("Under which licence it may be published."),
};

/**
 * The front matter of a study, or study.yaml. The descriptions go into the JSON Schema that editors read. Rules that join
 * two keys, and colours, are checked in `studyrule.ts`.
 */
export const studySchema = z.strictObject({
  title: line(200).describe("The heading of the study's page, and its line in lists."),
  flag: line(100).describe("What the flag is called: shown over the title everywhere.").exactOptional(),
  language: line(60)
    .describe("What the study is written in, as a tag of BCP 47, where that is not the gallery's language.")
    .exactOptional(),
  original: line(200).describe("The drawing: an SVG file beside the study, or /flags/name.svg."),
  change: z.strictObject(change).describe("The one colour change that the study proposes."),
  names: z
    .record(z.string(), line(40))
    .describe("What readers call the colours of this flag: hex in quotes, then the name.")
    .exactOptional(),
  focus: z
    .strictObject({
      colour: line(100).describe("A colour of the drawing, hex in quotes or by name.").exactOptional(),
      select: line(500).describe("A CSS selector.").exactOptional(),
    })
    .describe("What has to be seen, where it cannot be found: a colour or a selector, not both.")
    .exactOptional(),
  status: z
    .enum(statuses)
    .describe("Drafts are left out unless --with-drafts asks for them.")
    .default("open"),
  decision: line(500).describe("With adopted and declined: why, in a sentence.").exactOptional(),
  decided: z
    .strictObject(decided)
    .describe("The same with its date and votes, for the list of decisions.")
    .exactOptional(),
  authors: z.array(line(100)).max(20).describe("Who proposes it.").default([]),
  date: line(40).describe("Year, month and day with hyphens.").exactOptional(),
  revised: z
    .array(
      z.strictObject({
        date: line(40).describe("Year, month and day with hyphens."),
        what: line(300).describe("What was changed."),
      }),
    )
    .max(50)
    .describe("What was changed since it was published.")
    .exactOptional(),
  follows: line(100).describe("The study, by its folder, that this one takes the place of.").exactOptional(),
  tags: z.array(line(50)).max(20).describe("Letters, digits, spaces and hyphens.").default([]),
  options: z
    .array(z.strictObject({ ...change, note: line(500).describe("What came of it.").exactOptional() }))
    .max(50)
    .describe("Other single changes that were tried.")
    .default([]),
  credit: z.strictObject(credit).describe("Whose drawing it is.").exactOptional(),
  symbolism: prose(2000).describe("What the change does to the meaning.").exactOptional(),
  show: z
    .strictObject({
      steps: z.array(line(40)).min(1).max(60).describe("Only these steps, in this order.").exactOptional(),
      without: z.array(line(40)).max(60).describe("All steps but these.").exactOptional(),
      notes: z
        .record(z.string(), prose(1000))
        .describe("Step by step, what the speaker is reminded of: never on the projector.")
        .exactOptional(),
    })
    .describe("The study step by step, for a projector.")
    .exactOptional(),
  downloads: z
    .boolean()
    .describe("Whether the page offers the pictures of the steps, for slides and recordings.")
    .exactOptional(),
  answers: z.array(answerItem).max(200).describe("What others said to it.").exactOptional(),
  formerly: z
    .array(line(100))
    .max(20)
    .describe("Names that the study's folder had before: pages there point to the new address.")
    .exactOptional(),
});

/** What to type for a key: dotted path with `*` for a place in a list → a line that would be right. */
export const studyExamples: Readonly<Record<string, string>> = {
  title: "title: A lighter ferry wheel",
  flag: "flag: The Harrowquay ferry flag",
  language: "language: cy",
  original: "original: original.svg",
  change: 'change: { replace: "#7a1020", with: "#f4c430" }',
  "change.replace": 'replace: "#7a1020"',
  "change.with": 'with: "#f4c430"',
  "change.only": 'only: "#wheel"',
  "change.part": "part: the wheel",
  names: 'names: { "#1b2a5c": navy }',
  focus: 'focus: { select: "#wheel" }',
  "focus.colour": 'colour: "#7a1020"',
  "focus.select": 'select: "#wheel"',
  status: "status: open",
  decision: "decision: The lighter wheel reads from the quay.",
  decided:
    "decided: { date: 2026-05-02, by: the spring meeting, for: 11, against: 2, why: It reads from the quay. }",
  "decided.date": "date: 2026-05-02",
  "decided.by": "by: the spring meeting",
  "decided.for": "for: 11",
  "decided.against": "against: 2",
  "decided.abstained": "abstained: 1",
  "decided.why": "why: It reads from the quay.",
  authors: "authors: [Ines Valcourt]",
  "authors.*": "authors: [Ines Valcourt]",
  date: "date: 2026-04-02",
  revised: "revised: [{ date: 2026-04-20, what: A brighter gold. }]",
  "revised.*": "- { date: 2026-04-20, what: A brighter gold. }",
  "revised.*.date": "date: 2026-04-20",
  "revised.*.what": "what: A brighter gold.",
  follows: "follows: ferry-wheel",
  tags: "tags: [charge, dark on dark]",
  "tags.*": "tags: [charge, dark on dark]",
  options: 'options: [{ replace: "#1b2a5c", with: "#ffffff" }]',
  "options.*": '- { replace: "#1b2a5c", with: "#ffffff" }',
  "options.*.replace": 'replace: "#1b2a5c"',
  "options.*.with": 'with: "#ffffff"',
  "options.*.only": 'only: "#wheel"',
  "options.*.part": "part: the wheel",
  "options.*.note": 'note: "Too close to the harbour flag."',
  credit: "credit: { author: Ines Valcourt, licence: CC0-1.0 }",
  "credit.title": "title: Harbour flag",
  "credit.author": "author: Ines Valcourt",
  "credit.source": "source: https://flags.example/harbour",
  "credit.licence": "licence: CC0-1.0",
  symbolism: "symbolism: Gold stands for the harvest.",
  show: "show: { without: [from-afar] }",
  "show.steps": "steps: [the-flag, after, the-price]",
  "show.steps.*": "steps: [the-flag, after, the-price]",
  "show.without": "without: [from-afar]",
  "show.without.*": "without: [from-afar]",
  "show.notes": 'notes: { the-flag: "Let them look before you speak." }',
  "show.notes.*": 'the-flag: "Let them look before you speak."',
  downloads: "downloads: true",
  ...answerExamples,
  formerly: "formerly: [ferry-wheel]",
  "formerly.*": "formerly: [ferry-wheel]",
};
