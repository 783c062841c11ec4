import { expect, test } from "vitest";
import { iconSvg } from "../../../src/publish/pictures/icon.ts";
import { readXml } from "../dom.ts";

test("a square drawing that is well-formed, small, and has no hue", () => {
  const root = readXml(iconSvg).documentElement;
  expect([root.localName, root.namespaceURI]).toEqual(["svg", "http://www.w3.org/2000/svg"]);
  const [x, y, width, height] = (root.getAttribute("viewBox") ?? "").split(" ");
  expect([x, y, width]).toEqual(["0", "0", height]);
  expect(Buffer.byteLength(iconSvg)).toBeLessThan(1000);
  const colours = iconSvg.match(/#[0-9a-f]{6}/g) ?? [];
  expect(colours.length).toBeGreaterThan(3);
  for (const colour of colours) expect(colour).toMatch(/^#([0-9a-f]{2})\1\1$/);
});

test("it counterchanges: each half has the other's colour across the line", () => {
  const fills = [...readXml(iconSvg).querySelectorAll("path")].map((path) => path.getAttribute("fill"));
  const [ground, hoist, onHoist, onFly] = fills;
  expect(onHoist).toBe(ground);
  expect(onFly).toBe(hoist);
  expect(ground).not.toBe(hoist);
});
