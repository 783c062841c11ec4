// Floor 2, step 2. Well-formed XML from anyone → a drawing in which everything is allowed. What has no effect on the
// picture goes in silence, what might surprise goes with a warning, what changes the meaning refuses the drawing.
import type { Outcome, Place } from "../problem/problem.ts";
import { quoteText } from "../problem/quote.ts";
import * as allow from "./allow.ts";
import { cleanAttributes } from "./attribute.ts";
import { checkCost } from "./cost.ts";
import { checkReferences } from "./reference.ts";
import type { Reporter } from "./report.ts";
import { cleanSheet } from "./sheet.ts";
import type { Drawing, SvgElement, SvgNode } from "./tree.ts";
import { findViewBox } from "./viewbox.ts";
import { readXml } from "./xml.ts";
import type { XmlElement, XmlNode, XmlText } from "./xmlnode.ts";

/**
 * Reads a contributed drawing. `file` is used in messages only.
 *
 * Problems: all of xml.ts, attribute.ts, sheet.ts, reference.ts, cost.ts and viewbox.ts; svg/not-svg, svg/namespace,
 * svg/unsupported, svg/removed (warning), svg/text (warning).
 */
export function readDrawing(file: string, bytes: Uint8Array): Outcome<Drawing> {
  const { root, reporter } = readXml(file, bytes);
  if (root === undefined) return { value: undefined, problems: reporter.problems };
  const drawing = admit(root, reporter);
  const failed = reporter.problems.some((problem) => problem.severity === "error");
  return { value: failed ? undefined : drawing, problems: reporter.problems };
}

function admit(root: XmlElement, reporter: Reporter): Drawing | undefined {
  if (root.local !== "svg" || root.uri !== allow.svgNamespace) {
    reportRoot(root, reporter);
    return undefined;
  }
  const cleaned = cleanElement(root, reporter);
  if (cleaned === undefined) return undefined;
  const viewBox = findViewBox(cleaned, reporter);
  const checked = checkReferences(cleaned, reporter);
  if (viewBox === undefined || checked === undefined || !checkCost(checked, reporter)) return undefined;
  return { file: reporter.file, root: checked, viewBox, lines: reporter.lines };
}

function reportRoot(root: XmlElement, reporter: Reporter): void {
  if (root.local !== "svg") {
    reporter.error(
      "svg/not-svg",
      root.place,
      root.local.toLowerCase() === "html"
        ? "The file is a web page, not an SVG drawing."
        : `The file is not an SVG drawing: it begins with <${root.local}>.`,
      "Save the drawing itself as SVG, and put that file here.",
    );
    return;
  }
  const said = root.uri === "" ? "has no namespace" : `has the namespace ${JSON.stringify(root.uri)}`;
  reporter.error(
    "svg/namespace",
    root.place,
    `The <svg> element ${said}, so browsers would show nothing.`,
    `Write it at the beginning: <svg xmlns="${allow.svgNamespace}" …>`,
  );
}

function cleanElement(element: XmlElement, reporter: Reporter): SvgElement | undefined {
  const name = element.local === "a" ? "g" : element.local;
  if (element.local === "a") warnRemoved(reporter, element.place, "The link <a>", "its content stays");
  const { attributes, places } = cleanAttributes(element, reporter);
  const children =
    name === "style" ? cleanSheet(element, reporter) : cleanChildren(name, element.children, reporter);
  if (children === undefined) return undefined;
  return {
    type: "element",
    name,
    value: "",
    attributes,
    children,
    place: element.place,
    attributePlaces: places,
  };
}

function cleanChildren(parent: string, nodes: readonly XmlNode[], reporter: Reporter): SvgNode[] {
  if (parent === "title" || parent === "desc") return cleanDescription(nodes, reporter);
  const children: SvgNode[] = [];
  for (const node of nodes) {
    if (node.kind === "text") {
      if (node.text.trim() === "") children.push(textNode(node.text, node));
      else
        reporter.warn(
          "svg/removed",
          node.place,
          `Loose text was removed: ${JSON.stringify(node.text.trim().slice(0, 40))}.`,
        );
    } else {
      const kept = admitElement(node, reporter);
      if (kept !== undefined) children.push(kept);
    }
  }
  return children;
}

function admitElement(element: XmlElement, reporter: Reporter): SvgElement | undefined {
  if (element.uri !== allow.svgNamespace) {
    if (!allow.silentNamespace.test(element.uri))
      warnRemoved(reporter, element.place, `<${nameOf(element)}>`);
    return undefined;
  }
  const refused = allow.refusedElements.get(element.local);
  if (refused !== undefined) {
    reporter.error(
      "svg/unsupported",
      element.place,
      `The drawing uses <${element.local}>, which is not supported.`,
      refused,
    );
    return undefined;
  }
  if (allow.silentElements.has(element.local)) return undefined;
  if (element.local === "text") {
    reporter.warn(
      "svg/text",
      element.place,
      `${nameText(element)} was removed: letters look different on every machine.`,
      "Convert the text to outlines (paths) in a drawing program.",
    );
    return undefined;
  }
  if (element.local === "a" || allow.elements.has(element.local)) return cleanElement(element, reporter);
  warnRemoved(reporter, element.place, `<${nameOf(element)}>`);
  return undefined;
}

/** Text of `title` and `desc`: markup inside is dropped, its words stay; writing directions are never overridden. */
function cleanDescription(nodes: readonly XmlNode[], reporter: Reporter): SvgNode[] {
  const first = nodes[0];
  if (first === undefined) return [];
  const markup = nodes.find((node): node is XmlElement => node.kind === "element");
  if (markup !== undefined)
    warnRemoved(reporter, markup.place, `<${nameOf(markup)}> in a description`, "its words stay");
  const text = nodes.map(wordsOf).join("");
  const plain = text.replace(/[\u202A-\u202E\u2066-\u2069]/g, "");
  if (plain !== text)
    reporter.warn(
      "svg/removed",
      first.place,
      "Characters that override the direction of writing were removed.",
    );
  return plain === ""
    ? []
    : [
        {
          type: "text",
          name: "",
          value: plain,
          attributes: {},
          children: [],
          place: first.place,
        },
      ];
}

function nameText(element: XmlElement): string {
  const words = wordsOf(element).replace(/\s+/g, " ").trim();
  return words === "" ? "A <text> element" : `The text ${quoteText(words)}`;
}

/** All text in a node and below it. */
function wordsOf(node: XmlNode): string {
  return node.kind === "text" ? node.text : node.children.map(wordsOf).join("");
}

function textNode(text: string, node: XmlText): SvgNode {
  return {
    type: "text",
    name: "",
    value: text,
    attributes: {},
    children: [],
    place: node.place,
  };
}

function nameOf(element: XmlElement): string {
  return element.prefix === "" ? element.local : `${element.prefix}:${element.local}`;
}

function warnRemoved(reporter: Reporter, place: Place, what: string, but?: string): void {
  reporter.warn("svg/removed", place, `${what} was removed${but === undefined ? "" : `; ${but}`}.`);
}
