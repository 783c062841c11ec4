import { expect, test } from "vitest";
import * as allow from "../../src/svg/allow.ts";

test("nothing is both allowed and refused, or allowed and dropped in silence", () => {
  for (const name of allow.elements) {
    expect(allow.refusedElements.has(name), name).toBe(false);
    expect(allow.silentElements.has(name), name).toBe(false);
  }
  for (const name of allow.properties) expect(allow.silentProperty.test(name), name).toBe(false);
  for (const name of allow.attributes) expect(allow.silentAttribute.test(name), name).toBe(false);
});

test("what runs code, fetches or embeds is not allowed", () => {
  for (const name of [
    "script",
    "foreignObject",
    "image",
    "animate",
    "set",
    "iframe",
    "audio",
    "video",
    "a",
    "text",
  ]) {
    expect(allow.elements.has(name), name).toBe(false);
  }
});

// SVG 2, appendix of properties, and CSS Color, Masking and Compositing: which inherit.
test("which properties inherit", () => {
  for (const name of [
    "fill",
    "stroke",
    "color",
    "visibility",
    "fill-rule",
    "clip-rule",
    "marker-end",
    "stroke-width",
  ]) {
    expect(allow.inherited.has(name), name).toBe(true);
  }
  for (const name of ["opacity", "display", "clip-path", "mask", "stop-color", "overflow", "vector-effect"]) {
    expect(allow.inherited.has(name), name).toBe(false);
  }
  for (const name of allow.inherited) expect(allow.properties.has(name), name).toBe(true);
});

test("silent namespaces are those of drawing programs, and not HTML", () => {
  expect(allow.silentNamespace.test("http://www.inkscape.org/namespaces/inkscape")).toBe(true);
  expect(allow.silentNamespace.test("http://www.w3.org/1999/xhtml")).toBe(false);
  expect(allow.silentNamespace.test(allow.svgNamespace)).toBe(false);
});
