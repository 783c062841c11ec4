// Test support. The sample study with a ranking typed by hand: its matrix of two rows and three columns, the author's others.
import type { Matrix, MatrixCell } from "../../src/analysis/options/optionmatrix.ts";
import type { NotedResult, StudyRanking } from "../../src/analysis/options/studyranking.ts";
import type { StudyResult } from "../../src/analysis/result.ts";
import { studyResult } from "./sample.ts";

const cell = (more: Pick<MatrixCell, "with" | "name" | "clarity"> & Partial<MatrixCell>): MatrixCell => ({
  mergedOutline: 0,
  isRanked: true,
  merges: false,
  isBest: false,
  ...more,
});

export const matrix: Matrix = {
  columns: [{ hex: "#ffffff", name: "white" }, { hex: "#f4c430", name: "straw" }, { hex: null }],
  rows: [
    {
      id: "p2",
      hex: "#c8202f",
      name: "red",
      cells: [
        cell({ with: "#ffffff", name: "white", clarity: 99.6 }),
        cell({ with: "#f4c430", name: "straw", clarity: 100, isBest: true }),
        null,
      ],
    },
    {
      id: "p1",
      hex: "#12235c",
      name: "dark blue",
      cells: [
        cell({ with: "#ffffff", name: "white", clarity: 12, mergedOutline: 0.4, isRanked: false }),
        null,
        cell({ with: "#7d8bd6", name: "lighter blue", clarity: 80, isBest: true }),
      ],
    },
  ],
  cellWidth: 96,
  cellHeight: 64,
  // One white pixel, written by the encoder of sharp.
  picture: "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mP8/x8AAwMCAO+ip1sAAAAASUVORK5CYII=",
  leftOut: { rows: 0, columns: 0 },
};

/** A change that the author tried: red becomes navy, which helps nothing. */
export const noted = (more: Partial<NotedResult>): NotedResult => ({
  index: 0,
  replace: "#c8202f",
  with: "#123456",
  name: "navy",
  clarity: 46.4,
  strength: 40.2,
  focusClarity: 12.2,
  verdict: "less clear",
  price: [],
  standing: null,
  drawing: "<svg/>",
  ...more,
});

/** The sample study with a ranking, with what `more` and `report` say in place. */
export function ranked(
  more: Partial<StudyRanking>,
  report: Partial<StudyRanking["report"]> = {},
): StudyResult {
  const ranking: StudyRanking = {
    report: {
      file: "a.svg",
      distance: 40,
      clarity: 74.1,
      strength: 61.2,
      focusClarity: 54.7,
      changeFirst: null,
      mostGained: null,
      options: [],
      vanishing: [],
      shades: [],
      leftOut: { uneven: [], unseen: [], shared: [] },
      ...report,
    },
    standing: {
      place: 3,
      total: 58,
      level: 0,
      behindBest: 2,
      lost: 0,
    },
    noted: [],
    ...more,
  };
  return { ...studyResult, ranking };
}
