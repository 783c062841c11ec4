// Test support. A survey typed by hand around the sample study: its original, a flag without a study, one of one colour, a broken file.

import type { GalleryResult } from "../../src/analysis/result.ts";
import type { GallerySurvey, SurveyEntry } from "../../src/analysis/survey/surveyentry.ts";
import type { SurveyedDrawing } from "../../src/analysis/survey/surveyflags.ts";
import { makeOption } from "../measure/ranked.ts";
import { comparison, galleryResult } from "./sample.ts";

const drawing =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><path fill="#12235c" d="M0 0h3v2H0z"/></svg>';

const best = makeOption({ with: "#f4c430", name: "straw", clarity: 100, deltaE00: 60 });

const original: SurveyEntry = {
  flag: {
    file: "studies/a-square/original.svg",
    clarity: 74.1,
    clearEdgeShare: 0.4286,
    weakestEdge: { a: "p1", b: "p2", names: ["dark blue", "red"], contrast: 24.6 },
    changeFirst: [{ id: "p2", hex: "#c8202f", name: "red" }],
    bestOption: best,
    focus: { source: "none", clarity: null, lastsTo: null },
  },
  measure: comparison.before,
  slugs: ["a-square"],
};

/** Clear, so that nothing is to be changed. */
const clear: SurveyEntry = {
  flag: {
    ...original.flag,
    file: "flags/harbour-pilots.svg",
    clarity: 100,
    clearEdgeShare: 1,
    weakestEdge: { a: "p1", b: "p3", names: ["dark blue", "white"], contrast: 84.2 },
    changeFirst: null,
    bestOption: null,
    focus: { source: "found", clarity: 100, lastsTo: 320 },
  },
  measure: {
    ...comparison.before,
    focus: { source: "found", share: 0.1, clarity: 100, from: [], lastsTo: 320 },
  },
  slugs: [],
  drawing,
};

const plain: SurveyEntry = {
  flag: {
    ...clear.flag,
    file: "flags/plain.svg",
    clarity: null,
    clearEdgeShare: null,
    weakestEdge: null,
    focus: { source: "none", clarity: null, lastsTo: null },
  },
  measure: {
    ...comparison.before,
    colours: comparison.before.colours.slice(0, 1),
    edges: [],
    weakestEdge: null,
  },
  slugs: [],
  drawing,
};

export const survey: GallerySurvey = {
  entries: [original, clear, plain],
  failed: [
    {
      file: "flags/torn.svg",
      problem: {
        rule: "svg/not-well-formed",
        severity: "error",
        file: "flags/torn.svg",
        reason: "It ends too early.",
      },
    },
  ],
};

export const surveyedGallery: GalleryResult = { ...galleryResult, survey };

const colours = ["#12235c", "#c8202f", "#ffffff", "#f4c430", "#0b7a3b", "#000000", "#6cb4e4", "#de7d30"];

/** Invented flags without a study, each with a drawing and a clarity of its own; the same ones every time. */
export function inventFlags(count: number): readonly SurveyEntry[] {
  return Array.from({ length: count }, (_, index) => {
    const [ground, charge, band] = [0, 3, 5].map((shift) => colours[(index * (shift + 2) + shift) % 8]);
    const shape =
      index % 2 === 0
        ? `<path fill="${charge}" d="M${10 + (index % 7)} 0h6v40h-6z"/>`
        : `<circle fill="${charge}" cx="30" cy="20" r="${8 + (index % 5)}"/>`;
    return {
      ...(index % 3 === 0 ? clear : original),
      slugs: [],
      drawing: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 60 40"><path fill="${ground}" d="M0 0h60v40H0z"/><path fill="${band}" d="M0 30h60v${4 + (index % 6)}H0z"/>${shape}</svg>`,
      flag: {
        ...(index % 3 === 0 ? clear : original).flag,
        file: `flags/islet-${index}.svg`,
        clarity: 20 + ((index * 37) % 81),
      },
    };
  }).sort((a, b) => a.flag.clarity - b.flag.clarity);
}

/** A flag of one clarity, of which nothing else is known. */
export function surveyedFlag(file: string, clarity: number, drawing: string): SurveyedDrawing {
  return {
    flag: {
      file,
      clarity,
      clearEdgeShare: 0.5,
      weakestEdge: null,
      changeFirst: null,
      bestOption: null,
      focus: { source: "none", clarity: null, lastsTo: null },
    },
    measure: comparison.before,
    drawing,
  };
}
