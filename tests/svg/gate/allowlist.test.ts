import { expect, test } from "vitest";
import * as allow from "../../../src/svg/gate/allowlist.ts";
import { silentProperty } from "../../../src/svg/style/declaration.ts";
import { properties } from "../../../src/svg/style/property.ts";

test("nothing is both allowed and refused, or allowed and dropped in silence", () => {
  for (const name of allow.elements) {
    expect(allow.refusedElements.has(name), name).toBe(false);
    expect(allow.silentElements.has(name), name).toBe(false);
  }
  for (const name of properties.keys()) expect(silentProperty.test(name), name).toBe(false);
  for (const name of [...allow.numericAttributes, ...allow.refusedAttributes])
    expect(allow.silentAttribute.test(name), name).toBe(false);
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

test("silent namespaces are those of drawing programs, and not HTML", () => {
  expect(allow.silentNamespace.test("http://www.inkscape.org/namespaces/inkscape")).toBe(true);
  expect(allow.silentNamespace.test("http://www.w3.org/1999/xhtml")).toBe(false);
  expect(allow.silentNamespace.test(allow.svgNamespace)).toBe(false);
});
