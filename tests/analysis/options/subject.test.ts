import { describe, expect, test } from "vitest";
import { openDrawing } from "../../../src/analysis/drawing/opendrawing.ts";
import { findSubjects } from "../../../src/analysis/options/subject.ts";
import { farStripes } from "../../colour/farcolours.ts";
import { disc, drawing, field, stripes } from "../drawing.ts";

async function subjectsOf(inside: string, distance = 0) {
  const { value } = await openDrawing("a.svg", drawing(inside), { distance });
  if (value === undefined) throw new Error("the drawing could not be opened");
  const found = findSubjects(value);
  return {
    ...found,
    hexes: found.subjects.map(({ looks, paint }) => looks[paint]?.hex),
    inspection: value.inspection,
  };
}

describe("findSubjects", () => {
  test("the flat paints over 0.4 % of the area, largest first", async () => {
    // A disc of radius 0.7 covers π · 0.49 / 600 = 0.26 %, one of radius 1 covers 0.52 %.
    const { hexes, own, leftOut } = await subjectsOf(
      `${field("#c8202f")}${disc("#ffffff")}<circle cx="3" cy="3" r="1" fill="#12235c"/><circle cx="26" cy="3" r="0.7" fill="#000000"/>`,
    );
    expect(hexes).toEqual(["#c8202f", "#ffffff", "#12235c"]);
    expect(own.map(({ hex, kind }) => `${kind} ${hex}`)).toEqual([
      "own #c8202f",
      "own #ffffff",
      "own #12235c",
    ]);
    expect(leftOut).toEqual({ uneven: [], unseen: [], shared: [] });
  });

  test("a gradient and translucent paint are left out, and named", async () => {
    const gradient = `<defs><linearGradient id="g"><stop stop-color="#ffffff"/><stop offset="1" stop-color="#fdfdfd"/></linearGradient></defs>`;
    const { hexes, leftOut } = await subjectsOf(
      `${gradient}${field("#c8202f")}<rect width="8" height="8" fill="url(#g)"/><rect x="20" width="8" height="8" fill="#12235c" opacity="0.7"/>`,
    );
    expect(hexes).toEqual(["#c8202f"]);
    expect(leftOut).toMatchObject({ unseen: [], shared: [] });
    expect(leftOut.uneven).toHaveLength(2);
  });

  test("a colour that stands in a gradient too is tried, and said to be", async () => {
    const gradient = `<defs><linearGradient id="g"><stop stop-color="#c8202f"/><stop offset="1" stop-color="#c4202f"/></linearGradient></defs>`;
    const { hexes, leftOut } = await subjectsOf(
      `${gradient}${field("#c8202f")}<rect width="8" height="8" fill="url(#g)"/>`,
    );
    expect(hexes).toEqual(["#c8202f"]);
    expect(leftOut.shared).toEqual(["red"]);
  });

  test("a paint that nobody sees from there is left out, and named", async () => {
    // From 160 flag heights parts under 0.0465 heights (0.93 units) are not told apart.
    const { hexes, leftOut } = await subjectsOf(
      `${field("#c8202f")}${disc("#ffffff")}<rect y="2" width="30" height="0.5" fill="#12235c"/>`,
      160,
    );
    expect(hexes).toEqual(["#c8202f", "#ffffff"]);
    expect(leftOut.unseen).toEqual(["dark blue"]);
  });

  test("near-equal paints are one, but each is measured as what it becomes without the other", async () => {
    const { subjects, hexes, inspection } = await subjectsOf(stripes("#c8202f", "#c4222f", "#ffffff"), 10);
    expect(hexes).toEqual(expect.arrayContaining(["#c8202f", "#c4222f", "#ffffff"]));
    expect(inspection.table.edges).toHaveLength(1);
    const apart = subjects.find(({ looks, paint }) => looks[paint]?.hex === "#c4222f");
    expect(apart?.table.edges.filter(({ a, b }) => a === apart.paint || b === apart.paint)).toHaveLength(2);
  });

  test("one colour has no edge to change", async () => {
    expect(await subjectsOf(field("#c8202f"))).toMatchObject({
      subjects: [],
      leftOut: { uneven: [], unseen: [], shared: [] },
    });
  });

  test("of sixty paints the 24 largest are tried, and that is said", async () => {
    const { subjects, own, leftOut, tried } = await subjectsOf(farStripes(60, 30));
    expect(subjects).toHaveLength(24);
    expect(own).toHaveLength(24);
    expect(leftOut.uneven).toEqual(["other colours"]);
    expect(tried).toEqual({ paints: 24, of: 48 });
  });
});
