import { describe, expect, test } from "vitest";
import { openDrawing, writeRedesign } from "../../../src/analysis/drawing/opendrawing.ts";
import { bytesOf, disc, drawing, field } from "../drawing.ts";

const rulesOf = async (bytes: Uint8Array, focus?: { readonly colour: string }) =>
  (
    await openDrawing("a.svg", bytes, { distance: 0, ...(focus === undefined ? {} : { focus }) })
  ).problems.map(({ rule }) => rule);

describe("openDrawing", () => {
  test("a drawing, with its paints and a found focus", async () => {
    const { value, problems } = await openDrawing("a.svg", drawing(field("#c8202f") + disc("#ffffff")), {
      distance: 0,
    });
    expect(problems).toEqual([]);
    expect(value?.inspection.looks.map(({ hex }) => hex)).toEqual(["#c8202f", "#ffffff"]);
    expect(value?.inspection.table.focus.source).toBe("found");
  });

  test("a focus that the author names by a colour of the drawing", async () => {
    const bytes = drawing(field("#c8202f") + disc("#ffffff"));
    const { value } = await openDrawing("a.svg", bytes, { distance: 0, focus: { colour: "red" } });
    expect(value?.inspection.table.focus.source).toBe("named");
    expect(value?.viewing.focus).toEqual({ colour: "#c8202f" });
  });

  test("what cannot be opened comes back as a problem", async () => {
    expect(await rulesOf(bytesOf("no drawing"))).toHaveLength(1);
    expect(await rulesOf(drawing(""))).toEqual(["study/nothing-drawn"]);
    expect(await rulesOf(drawing(field("#c8202f")), { colour: "#00ff00" })).toEqual(["study/colour-absent"]);
  });
});

test("a redesign says that it is a proposal", async () => {
  const { value } = await openDrawing("a.svg", drawing(field("#c8202f")), { distance: 0 });
  expect(value === undefined ? "" : writeRedesign(value.drawing)).toContain("<metadata>Unofficial study: ");
});
