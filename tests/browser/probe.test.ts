// What a browser shows of an author's drawing is what we publish of it, in the same browser, and what we measure: over small
// drawings that are each about one thing. Each is accepted with the same picture, or refused by its rule, with a place.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { measureEffects, mostOtherwise } from "../../src/analysis/drawing/effectshown.ts";
import { openDrawing } from "../../src/analysis/drawing/opendrawing.ts";
import type { Outcome } from "../../src/problem/problem.ts";
import { readDrawing } from "../../src/svg/gate/sanitise.ts";
import type { Drawing } from "../../src/svg/tree.ts";
import { writeDrawing, writeSized } from "../../src/svg/writesvg.ts";
import { listCollection } from "../collection/files.ts";
import { largestDifference, longSide, proveShown } from "../collection/shown.ts";
import { bytesOf } from "../svg/drawing.ts";
import { type Probe, probes } from "../svg/probe.ts";
import { drawInBrowser, drawMeasured, findDifference, isOther, openGround, type Picture } from "./alike.ts";
import { drawMap } from "./mapped.ts";
import { shareBrowser } from "./room.ts";

const size = { width: 300, height: 200 };

let browser: Browser;
let theirs: ReadonlyMap<string, Picture>;
let ours: ReadonlyMap<string, Picture>;

const read = ({ text }: Probe): Outcome<Drawing> => readDrawing("probe.svg", bytesOf(text));

beforeAll(async () => {
  browser = await shareBrowser();
  const ground = await openGround(browser, size, 6, 8);
  const draw = async (textOf: (probe: Probe) => string): Promise<ReadonlyMap<string, Picture>> => {
    const pictures = await drawInBrowser(
      ground,
      probes.map((probe) => ({ text: textOf(probe), ...size })),
    );
    return new Map(probes.flatMap(({ name }, index) => (pictures[index] ? [[name, pictures[index]]] : [])));
  };
  theirs = await draw(({ text }) => text);
  ours = await draw((probe) => {
    const { value } = read(probe);
    return value === undefined ? probe.text : writeDrawing(value);
  });
}, 300_000);

test("there are enough of them, each with a name of its own", () => {
  expect(probes.length).toBeGreaterThanOrEqual(150);
  expect(new Set(probes.map(({ name }) => name)).size).toBe(probes.length);
});

test.each(probes.filter(({ rule }) => rule === undefined))("$name", async (probe) => {
  const { value, problems } = read(probe);
  if (value === undefined) throw new Error(problems.map(({ reason }) => reason).join("\n"));
  const [shown, published] = [theirs.get(probe.name), ours.get(probe.name)];
  if (shown === undefined || published === undefined) throw new Error("it was not drawn");
  expect(findDifference(shown, published)).toBeLessThanOrEqual(largestDifference);
  const measured = await drawMeasured(writeSized(value, size.width, size.height));
  expect(findDifference(shown, measured)).toBeLessThanOrEqual(largestDifference);
  const mapped = await drawMap(value, shown);
  expect(mapped === undefined ? 0 : findDifference(shown, mapped)).toBeLessThanOrEqual(largestDifference);
});

test.each(probes.filter(({ rule }) => rule !== undefined))("$name: refused by $rule", (probe) => {
  const { value, problems } = read(probe);
  expect(value).toBeUndefined();
  const errors = problems.filter(({ severity }) => severity === "error");
  expect(errors.map(({ rule }) => rule)).toEqual([probe.rule]);
  expect(errors[0]?.place?.line).toBeGreaterThanOrEqual(1);
  expect(errors[0]?.hint).toMatch(/\S/);
});

test("a difference would be seen: another colour, a shape that is gone, a shape that is moved", async () => {
  const ground = await openGround(browser, size, 2, 2);
  const svg = (body: string): string =>
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 200">${body}</svg>`;
  const rect = '<rect x="50" y="40" width="30" height="20" fill="#00aa00"/>';
  const [same, coloured, gone, moved] = await drawInBrowser(
    ground,
    [rect, rect.replace("aa", "88"), "", rect.replace("50", "90")].map((body) => ({
      text: svg(body),
      ...size,
    })),
  );
  if (!same || !coloured || !gone || !moved) throw new Error("nothing was drawn");
  expect(findDifference(same, same)).toBe(0);
  // 30 by 20 of 300 by 200 is 1 %.
  for (const other of [coloured, gone, moved]) expect(findDifference(same, other)).toBeCloseTo(0.01, 4);
});

