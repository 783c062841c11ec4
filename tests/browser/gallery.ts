// Test support. A gallery of the cases the demo does not have: right to left, one colour, merged, parted, empty notes.

import type { GalleryResult, StudyResult } from "../../src/analysis/result.ts";
import type { ComparedEdge, Comparison } from "../../src/measure/comparison.ts";
import { comparison, gallery, series, study, studyResult } from "../publish/sample.ts";

const oneColour: Comparison = {
  ...comparison,
  before: {
    ...comparison.before,
    colours: comparison.before.colours.slice(1, 2),
    edges: [],
    weakestEdge: null,
  },
  after: { ...comparison.after, colours: comparison.after.colours.slice(1, 2), edges: [], weakestEdge: null },
  edges: [],
  clearEdgeShare: [null, null],
  clarity: [null, null],
  strength: [null, null],
  verdict: "no gain",
};

const outcomes: Comparison = {
  ...comparison,
  edges: comparison.edges.map(
    (edge): ComparedEdge =>
      edge.b === "p2"
        ? { ...edge, contrast: [24.6, 0], outcome: "merged" }
        : { ...edge, contrast: [null, 84.2], outcome: "parted" },
  ),
  verdict: "mixed",
};

function named(slug: string, changed: Partial<StudyResult["study"]>, numbers: Comparison): StudyResult {
  return { ...studyResult, study: { ...study, slug, ...changed }, comparison: numbers };
}

const longWord = "Donaudampfschifffahrtsgesellschaftskapitänsflaggenentwurf";

const ownPage = (path: string, body: string) => ({ path, title: longWord, file: "", body, bodyLine: 1 });

/** Arabic, so that everything runs the other way. */
export const oddGallery: GalleryResult = {
  gallery: {
    ...gallery,
    language: "he",
    menu: [{ word: "الدليل", path: "guide" }],
    answer: {
      way: "form",
      template: "https://forum.example/new?title={title}&text={url}%0A{numbers}#{edge}",
    },
  },
  studies: [
    named("one-colour", { title: "One colour", body: "" }, oneColour),
    named(
      "long-words",
      {
        title: longWord,
        formerly: ["longer-words"],
        authors: [longWord, "ש. כהן"],
        body: `# ${longWord}\n\n::figure{edge="dark blue / red"}\n\n> <b>Quoted</b>\n\n\`\`\`\n${longWord.repeat(3)}\n\`\`\`\n\n- a\n- b\n\n1. **c**\n2. *d*\n`,
      },
      outcomes,
    ),
  ],
  pages: [
    ownPage("guide", `## ${longWord}\n\n### c *d*\n\n> **e**\n\n1. \`${longWord}\`\n\n::study{long-words}\n`),
    ownPage("guide/one", ""),
    ownPage("guide/two", "النص"),
  ],
  series: [{ ...series, title: longWord, entries: [{ study: "one-colour" }, { study: "long-words" }] }],
  problems: [],
};

/** Nothing published yet. */
export const emptyGallery: GalleryResult = {
  ...oddGallery,
  gallery: { ...oddGallery.gallery, menu: [] },
  studies: [],
  series: [],
  pages: [],
};
