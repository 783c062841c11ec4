// Floor 2, part of step 2. Style sheets and single declarations: what is allowed stays letter for letter.
import type { Place } from "../problem/problem.ts";
import * as allow from "./allow.ts";
import { type CssDeclaration, findComments, findLive, parseSheet } from "./css.ts";
import { cut } from "./cut.ts";
import { limit } from "./limit.ts";
import { findNoColour } from "./nocolour.ts";
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
  const kept = cut(text, findCuts(text, element.place, reporter));
  // What was cut must not bring other text to life: the rest is read again and has to be plain.
  const live = findLive(kept);
  if (live !== undefined || parseSheet(kept).oddities.length > 0)
    return refuse(`The style sheet is no plain list of rules: ${JSON.stringify(live ?? kept.slice(0, 40))}.`);
  if (kept === "") return [];
  return [{ type: "text", name: "", value: kept, attributes: {}, children: [], place: element.place }];
}

/** Everything that has to go: comments, what is no plain rule, declarations that are not allowed. */
function findCuts(
  text: string,
  place: Place,
  reporter: Reporter,
): readonly { readonly start: number; readonly end: number }[] {
  const { rules, oddities } = parseSheet(text);
  for (const { what } of oddities) {
    const reason = `${JSON.stringify(what.slice(0, 40))} was removed from the style sheet.`;
    reporter.warn("svg/removed", place, reason);
  }
  const declarations = new Set(rules.flatMap((rule): readonly CssDeclaration[] => rule.declarations));
  const refused = [...declarations].filter(
    ({ property, value }) => !checkDeclaration(property, value, place, reporter),
  );
  return [...oddities, ...findComments(text), ...refused];
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
 * svg/unsupported (error: blending, filters, CSS transforms), svg/removed (warning), svg/colour (warning).
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
  const fault = findDanger(property, value) ?? findMistake(property, value);
  if (fault !== undefined) {
    reporter.error(fault.rule, place, fault.reason, fault.hint);
    return false;
  }
  const odd = findNoColour(property, value);
  if (odd !== undefined) reporter.warn("svg/colour", place, odd.reason, odd.hint);
  if (isPlainValue(value)) return true;
  reporter.warn(
    "svg/removed",
    place,
    `The style ${property} was removed: its value ${show(value)} is not plain.`,
  );
  return false;
}

interface Fault {
  readonly rule: string;
  readonly reason: string;
  readonly hint: string;
}

const show = (value: string): string => JSON.stringify(value.slice(0, 60));

const mend = "Export the drawing again, or mend the value by hand.";

/** Why a value is not looked at any further. */
function findDanger(property: string, value: string): Fault | undefined {
  if (value.length > limit.valueLength) {
    const reason = `${property} is longer than ${limit.valueLength} characters: ${show(value)}.`;
    return { rule: "svg/css", reason, hint: mend };
  }
  if (value.includes("\\")) {
    return {
      rule: "svg/css",
      reason: `A style uses a backslash, which can hide other addresses: ${show(value)}.`,
      hint: "Write the value without escapes.",
    };
  }
  if (findReference(value) !== null) return undefined;
  return {
    rule: "svg/reference",
    reason: `${property} points outside the drawing: ${show(value)}.`,
    hint: "Write a colour, or url(#id) of a gradient in this file.",
  };
}

/** Why a value is none of its property. */
function findMistake(property: string, value: string): Fault | undefined {
  if (isNoNumber(property, value))
    return { rule: "svg/number", reason: `${property}: ${show(value)} is not a number.`, hint: mend };
  const unknown = findFunction(value);
  if (unknown === undefined || unknown === "expression") return undefined;
  return {
    rule: "svg/css",
    reason: `${property} uses ${unknown}(), which is not supported: ${show(value)}.`,
    hint: "Write the colour or number itself in its place.",
  };
}

function isNoNumber(property: string, value: string): boolean {
  if (/^\s*(?:inherit|initial|unset|none)\s*$/.test(value)) return false;
  if (allow.numericAttributes.has(property)) return !isLength(value);
  return property === "stroke-dasharray" && !isLengthList(value);
}