test("what drawing programs write is measured, published and shown alike, but for what is told to be left out", {
  timeout: 300_000,
}, async () => {
  const folder = join(import.meta.dirname, "../svg/exports");
  const files = readdirSync(folder).filter((name) => name.endsWith(".svg"));
  expect(files.length).toBeGreaterThanOrEqual(17);
  const ground = await openGround(browser, { width: longSide, height: longSide }, 4, 5);
  const proofs = await proveShown(
    ground,
    files.map((name) => ({ name, path: join(folder, name) })),
  );
  for (const { name, browser: published, measured } of proofs) {
    const opened = await openDrawing(name, readFileSync(join(folder, name)), { distance: 0 });
    expect(
      opened.problems.filter(({ severity }) => severity === "error"),
      name,
    ).toEqual([]);
    const effects = opened.value?.drawing.effects === undefined ? 0 : mostOtherwise;
    expect(published, name).toBeLessThanOrEqual(largestDifference + effects);
    expect(measured, name).toBeLessThanOrEqual(largestDifference + effects);
    expect(opened.value?.inspection.map.exactShare, name).toBeGreaterThan(0.98);
  }
});

test("a browser shows filters and blends as the renderer does by which they are judged", async () => {
  const disc = (more: string): string =>
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 200"><rect width="300" height="200" fill="#fff"/><path d="M0 100h300v40H0z" fill="#c00"/>${more}</svg>`;
  const filter = (steps: string, more = ""): string =>
    disc(
      `<filter id="f" ${more}>${steps}</filter><circle cx="150" cy="100" r="60" fill="#08a" filter="url(#f)"/>`,
    );
  const texts = [
    filter('<feGaussianBlur stdDeviation="9"/>'),
    filter(
      '<feGaussianBlur stdDeviation="9 0"/>',
      'color-interpolation-filters="sRGB" x="-50%" width="200%"',
    ),
    filter('<feDropShadow dx="12" dy="8" stdDeviation="4" flood-opacity=".6"/>'),
    filter(
      '<feOffset dx="20" dy="20"/>',
      'x="0" y="0" width="300" height="150" filterUnits="userSpaceOnUse"',
    ),
    filter('<feMorphology operator="erode" radius="6"/>'),
    filter(`<feColorMatrix values="0 0 1 0 0  0 1 0 0 0  1 0 0 0 0  0 0 0 1 0"/>`),
    filter('<feColorMatrix type="hueRotate" values="90"/>'),
    filter('<feComponentTransfer><feFuncB type="linear" slope=".4" intercept=".1"/></feComponentTransfer>'),
    filter('<feFlood flood-color="#fc0" flood-opacity=".5"/><feBlend in2="SourceGraphic" mode="multiply"/>'),
    filter('<feOffset dx="30" result="a"/><feComposite in="SourceGraphic" in2="a" operator="out"/>'),
    ...["multiply", "difference", "luminosity", "color-dodge"].map((mode) =>
      disc(
        `<g style="isolation:isolate"><path d="M100 0h80v200h-80z" fill="#fc0"/><circle cx="150" cy="100" r="60" fill="#08a" style="mix-blend-mode:${mode}"/></g>`,
      ),
    ),
  ];
  const drawings = texts.map((text) => readDrawing("a.svg", bytesOf(text)).value);
  const ground = await openGround(browser, size, 6, 5);
  const pictures = await drawInBrowser(
    ground,
    texts.flatMap((text, index) => {
      const drawing = drawings[index];
      if (drawing === undefined) throw new Error(`${text} was refused`);
      return [text, writeDrawing(drawing)].map((each) => ({ text: each, ...size }));
    }),
  );
  for (const [index, drawing] of drawings.entries()) {
    const [with_, without] = [pictures[2 * index], pictures[2 * index + 1]];
    if (drawing === undefined || with_ === undefined || without === undefined) throw new Error("not drawn");
    const share = countDifferent(with_, without);
    expect(share, texts[index]).toBeGreaterThan(0.01);
    expect(Math.abs((await measureEffects(drawing)) - share), texts[index]).toBeLessThan(0.01);
  }
});

/** The share of the pixels that differ by ΔE00 5 or more. */
function countDifferent(a: Picture, b: Picture): number {
  let other = 0;
  for (let at = 0; at < a.rgb.length; at += 3) if (isOther(a.rgb, b.rgb, at)) other += 1;
  return other / (a.width * a.height);
}

test("every fortieth drawing of the collections is published and measured as its author's file is shown", {
  timeout: 300_000,
}, async () => {
  const files = listCollection().filter((_, index) => index % 40 === 0);
  const ground = await openGround(browser, { width: longSide, height: longSide }, 4, 4);
  for (const { name, browser: published, measured } of await proveShown(ground, files)) {
    expect(published, name).toBeLessThanOrEqual(largestDifference);
    expect(measured, name).toBeLessThanOrEqual(largestDifference);
  }
});
