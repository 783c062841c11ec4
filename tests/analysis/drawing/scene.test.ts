// A scene is rendered once and serves many viewings: each must give what it gives when rendered anew.
import { describe, expect, test } from "vitest";
import { inspectDrawing, inspectScene } from "../../../src/analysis/drawing/inspect.ts";
import { renderScene } from "../../../src/analysis/drawing/scene.ts";
import { selectInstances } from "../../../src/svg/limitedchange.ts";
import { disc, field, red, resolve, stripe, white } from "../sight.ts";

const resolved = resolve(field(white) + disc(150, 100, 50, red) + stripe(180, 2, red));

describe("renderScene", () => {
  test("counts every pixel of the flag once", async () => {
    const { shapes, areas, map } = await renderScene(resolved, { distance: 0 });
    expect(shapes.paints).toHaveLength(2);
    expect(areas.flagPixels).toBe(map.width * map.height);
    expect([...areas.pixels].reduce((sum, pixels) => sum + pixels, 0)).toBe(areas.flagPixels);
  });

  // The disc is drawn before the stripe.
  test("sets the selected part apart", async () => {
    const only = selectInstances(resolved, "#d");
    if (typeof only === "string") throw new Error(only);
    const { shapes } = await renderScene(resolved, { distance: 0, change: { replace: red, only } });
    expect(shapes.paints.map(({ selected }) => selected)).toEqual([false, true, false]);
  });

  test.each([0, 40, 160])(
    "serves a viewing from %d flag heights as a scene of its own does",
    async (distance) => {
      const scene = await renderScene(resolved, { distance: 40 });
      for (const viewing of [{ distance }, { distance, focus: { colour: red } }] as const) {
        const { table, warnings } = await inspectScene(scene, viewing);
        const anew = await inspectDrawing(resolved, viewing);
        expect(table).toEqual(anew.table);
        expect(warnings).toEqual(anew.warnings);
      }
    },
  );
});
