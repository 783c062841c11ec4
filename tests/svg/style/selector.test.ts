// Selectors of the set, against a library that knows them all, over drawings and selectors made up at random.
import { compile } from "css-select";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readSelectors } from "../../../src/svg/style/csstext.ts";
import {
  compareSpecificity,
  matches,
  readAttribute,
  type SelectNode,
} from "../../../src/svg/style/selector.ts";
import { readXml } from "../../../src/svg/xml/readxml.ts";
import type { XmlElement } from "../../../src/svg/xml/xmlnode.ts";
import { bytesOf } from "../drawing.ts";
import { steady } from "../generate.ts";

interface Node extends SelectNode {
  readonly author: XmlElement;
  readonly parent: Node | null;
  readonly children: readonly Node[];
}

function listNodes(text: string): readonly Node[] {
  const { root } = readXml("a.svg", bytesOf(text));
  if (root === undefined) throw new Error(text);
  const all: Node[] = [];
  const add = (author: XmlElement, parent: Node | null): Node => {
    const children: Node[] = [];
    const node: Node = { author, parent, children };
    all.push(node);
    for (const child of author.children) if (child.kind === "element") children.push(add(child, node));
    return node;
  };
  add(root, null);
  return all;
}

const library = (selector: string): ((node: Node) => boolean) =>
  compile<Node, Node>(selector, {
    xmlMode: true,
    adapter: {
      isTag: (node): node is Node => node !== null,
      getAttributeValue: (node, name) => readAttribute(node.author, name),
      getChildren: (node) => [...node.children],
      getName: (node) => node.author.local,
      getParent: (node) => node.parent,
      getSiblings: (node) => [...(node.parent?.children ?? [node])],
      getText: () => "",
      hasAttrib: (node, name) => readAttribute(node.author, name) !== undefined,
      removeSubsets: (nodes) => nodes,
    },
  });

function select(selector: string, nodes: readonly Node[]): readonly Node[] {
  const selectors = readSelectors(selector);
  if (typeof selectors === "string") throw new Error(selectors);
  return nodes.filter((node) => selectors.some((each) => matches(each, node)));
}

const drawing =
  '<svg><g id="g" class="a b"><rect id="r" width="3"/><rect id="s" class="b"/></g><linearGradient id="l"/><path id="p"/></svg>';

describe("matches", () => {
  // By Selectors 4.
  test.each([
    ["rect", ["r", "s"]],
    ["#s", ["s"]],
    [".b", ["g", "s"]],
    [".a.b", ["g"]],
    ["g rect", ["r", "s"]],
    ["svg > rect", []],
    ['[width="3"]', ["r"]],
    ["rect:first-child", ["r"]],
    ["rect:nth-child(2)", ["s"]],
    ["rect:not(.b)", ["r"]],
    ["rect, path", ["r", "s", "p"]],
    ["linearGradient", ["l"]],
    ["lineargradient", []],
  ])("%s", (selector, ids) => {
    expect(select(selector, listNodes(drawing)).map(({ author }) => readAttribute(author, "id"))).toEqual(
      ids,
    );
  });

  test("what a use shows is the only one of its parent", () => {
    const node = listNodes(drawing).find(({ author }) => readAttribute(author, "id") === "s");
    const [first] = readSelectors(":first-child") as readonly [Parameters<typeof matches>[0]];
    expect(node === undefined || matches(first, node)).toBe(false);
    expect(node !== undefined && matches(first, { ...node, isAlone: true })).toBe(true);
  });

  test("nothing finds what the author did not write", () => {
    const [any] = readSelectors("*") as readonly [Parameters<typeof matches>[0]];
    expect(matches(any, { author: undefined, parent: null })).toBe(false);
  });

  const simple = fc.constantFrom(
    ".a",
    ".b",
    "#i1",
    '[class="a b"]',
    "[id=i2]",
    ":first-child",
    ":nth-child(2)",
    ":nth-child(odd)",
    ":nth-child(even)",
    ":nth-child(3n+1)",
    ":nth-child(-n+2)",
    ":nth-child(n+2)",
    ":nth-child(0n)",
    ":nth-child( 2n - 1 )",
  );
  const compound = fc
    .tuple(fc.constantFrom("g", "rect", "*", ""), fc.array(simple, { maxLength: 2 }))
    .map(([name, tests]) => `${name}${tests.join("")}` || "*");
  const complex = fc
    .tuple(compound, fc.array(fc.tuple(fc.constantFrom(" ", " > ", ">"), compound), { maxLength: 3 }))
    .map(([first, rest]) => first + rest.flat().join(""));
  const selectors = fc
    .tuple(complex, fc.option(complex, { freq: 2 }), fc.option(complex, { freq: 2 }))
    .map(
      ([own, not, other]) =>
        `${own}${not === null ? "" : `:not(${not})`}${other === null ? "" : `, ${other}`}`,
    );
  const start = fc
    .tuple(
      fc.constantFrom("g", "rect"),
      fc.constantFrom("", ' class="a"', ' class="a b"', ' class=" b"', ' id="i1"', ' id="i2" class="b"'),
    )
    .map(([name, attributes]) => ({ name, attributes }));
  const { node: trees } = fc.letrec<{ node: string; inner: string }>((tie) => ({
    inner: fc
      .tuple(start, fc.array(tie("node"), { maxLength: 4 }))
      .map(([{ name, attributes }, inner]) => `<${name}${attributes}>${inner.join("")}</${name}>`),
    node: fc.oneof(
      { maxDepth: 5 },
      start.map(({ name, attributes }) => `<${name}${attributes}/>`),
      tie("inner"),
    ),
  }));

  test("as the library, for any selector of the set and any tree", () => {
    let found = 0;
    fc.assert(
      fc.property(selectors, trees, (selector, tree) => {
        const nodes = listNodes(`<svg>${tree}</svg>`);
        const expected = nodes.filter(library(selector));
        expect(select(selector, nodes)).toEqual(expected);
        if (expected.length > 0) found += 1;
      }),
      { numRuns: 2000, ...steady },
    );
    expect(found).toBeGreaterThan(200);
  });
});

test("compareSpecificity: ids before classes before types", () => {
  expect(compareSpecificity([1, 0, 0], [0, 9, 9])).toBeGreaterThan(0);
  expect(compareSpecificity([0, 1, 0], [0, 0, 9])).toBeGreaterThan(0);
  expect(compareSpecificity([0, 1, 1], [0, 1, 2])).toBeLessThan(0);
  expect(compareSpecificity([1, 2, 3], [1, 2, 3])).toBe(0);
});
