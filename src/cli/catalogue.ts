// Floor 7. Every command in the words of its help, in the order of the help. What a command does is loaded when it runs.
import type { Command, Option } from "./command.ts";

/** How a drawing is looked at, the same for every command that measures. */
const distance: Option = {
  value: "N",
  help: "Viewing distance in flag heights, 0 to 1000 (default 40; 0 is the full drawing).",
};
const focus: Option = {
  value: "X",
  help: "What has to be seen: a colour of the drawing (hex or name), or a CSS selector.",
};
const json: Option = { help: "Print JSON." };

export const commands: readonly Command[] = [
  {
    name: "build",
    usage: "[CONTENT] [--out DIR] [--base PATH] [--drafts] [--strict]",
    summary: "Publishes the gallery of a content folder as a web site.",
    examples: ["build content --out _site"],
    operands: [0, 1],
    options: {
      out: { value: "DIR", help: "The folder to write the site to (default _site)." },
      base: { value: "PATH", help: "The path under which a host will show the site, such as /flags/." },
      drafts: { help: "Publish drafts as well." },
      strict: { help: "Publish nothing where any study has an error." },
    },
    load: () => import("./build.ts"),
  },
  {
    name: "check",
    usage: "[CONTENT] [--json]",
    summary: "Lists every problem of a content folder, drafts included. Writes nothing.",
    examples: ["check content"],
    operands: [0, 1],
    options: { json },
    load: () => import("./check.ts"),
  },
  {
    name: "measure",
    usage: "FILE.svg… [--distance N] [--focus X] [--json]",
    summary: "Shows the colours and edges of drawings.",
    examples: ["measure content/flags/reedwater.svg --distance 80"],
    operands: [1, Number.POSITIVE_INFINITY],
    options: { distance, focus, json: { help: "Print JSON: one object, or an array for several files." } },
    load: () => import("./measure.ts"),
  },
  {
    name: "try",
    usage:
      "FILE.svg [--replace A --with B [--only SELECTOR] [--out F.svg]] [--distance N] [--focus X] [--json]",
    summary:
      "Ranks the single colour changes of a drawing; or compares one change, every edge before and after.",
    examples: [
      "try content/studies/harrowquay/original.svg",
      'try content/studies/harrowquay/original.svg --replace "#701c2b" --with "#e6b436" --out lighter.svg',
    ],
    operands: [1, 1],
    options: {
      replace: { value: "A", help: "The colour to replace: a colour of the drawing, or its name." },
      with: { value: "B", help: "The new colour: any CSS colour, or a name of the usual palette." },
      only: { value: "SELECTOR", help: "Recolour only the elements that this CSS selector names." },
      out: { value: "F.svg", help: "Write the redesign to this file, which must not be there yet." },
      distance,
      focus,
      json,
    },
    load: () => import("./try.ts"),
  },
  {
    name: "survey",
    usage: "DIR [--distance N] [--json | --csv]",
    summary: "Lists every flag of a folder, least clear first, with the colour to change first.",
    examples: ["survey content/flags", "survey content --csv"],
    operands: [1, 1],
    options: {
      distance,
      json,
      csv: { help: "Print CSV, with a heading." },
    },
    load: () => import("./survey.ts"),
  },
  {
    name: "clean",
    usage: "FILE.svg [--out F.svg]",
    summary: "Shows a drawing as it would be published: only what a drawing may hold, and nothing hidden.",
    examples: ["clean content/flags/reedwater.svg --out clean.svg"],
    operands: [1, 1],
    options: { out: { value: "F.svg", help: "Write it to this file, which must not be there yet." } },
    load: () => import("./clean.ts"),
  },
];
