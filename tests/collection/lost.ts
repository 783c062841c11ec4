// For npm run truth: is everything that is seen measured? Over all files of both open collections: flat colours that the
// true rendering shows, over more than a thousandth of the flag, where the label map has another.
import { readFileSync } from "node:fs";
import { renderScene } from "../../src/analysis/drawing/scene.ts";
import type { Lost } from "../../src/analysis/drawing/unmeasured.ts";
import { readDrawing } from "../../src/svg/gate/sanitise.ts";
import { resolveDrawing } from "../../src/svg/instance.ts";
import { listCollection } from "./files.ts";

/** Returns how many of every `every`th file were looked at, and the colours that are lost, file by file. */
export async function countLost(every = 1): Promise<{
  readonly files: number;
  readonly lost: readonly (Lost & { readonly file: string })[];
}> {
  const files = listCollection().filter((_, index) => index % every === 0);
  const lost: (Lost & { readonly file: string })[] = [];
  for (const { name, path } of files) {
    const { value } = readDrawing(name, readFileSync(path));
    if (value === undefined) throw new Error(`${name} was refused`);
    const scene = await renderScene(resolveDrawing(value), { distance: 40 });
    lost.push(...scene.lost.map((colour) => ({ ...colour, file: name })));
  }
  return { files: files.length, lost };
}
