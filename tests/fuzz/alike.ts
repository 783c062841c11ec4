// Test support. Random drawings that the gate accepts, in a browser and by the measuring renderer, which have to draw them alike.
import { readDrawing } from "../../src/svg/gate/sanitise.ts";
import type { Drawing } from "../../src/svg/tree.ts";
import { writeSized } from "../../src/svg/writesvg.ts";
import { drawInBrowser, drawMeasured, findDifference, openGround } from "../browser/alike.ts";
import { launchBrowser } from "../browser/browser.ts";
import { drawRandom, size } from "./randomdrawing.ts";

/** The share of the flag from which a difference is told. */
const told = 0.005;

/** A drawing that was accepted, its seed, and the share of it that differs. */
export interface Unlike {
  readonly seed: string;
  readonly text: string;
  readonly share: number;
}

/** Returns those of `count` accepted drawings that the two do not draw alike. */
export async function findUnlike(seed: number, count: number): Promise<readonly Unlike[]> {
  const accepted: { readonly seed: string; readonly text: string; readonly drawing: Drawing }[] = [];
  for (let index = 0; accepted.length < count && index < 20 * count; index += 1) {
    const text = drawRandom(seed * 100_000 + index);
    const { value } = readDrawing("random.svg", new TextEncoder().encode(text));
    if (value !== undefined) accepted.push({ seed: `${seed}-${index}`, text, drawing: value });
  }
  if (accepted.length < count)
    throw new RangeError(`the gate accepts ${accepted.length} drawings of seed ${seed}`);
  const browser = await launchBrowser();
  try {
    const ground = await openGround(browser, size, 6, 8);
    const theirs = await drawInBrowser(
      ground,
      accepted.map(({ text }) => ({ text, ...size })),
    );
    const unlike: Unlike[] = [];
    for (const [index, { drawing, ...one }] of accepted.entries()) {
      const ours = await drawMeasured(writeSized(drawing, size.width, size.height));
      const their = theirs[index];
      const share = their === undefined ? 1 : findDifference(their, ours);
      if (share > told) unlike.push({ ...one, share });
    }
    return unlike;
  } finally {
    await browser.close();
  }
}
