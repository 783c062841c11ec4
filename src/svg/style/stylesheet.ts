// Floor 2, part of step 2. The style sheets of a file → rules of the set that is supported, each read once.
import type { Place } from "../../problem/problem.ts";
import { limit } from "../gate/drawinglimit.ts";
import type { Reporter } from "../gate/drawingreport.ts";
import { walkXml, type XmlElement } from "../xml/xmlnode.ts";
import { type CssOddity, parseSheet } from "./csstext.ts";
import { type Declared, readDeclaration } from "./declaration.ts";
import { compareSpecificity, readAttribute, type Selector } from "./selector.ts";

/** A selector with what it declares. */
export interface SheetRule {
  readonly selector: Selector;
  readonly declared: readonly (Declared & { readonly important: boolean })[];
  readonly place: Place;
}

const svgNamespace = "http://www.w3.org/2000/svg";
const htmlNamespace = "http://www.w3.org/1999/xhtml";

/**
 * Returns the rules of all style sheets below `root`, the weakest first: by specificity, then by order. Wherever a sheet
 * stands, browsers follow it.
 *
 * Problems (errors): svg/css, svg/selector, and those of readDeclaration; svg/removed (warning) for fonts and imports.
 */
export function readSheets(root: XmlElement, reporter: Reporter): readonly SheetRule[] {
  const rules: SheetRule[] = [];
  for (const element of walkXml(root)) {
    if (element.uri === svgNamespace && element.local === "style") readSheet(element, rules, reporter);
    else if (element.uri === htmlNamespace && /^(?:style|link)$/.test(element.local))
      reporter.error(
        "svg/css",
        element.place,
        `<${element.local}> of a web page gives the drawing styles.`,
        hint,
      );
  }
  // Sorting is stable: equals stay in the order of the file.
  return rules.sort((a, b) => compareSpecificity(a.selector.specificity, b.selector.specificity));
}

const hint = "Write colours as fill attributes, or as plain rules such as .a { fill: #c00 }.";

function readSheet(element: XmlElement, rules: SheetRule[], reporter: Reporter): void {
  const text = element.children.map((node) => (node.kind === "text" ? node.text : "")).join("");
  const refused = findRefusal(element, text);
  if (refused !== undefined) {
    reporter.error("svg/css", element.place, refused, hint);
    return;
  }
  const placeAt = locate(element, text, reporter);
  const { rules: read, oddities } = parseSheet(text);
  for (const oddity of oddities) reportOddity(oddity, placeAt(oddity.start), reporter);
  for (const { selectors, declarations, start } of read) {
    const declared = declarations.flatMap(({ property, value, important, start }) =>
      readDeclaration(property, value, placeAt(start), reporter).map((each) => ({ ...each, important })),
    );
    for (const selector of selectors) rules.push({ selector, declared, place: placeAt(start) });
  }
}

/** Why a sheet is not read: browsers pass over it, follow it on some screens only, or it cannot be looked through. */
function findRefusal(element: XmlElement, text: string): string | undefined {
  const type = readAttribute(element, "type")?.toLowerCase() ?? "";
  const media = readAttribute(element, "media")?.trim().toLowerCase() ?? "";
  if (type !== "" && type !== "text/css") return `The type of the style sheet is ${JSON.stringify(type)}.`;
  if (media !== "" && media !== "all" && media !== "screen")
    return `The style sheet is for ${JSON.stringify(media)} only.`;
  if (readAttribute(element, "title") !== undefined)
    return "The style sheet has a title, so it is one of several to choose from.";
  if (text.length > limit.cssBytes) return `The style sheet is longer than ${limit.cssBytes} characters.`;
  if (text.includes("\\")) return "The style sheet uses a backslash, which can hide other addresses.";
  if (text.includes("</")) return "The style sheet holds markup.";
  return undefined;
}

function reportOddity({ kind, what }: CssOddity, place: Place, reporter: Reporter): void {
  if (kind === "selector") {
    reporter.error(
      "svg/selector",
      place,
      `The style sheet selects by ${what}, which is not supported.`,
      "Select by name, class or id: rect, .a, #wheel, g .a, g > rect, .a:not(.b), rect:nth-child(2).",
    );
  } else if (/^@(?:font-face|import|charset)$/i.test(what))
    reporter.warn("svg/removed", place, `${JSON.stringify(what)} was removed from the style sheet.`);
  else
    reporter.error(
      "svg/css",
      place,
      `The style sheet is no plain list of rules: ${JSON.stringify(what.slice(0, 40))}.`,
      hint,
    );
}

/** Finds the place of an offset in the text of a sheet: in the file, where the sheet is one text without entities. */
function locate(element: XmlElement, text: string, reporter: Reporter): (offset: number) => Place {
  const [first] = element.children.filter((node) => node.kind === "text" && node.text.trim() !== "");
  const start = first?.kind === "text" ? text.indexOf(first.text) : -1;
  return (offset) => {
    if (first === undefined || start < 0) return element.place;
    const before = text.slice(start, offset);
    const lines = before.split("\n");
    const last = lines.at(-1)?.length ?? 0;
    const line = first.place.line + lines.length - 1;
    const column = lines.length === 1 ? first.place.column + last : last + 1;
    const word = /^\S{1,20}/.exec(text.slice(offset))?.[0] ?? "";
    return reporter.lines[line - 1]?.startsWith(word, column - 1) === true ? { line, column } : element.place;
  };
}
