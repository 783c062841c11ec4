// Paints with their looks, from the full drawing (distance 0).
import { describe, expect, test } from "vitest";
import { inspectDrawing, tabulateApart } from "../../../src/analysis/drawing/inspect.ts";
import { linearOf } from "../../../src/colour/colourtext.ts";
import { readDrawing } from "../../../src/svg/gate/sanitise.ts";
import { resolveDrawing } from "../../../src/svg/instance.ts";
import { selectInstances } from "../../../src/svg/limitedchange.ts";

const box = 'width="30" height="20"';

function resolve(body: string) {
  const text = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 30 20">${body}</svg>`;
  const { value, problems } = readDrawing("a.svg", new TextEncoder().encode(text));
  if (value === undefined) throw new Error(problems.map(({ reason }) => reason).join(" "));
  return resolveDrawing(value);
}

const inspect = (body: string) => inspectDrawing(resolve(body), { distance: 0 });

describe("inspectDrawing", () => {
  test("paints by area, each with its look", async () => {
    const { table, looks, paints, proportions, warnings } = await inspect(
      `<rect width="10" height="20" fill="red"/><rect x="10" width="20" height="20" fill="blue"/>`,
    );
    expect(table.paints.map(({ id }) => id)).toEqual(["p1", "p2"]);
    expect([...table.paints][0]?.share).toBeCloseTo(2 / 3, 3);
    expect(looks).toEqual([
      { hex: "#0000ff", name: "blue", uneven: null },
      { hex: "#ff0000", name: "red", uneven: null },
    ]);
    expect(paints.map(({ declared }) => declared)).toEqual(["#0000ff", "#ff0000"]);
    expect(table.edges).toEqual([expect.objectContaining({ a: 0, b: 1, length: 1 })]);
    expect(proportions).toEqual([2, 3]);
    expect(warnings).toEqual([]);
  });

  test("a translucent paint looks as it is mixed", async () => {
    // 60 % red over white: 255, 0.4 · 255 = 102 twice.
    const { looks } = await inspect(
      `<rect ${box} fill="white"/><rect width="20" height="20" fill="red" fill-opacity="0.6"/>`,
    );
    expect([...looks][0]).toMatchObject({ hex: "#ff6666", uneven: null });
  });

  test("a gradient from black to white is uneven, with its ends and its mean in light", async () => {
    const { looks } = await inspect(
      `<linearGradient id="l"><stop stop-color="black"/><stop offset="1" stop-color="white"/></linearGradient><rect ${box} fill="url(#l)"/>`,
    );
    const [look] = looks;
    const lightOf = (hex = "#000000" as `#${string}`): number => linearOf(hex).linearG;
    // The mean of v^2.4-like light over encoded v from 0 to 1: ∫ linear(v) dv. With linear(v) = ((v + 0.055) / 1.055)^2.4
    // above 0.04045 it is 1.055 / 3.4 · (1 − (0.09545 / 1.055)^3.4) + 0.04045² / (2 · 12.92) = 0.31028.
    expect(lightOf(look?.hex)).toBeCloseTo(0.3103, 2);
    // The outermost 2 %: on average 99 % and 1 % along the way, 0.9776 and 0.00077 of the light; a step of 8 bits is 0.009.
    expect(Math.abs(lightOf(look?.uneven?.lightest) - 0.9776)).toBeLessThan(0.009);
    expect(Math.abs(lightOf(look?.uneven?.darkest) - 0.00077)).toBeLessThan(0.009);
  });

  test("a gradient between two neighbouring shades is not uneven", async () => {
    const { looks } = await inspect(
      '<linearGradient id="l"><stop stop-color="#c00000"/><stop offset="1" stop-color="#c40000"/></linearGradient><rect width="30" height="20" fill="url(#l)"/>',
    );
    expect([...looks][0]?.uneven).toBeNull();
  });

  test("shapes that hardly show are left out, and counted", async () => {
    const { table, warnings } = await inspect(
      `<rect ${box} fill="white"/><circle cx="9" cy="9" r="5" fill="red" opacity="0.3"/><circle cx="20" cy="9" r="5" fill="red" opacity="0.3"/>`,
    );
    expect(table.paints).toHaveLength(1);
    expect(warnings).toEqual([{ about: "faint", count: 2 }]);
  });

  test("a selected part stands for itself, named after its paint", async () => {
    const resolved = resolve(
      `<rect ${box} fill="white"/><rect width="10" height="20" fill="red"/><rect id="r" x="20" width="10" height="20" fill="red"/>`,
    );
    const only = selectInstances(resolved, "#r");
    if (typeof only === "string") throw new Error(only);
    const { table, looks, paints } = await inspectDrawing(resolved, {
      distance: 0,
      change: { replace: "#ff0000", only },
    });
    // Red has two thirds together and comes first.
    expect(table.paints.map(({ id }) => id)).toEqual(["p1", "p1s", "p2"]);
    expect(looks.map(({ name }) => name)).toEqual(["red", "red, selected part", "white"]);
    expect(paints.map(({ selected }) => selected)).toEqual([false, true, false]);
  });

  test("names are unique in a flag", async () => {
    const { looks } = await inspect(
      `<rect ${box} fill="#ff0000"/><rect width="9" height="9" fill="#c00000"/><rect x="9" width="9" height="9" fill="#e02020"/>`,
    );
    expect(new Set(looks.map(({ name }) => name)).size).toBe(3);
  });

  test("a drawing of nothing has no paints", async () => {
    expect((await inspect("")).paints).toEqual([]);
  });
});

describe("tabulateApart", () => {
  // Three near-equal reds, a thin line of one of them, and a charge: what vanishes and what is joined both matter.
  const resolved = resolve(
    `<rect ${box} fill="white"/><rect width="12" height="20" fill="#c8202f"/><rect x="12" width="4" height="20" fill="#c4222f"/><rect y="6" width="16" height="0.2" fill="#c2202c"/><circle cx="23" cy="10" r="4" fill="#c2202c"/>`,
  );

  test.each([0, 10, 40, 160])(
    "gives the table that a change would, from %d flag heights",
    async (distance) => {
      const viewing = { distance };
      const { ground } = await inspectDrawing(resolved, viewing);
      for (const replace of ["#c8202f", "#c4222f", "#c2202c", "#ffffff"] as const) {
        const { table, looks } = await inspectDrawing(resolved, { ...viewing, change: { replace } });
        const apart = tabulateApart(ground, viewing, replace);
        expect(apart.table).toEqual({ ...table, focus: { ...table.focus, steps: [] } });
        expect(apart.looks).toEqual(looks);
      }
    },
  );
});
