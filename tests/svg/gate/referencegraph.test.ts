import { describe, expect, test } from "vitest";
import { idsOf } from "../../../src/svg/gate/reference.ts";
import { Graph } from "../../../src/svg/gate/referencegraph.ts";
import { draw, read } from "../drawing.ts";

function measure(body: string) {
  const { root } = read(draw(body));
  return new Graph(root, idsOf(root), 10).measure(root);
}

describe("Graph", () => {
  // Counted by hand; the root is one of them.
  test.each([
    ["<g><rect/><rect/></g>", { instances: 4, depth: 3 }],
    ['<rect id="a"/><use href="#a"/><use href="#a"/>', { instances: 6 }],
    ['<g id="a"><rect/><rect/></g><g><use href="#a"/></g>', { instances: 9 }],
    [
      '<pattern id="p" width="1" height="1"><rect/><rect/></pattern><rect width="9" height="9" fill="url(#p)"/>',
      { instances: 8, layers: 1 },
    ],
    [
      '<pattern id="p" width="1" height="1" patternUnits="userSpaceOnUse"><rect/></pattern><g fill="url(#p)"><rect/><rect/><rect/></g>',
      { instances: 13, layers: 3 },
    ],
    [
      '<linearGradient id="p"><stop/></linearGradient><rect width="9" height="9" fill="url(#p)"/>',
      { instances: 6, layers: 0 },
    ],
    ['<g opacity=".5"><rect opacity=".5"/></g>', { layers: 2 }],
    ['<clipPath id="c"><rect/></clipPath><g clip-path="url(#c)"><rect/></g>', { layers: 1 }],
    ['<path d="M0 0 1 1 2 2"/>', { vertices: 5, length: 0 }],
    ['<rect width="2" height="1" stroke-dasharray="1"/>', { length: 4 * Math.PI * 3 }],
  ])("%s", (body, expected) => {
    expect(measure(body)).toMatchObject(expected);
  });
});
