// A second opinion: DOMPurify finds nothing to remove in what we publish. #security
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import createDOMPurify, { type Config } from "dompurify";
// jsdom brings no types of its own; a window is all that is asked of it.
// @ts-expect-error TS7016
import { JSDOM } from "jsdom";
import { describe, expect, test, vi } from "vitest";
import { readDrawing } from "../../../src/svg/gate/sanitise.ts";
import { describeDrawing, writeDrawing } from "../../../src/svg/writesvg.ts";
import { listCollection } from "../../collection/files.ts";

// Machines that run tests may be busy.
vi.setConfig({ testTimeout: 120_000 });

const { window } = new JSDOM("");
const purifier = createDOMPurify(window);
/** Its HTML parser is used: the harder case, a drawing that somebody puts into a page. */
const config: Config = {
  USE_PROFILES: { svg: true },
  // <use> is refused there because it can show another file; ours point at #ids only, which active.ts tests apart.
  // <metadata> holds the plain sentence that a redesign is unofficial.
  // <body> is what the parser puts around the drawing.
  ADD_TAGS: ["use", "metadata", "body"],
};

function listRemoved(svg: string): readonly string[] {
  purifier.sanitize(svg, config);
  return purifier.removed.map((entry) =>
    "attribute" in entry
      ? `attribute ${entry.attribute?.name}="${entry.attribute?.value}"`
      : `element ${entry.element.nodeName}`,
  );
}

function expectClean(name: string, bytes: Uint8Array): boolean {
  const { value } = readDrawing(name, bytes);
  if (value === undefined) return false;
  expect(listRemoved(writeDrawing(describeDrawing(value, "Unofficial study."))), name).toEqual([]);
  return true;
}

describe("DOMPurify removes nothing from a drawing that passed the gate", () => {
  test("the oracle itself removes what it should", () => {
    const svg =
      '<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script><rect onclick="alert(1)"/><foreignObject/></svg>';
    expect(listRemoved(svg)).toHaveLength(3);
  });

  test("hostile drawings", () => {
    const folder = fileURLToPath(new URL("../../hostile/svg/", import.meta.url));
    const passed = readdirSync(folder).filter((name) => expectClean(name, readFileSync(folder + name)));
    expect(passed.length).toBeGreaterThanOrEqual(35);
  });

  test("drawings of two open collections: every fourth, or all", { timeout: 240_000 }, () => {
    const step = process.env.EVERY_DRAWING === undefined ? 4 : 1;
    const tried = listCollection().filter((_, index) => index % step === 0);
    expect(tried.length).toBeGreaterThan(190);
    for (const { name, path } of tried) expect(expectClean(name, readFileSync(path)), name).toBe(true);
  });
});
