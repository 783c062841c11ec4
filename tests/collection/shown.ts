// The proof that the form in which drawings are measured and published shows what the author's file does: each real drawing
// as its author wrote it in a browser, beside what we write of it in the same browser and in the measuring renderer.
import { readFileSync } from "node:fs";
import { readDrawing } from "../../src/svg/gate/sanitise.ts";
import { writeDrawing, writeSized } from "../../src/svg/writesvg.ts";
import { drawInBrowser, drawMeasured, findDifference, type Ground } from "../browser/alike.ts";
import type { CollectionFile } from "./files.ts";

/** Pixels of the longer side. */
export const longSide = 480;

/** Largest share of the picture in one piece that may differ. */
export const largestDifference = 0.005;

/** Largest share of the picture in one piece that differs, of what we write, in the browser and as it is measured. */
export interface ShownProof {
  readonly name: string;
  readonly browser: number;
  readonly measured: number;
}

/** Measures all of it for some files. Throws where one is refused. */
export async function proveShown(
  ground: Ground,
  files: readonly CollectionFile[],
): Promise<readonly ShownProof[]> {
  const drawings = files.map(({ name, path }) => {
    const bytes = readFileSync(path);
    const { value: drawing, problems } = readDrawing(name, bytes);
    if (drawing === undefined) throw new Error(`${name} was refused: ${problems[0]?.reason}`);
    const { width, height } = drawing.viewBox;
    const scale = longSide / Math.max(width, height);
    const size = { width: Math.round(width * scale), height: Math.round(height * scale) };
    return { name, drawing, size, text: bytes.toString("utf8") };
  });
  const theirs = await drawInBrowser(
    ground,
    drawings.map(({ text, size }) => ({ text, ...size })),
  );
  const ours = await drawInBrowser(
    ground,
    drawings.map(({ drawing, size }) => ({ text: writeDrawing(drawing), ...size })),
  );
  const proofs: ShownProof[] = [];
  for (const [index, { name, drawing, size }] of drawings.entries()) {
    const shown = theirs[index];
    const written = ours[index];
    if (shown === undefined || written === undefined) throw new Error(`${name} was not drawn`);
    const measured = await drawMeasured(writeSized(drawing, size.width, size.height));
    proofs.push({
      name,
      browser: findDifference(shown, written),
      measured: findDifference(shown, measured),
    });
  }
  return proofs;
}
