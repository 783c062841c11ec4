// Floor 2, step 2. Well-formed XML from anyone → a drawing in which everything is allowed. What has no effect on the
// picture goes in silence, what might surprise goes with a warning, what changes the meaning refuses the drawing.
import type { Outcome, Place } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { type Cascade, readCascade } from "../style/cascade.ts";
import { type Declared, handedOn } from "../style/declaration.ts";
import { effectProperties } from "../style/effectproperty.ts";
import { properties } from "../style/property.ts";
import { readAttribute } from "../style/selector.ts";
import type { Drawing, SvgElement, SvgNode } from "../tree.ts";
import { writeDrawing } from "../writesvg.ts";
import { readXml } from "../xml/readxml.ts";
import type { XmlElement, XmlNode, XmlText } from "../xml/xmlnode.ts";
import * as allow from "./allowlist.ts";
import { chooseChild } from "./alternative.ts";
import { cleanAttributes } from "./attribute.ts";
import { checkCost } from "./drawingcost.ts";
import { limit } from "./drawinglimit.ts";
import { createReporter, type Reporter } from "./drawingreport.ts";
import { isFilter, takeEffects } from "./effect.ts";
import type { Standing } from "./filterform.ts";
import { settle } from "./placement.ts";
import { checkReferences, idsOf } from "./reference.ts";
import { checkAlike } from "./rendererdifference.ts";
import { findViewBox } from "./viewbox.ts";

/**
 * Reads a contributed drawing into the one form in which it is measured and published: no style sheet, class or style, every
 * property an attribute, every value written in one way. `file` is used in messages only.
 *
 * Problems: all of readxml.ts, cascade.ts, attribute.ts, alternative.ts, placement.ts, reference.ts, effect.ts, drawingcost.ts, rendererdifference.ts, reach.ts and viewbox.ts; svg/not-svg,
 * svg/namespace, svg/unsupported, svg/written, svg/removed (warning), svg/text (warning).
 */
export function readDrawing(file: string, bytes: Uint8Array): Outcome<Drawing> {
  const read = readOnce(file, bytes);
  if (read.value === undefined) return read;
  const written = judgeWritten(read.value, bytes);
  const problems = [...read.problems, ...written.problems];
  return { value: written.value === undefined ? undefined : read.value, problems };
}

/**
 * Returns a drawing as the text that is published, once that has been read again: what grew beyond the limits when it was
 * written, or recoloured, is refused. Where that is what it was `admitted` from, but for our note in it, it is not read twice.
 *
 * Problems: svg/written.
 */
export function judgeWritten(drawing: Drawing, admitted?: Uint8Array): Outcome<string> {
  const text = writeDrawing(drawing);
  const reporter = createReporter(drawing.file, drawing.lines);
  const bytes = new TextEncoder().encode(text);
  const known = new TextDecoder().decode(admitted).replace(/<metadata>[^<]*<\/metadata>/, "");
  const again = known === text ? undefined : readOnce(drawing.file, bytes);
  const reason =
    bytes.length > limit.writtenBytes
      ? `it has ${bytes.length} bytes; at most ${limit.writtenBytes} are published`
      : again?.problems.find(({ severity }) => severity === "error")?.reason;
  if (reason === undefined) return { value: text, problems: [] };
  reporter.error(
    "svg/written",
    drawing.root.place,
    `The drawing cannot be published as it would be written: ${reason.replace(/\.$/, "")}.`,
    "Simplify it in a drawing program: fewer points, fewer repetitions, no long descriptions.",
  );
  return { value: undefined, problems: reporter.problems };
}

