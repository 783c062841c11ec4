// What a browser shows of an author's drawing is what we publish of it, in the same browser, and what we measure: over small
// drawings that are each about one thing. Each is accepted with the same picture, or refused by its rule, with a place.
import type { Browser } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import type { Outcome } from "../../src/problem/problem.ts";
import { readDrawing } from "../../src/svg/gate/sanitise.ts";
import type { Drawing } from "../../src/svg/tree.ts";
import { writeDrawing, writeSized } from "../../src/svg/writesvg.ts";
import { listCollection } from "../collection/files.ts";
import { largestDifference, longSide, proveShown } from "../collection/shown.ts";
import { bytesOf } from "../svg/drawing.ts";
import { type Probe, probes } from "../svg/probe.ts";
import { drawInBrowser, drawMeasured, findDifference, openGround, type Picture } from "./alike.ts";
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
