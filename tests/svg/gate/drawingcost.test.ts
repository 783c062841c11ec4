// Drawings that once stuck the renderer or the cascade for seconds or for ever, all far under the caps on size. Each
// was accepted and then ran into a 12 s limit (librsvg 2.63, 900 × 600), or took over 3 s in the cascade. #security
import { readFileSync } from "node:fs";
import { describe, expect, test, vi } from "vitest";
import { readDrawing } from "../../../src/svg/gate/sanitise.ts";
import { startClock } from "../../clock.ts";
import { listCollection } from "../../collection/files.ts";
import { draw, rulesOf } from "../drawing.ts";

// Machines that run tests may be busy.
vi.setConfig({ testTimeout: 120_000 });

const times = (count: number, write: (index: number) => string): string =>
  Array.from({ length: count }, (_, index) => write(index)).join("");

/** Patterns one in the other; each level is inherited by ten shapes from a group, where counting references misses it. */
const inherited = `${times(8, (level) => `<pattern id="p${level}" width="1" height="1"><g fill="url(#p${level + 1})">${'<rect width=".1" height="1"/>'.repeat(10)}</g></pattern>`)}<pattern id="p8" width="1" height="1"><rect width="1" height="1"/></pattern><rect width="3" height="2" fill="url(#p0)"/>`;

/** Elements each of which refers to the next, by its id; the last to a shape. */
const chain = (count: number, write: (id: string, next: string) => string): string =>
  `${times(count, (index) => write(`a${index}`, `a${index + 1}`))}<rect id="a${count}" width="1" height="1"/>`;

describe("checkCost", () => {
  test("a chain may have 250 uses", () => {
    expect(rulesOf(draw(chain(250, (a, b) => `<use id="${a}" href="#${b}"/>`)))).toEqual([]);
    expect(rulesOf(draw(chain(256, (a, b) => `<use id="${a}" href="#${b}"/>`)))).toEqual([
      "svg/too-many-instances",
    ]);
  });

  test.each([
    ["patterns that groups hand down", inherited, "svg/too-many-instances"],
    [
      "dashes along a path far outside the drawing",
      '<g transform="scale(.000001)"><path d="M0 0H1000000000" stroke="#000" stroke-dasharray="1"/></g>',
      "svg/number",
    ],
    [
      "dashes that a group hands down",
      '<g stroke="#000" stroke-dasharray=".001"><path d="M0 0H10000000"/></g>',
      "svg/number",
    ],
    [
      "thousands of masks",
      `<mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="3" height="2"><rect width="3" height="2" fill="#fff"/></mask>${'<rect width="3" height="2" mask="url(#m)"/>'.repeat(4000)}`,
      "svg/too-many-instances",
    ],
    [
      "thousands of translucent groups",
      '<g opacity=".5"><rect width="3" height="2"/></g>'.repeat(4000),
      "svg/too-many-instances",
    ],
    [
      "translucent groups by repetition",
      times(
        4,
        (level) =>
          `<g id="g${level}" opacity=".9">${(level === 3 ? "<rect/>" : `<use href="#g${level + 1}"/>`).repeat(12)}</g>`,
      ),
      "svg/too-many-instances",
    ],
    [
      "markers at every point, handed down",
      `<marker id="m"><path d="M0 0${"l1 1".repeat(200)}"/></marker><g marker-mid="url(#m)"><path d="M0 0${"l1 1".repeat(20000)}"/></g>`,
      "svg/too-many-instances",
    ],
    [
      "one long path, repeated",
      `<path id="a" d="M0 0${"l.1.1-.2.1".repeat(20000)}"/>${'<use href="#a"/>'.repeat(100)}`,
      "svg/too-many-instances",
    ],
    [
      "thousands of rules over thousands of shapes",
      `<style>${times(4000, (index) => `.a${index}{fill:red}`)}</style>${"<rect/>".repeat(4000)}`,
      "svg/css",
    ],
    [
      "ancestors of ancestors",
      `<style>g g g g g g .a{fill:red}</style>${"<g>".repeat(40)}<rect/>${"</g>".repeat(40)}`,
      "svg/css",
    ],
    [
      "a chain of 11,000 uses",
      chain(11_000, (a, b) => `<use id="${a}" href="#${b}"/>`),
      "svg/too-many-instances",
    ],
    [
      "a chain of 9,000 gradients",
      chain(9000, (a, b) => `<linearGradient id="${a}" href="#${b}"/>`),
      "svg/too-many-instances",
    ],
    [
      "a chain of 6,000 clip paths",
      chain(6000, (a, b) => `<clipPath id="${a}" clip-path="url(#${b})"><path/></clipPath>`),
      "svg/too-many-instances",
    ],
    [
      "ancestors in what it is not",
      `<style>rect:not(g g g g g g .a){fill:red}</style>${"<g>".repeat(40)}<rect/>${"</g>".repeat(40)}`,
      "svg/css",
    ],
  ])("refuses %s, within a second", (_, body, rule) => {
    const spent = startClock();
    // Warnings stand in brackets.
    expect(rulesOf(draw(body)).filter((one) => !one.startsWith("("))).toEqual([rule]);
    expect(spent()).toBeLessThan(5000);
  });

  test.each([
    ["a dashed border", '<path d="M0 0H3V2H0V.1" fill="none" stroke="red" stroke-dasharray=".1 .05"/>'],
    [
      "a hundred masks",
      `<mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="3" height="2"><rect width="3" height="2" fill="#fff"/></mask>${'<rect width="1" height="1" mask="url(#m)"/>'.repeat(100)}`,
    ],
    [
      "selectors as people write them",
      "<style>g.a > rect, #b .c:first-child, rect:not(.d) { fill: red }</style><g><rect/></g>",
    ],
    ["fifty stars, each by use", `<path id="a" d="M0 0l1 1"/>${'<use href="#a"/>'.repeat(49)}`],
  ])("lets %s pass", (_, body) => {
    expect(rulesOf(draw(body))).toEqual([]);
  });

  test("real drawings are far from every cap: doubled, with all they hold, they still pass", () => {
    for (const { name, path } of listCollection().filter((_, index) => index % 4 === 0)) {
      const text = readFileSync(path, "utf8");
      const inner = /<svg[^>]*>([\s\S]*)<\/svg>/.exec(text)?.[1] ?? "";
      const twice = text
        .replace(
          inner,
          () => `<g id="all-of-it">${inner}</g><use href="#all-of-it" xlink:href="#all-of-it"/>`,
        )
        .replace(/<svg(?![^>]*xmlns:xlink)/, '<svg xmlns:xlink="http://www.w3.org/1999/xlink"');
      expect(readDrawing(name, Buffer.from(twice)).value, name).toBeDefined();
    }
  });
});
