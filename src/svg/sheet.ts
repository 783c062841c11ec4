// Floor 2, part of step 2. Style sheets and single declarations: what is allowed stays letter for letter.
import type { Place } from "../problem/problem.ts";
import * as allow from "./allow.ts";
import { type CssDeclaration, findComments, findLive, parseSheet } from "./css.ts";
import { cut } from "./cut.ts";
import { limit } from "./limit.ts";
import type { Reporter } from "./report.ts";
import type { SvgNode } from "./tree.ts";
import { findFunction, findReference, isLength, isLengthList, isPlainValue } from "./value.ts";
import type { XmlElement } from "./xmlnode.ts";

/**
 * Returns the content of a `style` element with everything removed that is not allowed, or undefined after an error.
 *
 * Problems: svg/css (error: escapes, markup, too long, no plain sheet), svg/removed (warning), and those of
 * checkDeclaration.
 */
export function cleanSheet(element: XmlElement, reporter: Reporter): SvgNode[] | undefined {
  const text = element.children.map((node) => (node.kind === "text" ? node.text : "")).join("");
  const refuse = (reason: string): undefined => {
    reporter.error(
      "svg/css",
      element.place,
      reason,
      "Write colours as fill attributes, or as plain rules such as .a { fill: #c00 }.",
    );
    return undefined;
  };
  const ignored = findIgnored(element);
  if (ignored !== undefined) {
    reporter.warn("svg/removed", element.place, `A style sheet was removed: ${ignored}.`);
    return [];
  }
  const refused = findRefusal(text);
  if (refused !== undefined) return refuse(refused);
  const { rules, oddities } = parseSheet(text);
  const cuts: { start: number; end: number }[] = [...oddities, ...findComments(text)];
  for (const oddity of oddities) {
    reporter.warn(
      "svg/removed",
      element.place,
      `${JSON.stringify(oddity.what.slice(0, 40))} was removed from the style sheet.`,
    );
  }
  for (const declaration of new Set(rules.flatMap((rule): readonly CssDeclaration[] => rule.declarations))) {
    if (!checkDeclaration(declaration.property, declaration.value, element.place, reporter))
      cuts.push(declaration);
  }
  const kept = cut(text, cuts);
  // What was cut must not bring other text to life: the rest is read again and has to be plain.
  const live = findLive(kept);
  if (live !== undefined || parseSheet(kept).oddities.length > 0)
    return refuse(`The style sheet is no plain list of rules: ${JSON.stringify(live ?? kept.slice(0, 40))}.`);
  return kept === ""
    ? []
    : [
        {
          type: "text",
          name: "",
          value: kept,
          attributes: {},
          children: [],
          place: element.place,
        },
      ];
}

/** Why browsers pass over a sheet, or do so on some screens only. */
function findIgnored(element: XmlElement): string | undefined {
  const readValue = (name: string): string =>
    element.attributes
      .find(({ local, uri }) => local === name && uri === "")
      ?.value.trim()
      .toLowerCase() ?? "";
  const [type, media] = [readValue("type"), readValue("media")];
  if (type !== "" && type !== "text/css") return `its type is ${JSON.stringify(type)}`;
  return media === "" || media === "all" || media === "screen"
    ? undefined
    : `it is for ${JSON.stringify(media)} only`;
}

function findRefusal(text: string): string | undefined {
  if (text.length > limit.cssBytes) return `The style sheet is longer than ${limit.cssBytes} characters.`;
  if (text.includes("\\")) return "The style sheet uses a backslash, which can hide other addresses.";
  if (text.includes("</")) return "The style sheet holds markup.";
  return undefined;
}

/**
 * Returns whether `property: value` may stay.
 *
 * Problems: svg/reference (error: url() to anything but `#id`), svg/css (error: escapes), svg/number (error),
 * svg/unsupported (error: blending, filters, CSS transforms), svg/removed (warning).
 */
export function checkDeclaration(property: string, value: string, place: Place, reporter: Reporter): boolean {
  if (allow.properties.has(property)) return checkAllowed(property, value, place, reporter);
  if (value.includes("\\")) return checkAllowed(property, value, place, reporter);
  const harmless = /^(?:none|normal|auto|initial)$/.test(value.trim());
  if (["filter", "mix-blend-mode", "transform"].includes(property)) {
    if (!harmless)
      reporter.error(
        "svg/unsupported",
        place,
        `The drawing uses the style ${property}, which is not supported.`,
        hintFor(property),
      );
    return false;
  }
  if (!harmless && !allow.silentProperty.test(property)) {
    reporter.warn("svg/removed", place, `The style ${property} was removed.`);
  }
  return false;
}

function hintFor(property: string): string {
  if (property === "transform") return 'Write it as an attribute: transform="…".';
  if (property === "filter")
    return "Remove the shadow, blur or glow in a drawing program, or draw it as a plain shape.";
  return "Draw the mixed colour as a shape of its own.";
}

function checkAllowed(property: string, value: string, place: Place, reporter: Reporter): boolean {
  const shown = JSON.stringify(value.slice(0, 60));
  if (value.length > limit.valueLength) {
    reporter.error(
      "svg/css",
      place,
      `${property} is longer than ${limit.valueLength} characters: ${shown}.`,
      "Export the drawing again, or mend the value by hand.",
    );
    return false;
  }
  if (value.includes("\\")) {
    reporter.error(
      "svg/css",
      place,
      `A style uses a backslash, which can hide other addresses: ${shown}.`,
      "Write the value without escapes.",
    );
    return false;
  }
  if (findReference(value) === null) {
    reporter.error(
      "svg/reference",
      place,
      `${property} points outside the drawing: ${shown}.`,
      `Write a colour, or url(#id) of a gradient in this file.`,
    );
    return false;
  }
  const isNumber = allow.numericAttributes.has(property);
  const isKeyword = /^\s*(?:inherit|initial|unset|none)\s*$/.test(value);
  if (
    !isKeyword &&
    ((isNumber && !isLength(value)) || (property === "stroke-dasharray" && !isLengthList(value)))
  ) {
    reporter.error(
      "svg/number",
      place,
      `${property}: ${shown} is not a number.`,
      "Export the drawing again, or mend the value by hand.",
    );
    return false;
  }
  const unknown = findFunction(value);
  if (unknown !== undefined && unknown !== "expression") {
    reporter.error(
      "svg/css",
      place,
      `${property} uses ${unknown}(), which is not supported: ${shown}.`,
      "Write the colour or number itself in its place.",
    );
    return false;
  }
  if (!isPlainValue(value)) {
    reporter.warn(
      "svg/removed",
      place,
      `The style ${property} was removed: its value ${shown} is not plain.`,
    );
    return false;
  }
  return true;
}
