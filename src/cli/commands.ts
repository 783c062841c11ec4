// Floor 11. Every command in the words of its help, in the order of the help. What a command does is loaded when it runs.
import { keyVariable } from "../analysis/store/signature.ts";
import { cacheOption as cache } from "./cacheoption.ts";
import type { Command, Option } from "./command.ts";
import { contentHelp } from "./contentfolder.ts";

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
    name: "publish",
    formerly: "build",
    usage: "[CONTENT] [--out DIR] [--base PATH] [--with-drafts] [--strict] [--force] [--cache DIR]",
    summary: "Publishes the gallery of a content folder as a web site.",
    about: contentHelp,
    examples: ["publish content --out published"],
    operands: [0, 1],
    options: {
      out: { value: "DIR", help: "The folder to write the site to (default published)." },
      base: { value: "PATH", help: "The path under which a host will show the site, such as /flags/." },
      "with-drafts": { formerly: "drafts", help: "Publish drafts as well." },
      strict: { help: "Publish nothing where there is any problem: warnings fail too." },
      force: {
        help: "Replace the folder even where it holds what was not written here; it is kept beside the new one.",
      },
      cache,
    },
    load: () => import("./publish.ts"),
  },
  {
    name: "preview",
    formerly: "serve",
    usage: "[CONTENT] [--port N] [--host H] [--with-drafts] [--cache DIR]",
    summary:
      "Shows the gallery in a browser while it is written: each change is there as soon as it is saved.",
    about: contentHelp,
    examples: ["preview content"],
    operands: [0, 1],
    options: {
      port: { value: "N", help: "The port (default 8642, or the next that is free; 0 is any that is free)." },
      host: { value: "H", help: "The address to listen on (default 127.0.0.1: nobody else can see it)." },
      "with-drafts": { formerly: "drafts", help: "Show drafts as well." },
      cache,
    },
    load: () => import("./preview.ts"),
  },
  {
    name: "check",
    usage: "[CONTENT] [--json | --markdown] [--against DIR] [--strict] [--cache DIR]",
    summary:
      "Lists every problem of a content folder, drafts included, and what has moved since it was published. Writes nothing.",
    about: contentHelp,
    examples: ["check content"],
    operands: [0, 1],
    options: {
      json,
      markdown: { help: "Print a reply to paste for a contributor: studies that moved, and problems." },
      against: {
        value: "DIR",
        help: "The published site to compare with: marks, verdicts, pictures, addresses (default published, if it is there).",
      },
      strict: { help: "Fail where there is any problem: warnings too." },
      cache,
    },
    load: () => import("./check.ts"),
  },
  {
    name: "begin",
    formerly: "new",
    usage:
      "SLUG --original FILE.svg | --rival STUDY [--title TEXT] [--flag NAME] [--series NAME] [--content DIR] [--host NAME] [--yaml]",
    summary:
      "Begins a study of a drawing: its colours listed, the best change filled in, two by other kinds of colour beside it. Makes a gallery where there is none.",
    about:
      "The study goes to the folder of --content. Where none is named, that is the current folder if it holds gallery.yaml or studies/, else content if that does, else the current folder. Nothing is overwritten.",
    examples: ['begin harbour-light --original content/flags/reedwater.svg --title "A harbour light"'],
    operands: [0, 1],
    misplaced: { pattern: /\.svg$/i, is: "the drawing", option: "original" },
    options: {
      original: { value: "FILE.svg", help: "The drawing. It is copied as it is." },
      rival: {
        value: "STUDY",
        help: "In place of --original: another study of the flag of this one, or of a drawing in flags/.",
      },
      title: { value: "TEXT", help: "The heading of the study (default the slug in words)." },
      flag: { value: "NAME", help: "What the flag is called: shown over the title everywhere." },
      series: {
        value: "NAME",
        help: "The series that the study belongs to, as its last. It is begun where there is none.",
      },
      content: {
        value: "DIR",
        help: "The content folder to put the study in.",
      },
      host: {
        value: "NAME",
        help: "With a new gallery, workflows that check contributions and publish it there: github or gitlab.",
      },
      yaml: {
        help: "Write study.yaml and prose.md in place of study.md, for editors that complete YAML files.",
      },
    },
    load: () => import("./begin.ts"),
  },
  {
    name: "measure",
    usage: "FILE.svg… [--distance N] [--focus X] [--json]",
    summary: "Shows the clarity, colours and edges of drawings.",
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
      "Says which colour of a drawing to change first and why, with the best change of each colour; or compares one change, every edge before and after.",
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
    usage: "DIR [--distance N] [--json | --csv] [--cache DIR]",
    summary:
      "Lists every flag of a folder, least clear first, with what has to be seen and the colours to change first.",
    examples: ["survey content/flags", "survey content --csv"],
    operands: [1, 1],
    needs: "a folder",
    options: {
      distance,
      json,
      csv: { help: "Print CSV, with a heading." },
      cache,
    },
    load: () => import("./survey.ts"),
  },
  {
    name: "stills",
    usage: "SLUG… | --series SLUG [--size 1920x1080] [--out DIR] [--content DIR] [--cache DIR]",
    summary:
      "Makes the pictures of a lesson: each step of a study or of a series, the swap, both flags, a thumbnail, and what to say to each.",
    about:
      "SLUG is the folder of a study in studies/. Each study, and each series, gets a folder of its own in that of --out. Nothing is overwritten.",
    examples: ["stills kedgeport --content content"],
    operands: [0, Number.POSITIVE_INFINITY],
    options: {
      series: { value: "SLUG", help: "A series, the name of its file without .md: its studies in short." },
      size: { value: "WxH", help: "Width and height of the pictures in pixels (default 1920x1080)." },
      out: { value: "DIR", help: "The folder to make theirs in (default stills)." },
      content: { value: "DIR", help: "The content folder, as publish takes it." },
      cache,
    },
    load: () => import("./stills.ts"),
  },
  {
    name: "sift",
    formerly: "clean",
    usage: "FILE.svg [--out F.svg]",
    summary: "Shows a drawing as it would be published: only what a drawing may hold, and nothing hidden.",
    examples: ["sift content/flags/reedwater.svg --out sifted.svg"],
    operands: [1, 1],
    options: { out: { value: "F.svg", help: "Write it to this file, which must not be there yet." } },
    load: () => import("./sift.ts"),
  },
  {
    name: "slice",
    usage: "I/N [CONTENT] [--with-drafts] [--cache DIR]",
    summary:
      "Measures and draws one slice of a large gallery, the Ith of N, keeps that, and publishes nothing: publish then finds it.",
    about: `${contentHelp} A slice is every Nth folder of studies/ by name, good or bad. Folders of what is kept, made with one ${keyVariable} or in one home, are merged by copying one into the other.`,
    examples: ["slice 1/4 content --cache kept"],
    operands: [1, 2],
    needs: "a slice, such as 1/4",
    options: {
      "with-drafts": { help: "Take drafts as well, where publish will." },
      cache,
    },
    load: () => import("./slice.ts"),
  },
];
