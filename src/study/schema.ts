// Floor 5. The keys of a study file: which there are, what each may hold, and what one looks like.
import { z } from "zod";

/** Text of 1 to `longest` characters. */
const text = (longest: number) => z.string().min(1).max(longest);

export const statuses = ["draft", "open", "adopted", "declined", "withdrawn"] as const;

const change = {
  replace: text(100),
  with: text(100),
  only: text(500).exactOptional(),
};

/** The front matter of a study. Rules that join two keys, and colours, are checked in `check.ts`. */
export const studySchema = z.strictObject({
  title: text(200),
  original: text(200),
  change: z.strictObject(change),
  focus: z
    .strictObject({ colour: text(100).exactOptional(), select: text(500).exactOptional() })
    .exactOptional(),
  status: z.enum(statuses).default("open"),
  decision: text(500).exactOptional(),
  authors: z.array(text(100)).max(20).default([]),
  date: text(40).exactOptional(),
  tags: z.array(text(50)).max(20).default([]),
  options: z
    .array(z.strictObject({ ...change, note: text(500).exactOptional() }))
    .max(50)
    .default([]),
  credit: z
    .strictObject({
      title: text(200).exactOptional(),
      author: text(200).exactOptional(),
      source: text(500).exactOptional(),
      licence: text(100),
    })
    .exactOptional(),
  symbolism: text(2000).exactOptional(),
});

/** What to type for a key: dotted path with `*` for a place in a list → a line that would be right. */
export const studyExamples: Readonly<Record<string, string>> = {
  title: "title: A lighter ferry wheel",
  original: "original: original.svg",
  change: 'change: { replace: "#7a1020", with: "#f4c430" }',
  "change.replace": 'replace: "#7a1020"',
  "change.with": 'with: "#f4c430"',
  "change.only": 'only: "#wheel"',
  focus: 'focus: { select: "#wheel" }',
  "focus.colour": 'colour: "#7a1020"',
  "focus.select": 'select: "#wheel"',
  status: "status: open",
  decision: "decision: The lighter wheel reads from the quay.",
  authors: "authors: [Ines Valcourt]",
  "authors.*": "authors: [Ines Valcourt]",
  date: "date: 2026-04-02",
  tags: "tags: [charge, dark on dark]",
  "tags.*": "tags: [charge, dark on dark]",
  options: 'options: [{ replace: "#1b2a5c", with: "#ffffff" }]',
  "options.*": '- { replace: "#1b2a5c", with: "#ffffff" }',
  "options.*.replace": 'replace: "#1b2a5c"',
  "options.*.with": 'with: "#ffffff"',
  "options.*.only": 'only: "#wheel"',
  "options.*.note": 'note: "Too close to the harbour flag."',
  credit: "credit: { author: Ines Valcourt, licence: CC0-1.0 }",
  "credit.title": "title: Harbour flag",
  "credit.author": "author: Ines Valcourt",
  "credit.source": "source: https://flags.example/harbour",
  "credit.licence": "licence: CC0-1.0",
  symbolism: "symbolism: Gold stands for the harvest.",
};
