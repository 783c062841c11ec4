// Test support. The label map of a drawing as a picture: each paint in its colour.
import { renderScene } from "../../src/analysis/drawing/scene.ts";
import { resolveDrawing } from "../../src/svg/instance.ts";
import type { Drawing } from "../../src/svg/tree.ts";
import type { Picture } from "./alike.ts";

/**
 * Returns what would be measured, in the size of `shown`, with the pixels of `shown` where a paint is of more than one colour;
 * undefined where the drawing is refused because of what shows, or warned of for what is faint.
 */
export async function drawMap(drawing: Drawing, shown: Picture): Promise<Picture | undefined> {
  const scene = await renderScene(resolveDrawing(drawing), { distance: 40, heightPixels: shown.height });
  if (scene.lost.length > 0 || scene.shapes.faint.length > 0) return undefined;
  const rgb = new Uint8Array(shown.rgb);
  const colours = [...scene.shapes.paints].map(({ flat, declared }) =>
    flat && declared !== null ? Buffer.from(declared.slice(1), "hex") : undefined,
  );
  const ground = Buffer.alloc(3, 0xff);
  for (const [at, label] of scene.map.labels.entries()) {
    const colour = label === 0 ? ground : colours[label - 1];
    if (colour !== undefined) rgb.set(colour, 3 * at);
  }
  return { width: scene.map.width, height: scene.map.height, rgb };
}
