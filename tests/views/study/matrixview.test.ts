// The matrix of a study from a typed ranking: addresses, marks, notes, and what its caption says.
import { describe, expect, test } from "vitest";
import type { StudyResult } from "../../../src/analysis/result.ts";
import { linkFrom } from "../../../src/views/address.ts";
import { changeId, hasCell, presentMatrix } from "../../../src/views/study/matrixview.ts";
import { createFormat } from "../../../src/words/format.ts";
import { matrix, noted, ranked } from "../../publish/ranked.ts";

const view = (study: StudyResult, language = "en") => {
  const shown = presentMatrix(study, linkFrom("/studies/a-square/"), createFormat(language));
  if (shown === undefined) throw new Error("no matrix");
  return shown;
};

describe("presentMatrix", () => {
  test("is a window on one picture a change, each with an address", () => {
    const { src, width, height, rows } = view(ranked({ matrix }));
    // Two rows and three columns of flags 96 × 64, 4 pixels apart.
    expect([src, width, height]).toEqual(["matrix.webp", 300, 136]);
    expect(rows.map(({ cells }) => cells.map((cell) => cell && [cell.id, cell.box]))).toEqual([
      [["change-c8202f-f4c430", "102 2 96 64"], ["change-c8202f-ffffff", "2 2 96 64"], null],
      [null, ["change-12235c-ffffff", "2 70 96 64"], ["change-12235c-7d8bd6", "202 70 96 64"]],
    ]);
  });

  test("its anchors are those of the page with the other changes, wherever it is shown", () => {
    const study = ranked({ matrix });
    const from = (path: string) => presentMatrix(study, linkFrom(path), createFormat("en"))?.page;
    expect(from("/studies/a-square/")).toBe("changes/");
    expect(from("/studies/a-square/changes/")).toBe("./");
  });

  test("clarity in whole percent, 100 only where it is that", () => {
    const clarities = (language: string) =>
      view(ranked({ matrix }), language).rows.map(({ cells }) => cells.map((cell) => cell?.clarity));
    expect(clarities("en")).toEqual([
      ["100%", "99.6%", undefined],
      [undefined, "12%", "80%"],
    ]);
    expect(clarities("de")[0]?.[1]).toBe("99,6 %");
  });

  test("marks the best, the study's own, what is not ranked and why, and the author's notes", () => {
    const [first, second] = view(
      ranked({
        matrix,
        noted: [noted({}), noted({ with: "#ffffff" }), noted({ with: "#ffffff", only: "path" })],
      }),
    ).rows;
    expect(first?.cells[1]).toMatchObject({ isBest: false, isOwn: false, unranked: undefined });
    // The first that is met on the page, and the second of the author.
    expect(first?.cells[1]?.notes).toEqual([{ number: 1, id: "tried-2" }]);
    expect(first?.cells[0]).toMatchObject({ isBest: true, isOwn: true, notes: [] });
    expect(second?.cells[1]).toMatchObject({
      isOwn: false,
      unranked: "not ranked: 40% of a charge’s outline merges",
      notes: [],
    });
  });

  test("all that are level at the top of a row are marked, and what has no place is not", () => {
    const [row] = matrix.rows;
    if (row === undefined) throw new Error("the matrix has rows");
    const cell = (clarity: number, isRanked = true) =>
      ({
        with: "#ffffff",
        name: "white",
        clarity,
        mergedOutline: 0,
        merges: false,
        isRanked,
        isBest: false,
      }) as const;
    const mark = (...cells: readonly ReturnType<typeof cell>[]) =>
      view(ranked({ matrix: { ...matrix, rows: [{ ...row, cells }] } })).rows[0]?.cells.map(
        (one) => one && `${one.clarity}${one.isBest ? " best" : ""}`,
      );
    expect(mark(cell(98.7), cell(99.2), cell(98.4))).toEqual(["99% best", "99% best", "98%"]);
    expect(mark(cell(80), cell(100, false), cell(79.6))).toEqual(["100%", "80% best", "80% best"]);
  });

  test("what makes two colours one is said where it has a place, and in the caption", () => {
    const [row] = matrix.rows;
    if (row === undefined) throw new Error("the matrix has rows");
    const cells = row.cells.map((cell) => cell && { ...cell, merges: true, isRanked: true });
    const shown = view(ranked({ matrix: { ...matrix, rows: [{ ...row, cells }] } }));
    expect(shown.rows[0]?.cells.find((cell) => cell !== null)).toMatchObject({
      merges: true,
      unranked: undefined,
    });
    expect(shown.caption).toContain("“Merges”: two colours become one.");
    expect(view(ranked({ matrix })).caption).not.toContain("“Merges”: two colours become one.");
  });

  test("the study's own column comes first, then those its author tried; columns of one name are told apart by their colour", () => {
    expect(view(ranked({ matrix })).columns).toEqual([
      { hex: "#f4c430", name: "straw" },
      { hex: "#ffffff", name: "white" },
      { hex: null, name: "its own hue" },
    ]);
    const columns = [
      { hex: "#ffffff", name: "white" },
      { hex: "#f7f3e8", name: "white" },
      { hex: null, name: "its own hue" },
    ] as const;
    expect(view(ranked({ matrix: { ...matrix, columns } })).columns).toEqual([
      { hex: "#ffffff", name: "white", code: "#ffffff" },
      { hex: "#f7f3e8", name: "white", code: "#f7f3e8" },
      { hex: null, name: "its own hue" },
    ]);
  });

  test("the caption says what is there, and nothing else", () => {
    expect(view(ranked({ matrix })).caption).toEqual([
      "A row changes one colour of the flag, a column says into which.",
      "Under each flag its clarity; the original has 74%.",
      "Bold: the clearest of its row, more than one where several are as clear.",
      "“Not ranked”: a third of a charge’s outline or more would merge.",
      "A dash: not tried, or no change to be seen.",
    ]);
    expect(view(ranked({ matrix })).captionOfBlocks).toEqual([
      "Under each flag its clarity; the original has 74%.",
      "Each block changes one colour of the flag; over each number stands into which.",
      "Bold: the clearest of its row, more than one where several are as clear.",
      "“Not ranked”: a third of a charge’s outline or more would merge.",
    ]);
    const [row] = matrix.rows;
    if (row === undefined) throw new Error("the matrix has rows");
    const part = ranked({ matrix: { ...matrix, rows: [row], leftOut: { rows: 2, columns: 6 } } });
    const caption = view({ ...part, change: { ...part.change, only: "path" } }).caption;
    expect(caption.slice(3)).toEqual([
      "A dash: not tried, or no change to be seen.",
      "The change of this study is of one part alone, and not among them.",
      "Not shown: 2 more of the flag’s colours and 6 more replacements.",
    ]);
  });

  test("is left out where nothing was tried", () => {
    expect(presentMatrix(ranked({}), linkFrom("/studies/a-square/"), createFormat("en"))).toBeUndefined();
  });
});

test("a change has a cell where its row and its colour are", () => {
  expect(changeId("#7a1020", "#ffd700")).toBe("change-7a1020-ffd700");
  expect(hasCell(matrix, "#c8202f", "#f4c430")).toBe(true);
  expect(hasCell(matrix, "#12235c", "#f4c430")).toBe(false);
  expect(hasCell(undefined, "#c8202f", "#f4c430")).toBe(false);
});
