// Floor 2. CSS selectors over a drawing, as written and as instanced by `use`. The door to css-select.
import { compile, type Options } from "css-select";
import { type SvgElement, textOf } from "./tree.ts";

/** A node that selectors can walk: an element of the file, or one instance of it. */
export interface SelectNode {
  readonly element: SvgElement;
  readonly parent: SelectNode | null;
  readonly children: readonly SelectNode[];
}

const options: Options<SelectNode, SelectNode> = {
  xmlMode: true,
  adapter: {
    isTag: (node): node is SelectNode => node !== null,
    getAttributeValue: (node, name) => node.element.attributes[name],
    getChildren: (node) => [...node.children],
    getName: (node) => node.element.name,
    getParent: (node) => node.parent,
    getSiblings: (node) => [...(node.parent?.children ?? [node])],
    getText: (node) => textOf(node.element),
    hasAttrib: (node, name) => node.element.attributes[name] !== undefined,
    removeSubsets: (nodes) => nodes,
  },
};

/**
 * Returns a test for `selector`, or a sentence that says what is wrong with it.
 * Everything css-select supports may be used; pseudo-elements may not.
 */
export function compileSelector(selector: string): ((node: SelectNode) => boolean) | string {
  try {
    return compile<SelectNode, SelectNode>(selector, options);
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

/** Returns the elements of a file as nodes, parents before children. */
export function createNodes(root: SvgElement): readonly SelectNode[] {
  const all: SelectNode[] = [];
  const add = (element: SvgElement, parent: SelectNode | null): SelectNode => {
    const children: SelectNode[] = [];
    const node: SelectNode = { element, parent, children };
    all.push(node);
    for (const child of element.children) if (child.type === "element") children.push(add(child, node));
    return node;
  };
  add(root, null);
  return all;
}