function readOnce(file: string, bytes: Uint8Array): Outcome<Drawing> {
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
  const cleaner = new Cleaner(readCascade(root, reporter), reporter);
  const cleaned = cleaner.clean({ author: root, parent: null });
  const viewBox = findViewBox(cleaned, reporter);
  const sized = viewBox === undefined ? undefined : settle(cleaned, viewBox, reporter);
  const checked = sized === undefined ? undefined : checkReferences(sized, cleaner.hidden, reporter);
  if (viewBox === undefined || checked === undefined || !checkCost(checked, viewBox, reporter))
    return undefined;
  // What was left out for its value would be missed here.
  if (reporter.problems.some(({ severity }) => severity === "error")) return undefined;
  const ids = idsOf(checked);
  const side = Math.max(viewBox.width, viewBox.height);
  const { filters, cascade } = cleaner;
  const taken = takeEffects(checked, { filters, cascade, side }, ids, reporter);
  if (taken === undefined || !checkAlike(taken.root, viewBox, idsOf(taken.root), reporter)) return undefined;
  return { file: reporter.file, viewBox, lines: reporter.lines, ...taken };
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

class Cleaner {
  /** Ids on what is written in a `switch` and not shown. */
  readonly hidden = new Map<string, Place>();
  /** The filters of the file, by id. */
  readonly filters = new Map<string, Standing>();
  readonly cascade: Cascade;
  private readonly reporter: Reporter;

  constructor(cascade: Cascade, reporter: Reporter) {
    this.cascade = cascade;
    this.reporter = reporter;
  }

  clean(node: Standing): SvgElement {
    const { author } = node;
    const name = author.local === "a" || author.local === "switch" ? "g" : author.local;
    if (author.local === "a") warnRemoved(this.reporter, author.place, "The link <a>", "its content stays");
    const { attributes, places } = cleanAttributes(author, this.reporter);
    const declared = this.cascade(node);
    addProperties(declared, attributes, places);
    return {
      type: "element",
      name,
      value: "",
      attributes,
      children: this.cleanChildren(name, { ...node, declared }),
      place: author.place,
      attributePlaces: places,
      author,
    };
  }

  private cleanChildren(name: string, node: Standing): SvgNode[] {
    const nodes = node.author.local === "switch" ? this.chooseChild(node.author) : node.author.children;
    if (name === "title" || name === "desc") return cleanDescription(nodes, this.reporter);
    return nodes.flatMap((child) => {
      if (child.kind === "text") return cleanText(child, this.reporter);
      if (isFilter(child))
        this.filters.set(readAttribute(child, "id") ?? "", { author: child, parent: node });
      return isAdmitted(child, this.reporter) ? [this.clean({ author: child, parent: node })] : [];
    });
  }

  private chooseChild(element: XmlElement): readonly XmlElement[] {
    const child = chooseChild(element, this.hidden, this.reporter);
    return child === undefined ? [] : [child];
  }
}

/** Writes what is declared as attributes, in one order. What is inherited is declared by being left out. */
function addProperties(
  declared: ReadonlyMap<string, Declared>,
  attributes: Record<string, string>,
  places: Record<string, Place>,
): void {
  for (const name of [...properties.keys(), ...effectProperties, ...Object.values(handedOn)]) {
    const found = declared.get(name);
    if (found === undefined || found.value === "inherit") continue;
    attributes[name] = found.value;
    places[name] = found.place;
  }
}

function cleanText(node: XmlText, reporter: Reporter): SvgNode[] {
  const words = node.text.trim();
  if (words === "") return [textNode(node.text, node)];
  const reason = `Loose text was removed: ${JSON.stringify(words.slice(0, 40))}.`;
  reporter.warn("svg/removed", node.place, reason);
  return [];
}

function isAdmitted(element: XmlElement, reporter: Reporter): boolean {
  if (element.uri !== allow.svgNamespace) {
    if (!allow.silentNamespace.test(element.uri))
      warnRemoved(reporter, element.place, `<${nameOf(element)}>`);
    return false;
  }
  const refused = allow.refusedElements.get(element.local);
  if (refused !== undefined) {
    reporter.error(
      "svg/unsupported",
      element.place,
      `The drawing uses <${element.local}>, which is not supported.`,
      refused,
    );
    return false;
  }
  if (allow.silentElements.has(element.local)) return false;
  if (element.local === "text") {
    reporter.warn(
      "svg/text",
      element.place,
      `${nameText(element)} was removed: letters look different on every machine.`,
      "Convert the text to outlines (paths) in a drawing program.",
    );
    return false;
  }
  if (/^(?:a|switch)$/.test(element.local) || allow.elements.has(element.local)) return true;
  warnRemoved(reporter, element.place, `<${nameOf(element)}>`);
  return false;
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
