// Floor 2, part of step 2. One declaration as its author wrote it → what of it is written, nothing, or why it is refused.
import type { Place } from "../../problem/problem.ts";
import { limit } from "../gate/drawinglimit.ts";
import type { Reporter } from "../gate/drawingreport.ts";
import { findReference, findUnit, hasOddBlank, mendNumber } from "./attributevalue.ts";
import { isCssProperty } from "./csstext.ts";
import { effectProperties, readEffect } from "./effectproperty.ts";
import { findNoColour } from "./nocolour.ts";
import { properties } from "./property.ts";

/** A property with its value as it is written, or `inherit`, which is written by leaving it out. */
export interface Declared {
  readonly property: string;
  readonly value: string;
  readonly place: Place;
}

/**
 * Names under which properties of boxes and of the geometry are handed on, each with its own name as the value: whether they
 * do anything depends on the element.
 */
export const handedOn = { box: "box", geometry: "geometry" } as const;

/**
 * Properties of text, of editors and of older drafts: without effect on shapes, dropped in silence. Without `shape-rendering`
 * every drawing is smoothed: what is thinner than a pixel would show or not, as the size of the screen has it.
 */
export const silentProperty =
  /^(?:--|-inkscape-|-adobe-|-serif-|-webkit-text|font|text-|letter-spacing$|word-spacing$|line-height$|white-space$|writing-mode$|direction$|dominant-baseline$|baseline-shift$|alignment-baseline$|unicode-bidi$|glyph-orientation|kerning$|enable-background$|solid-|image-rendering$|color-rendering$|shape-rendering$|color-profile$|lighting-color$|pointer-events$|cursor$|inline-size$|shape-inside$|shape-padding$|shape-margin$|block-progression$|user-select$|clip$|src$)/;

/** What SVG 2, section 4.4, makes properties of some shapes. */
const geometry = /^(?:x|y|cx|cy|r|rx|ry|width|height|d)$/;

/** What no browser follows any more. */
const bygone = /^(?:behavior|-(?:ms|moz|o|khtml)-.*)$/;

/** Properties of boxes: shapes are none. */
const box =
  /^(?:position|top|right|bottom|left|inset.*|float|clear|z-index|margin.*|padding.*|border.*|background.*|box-.*|vertical-align|list-style.*|table-layout)$/;

/**
 * Returns what is written for `name: value`; nothing where every browser passes over it, or after an error.
 *
 * Problems: svg/css (too long, escapes), svg/reference (url() to anything but `#id`), svg/number, svg/unit, svg/value,
 * svg/unsupported (filter functions, transforms and all else that changes what is seen); warnings svg/colour and
 * svg/removed.
 */
export function readDeclaration(
  name: string,
  value: string,
  place: Place,
  reporter: Reporter,
): readonly Declared[] {
  const danger = findDanger(name, value);
  if (danger !== undefined) {
    reporter.error(danger.rule, place, danger.reason, danger.hint);
    return [];
  }
  const property = properties.get(name);
  if (property === undefined) return readOther(name, value, place, reporter);
  const names = name === "marker" ? ["marker-start", "marker-mid", "marker-end"] : [name];
  const read = readKeyword(value, property) ?? property.read(value);
  if (read !== undefined) return names.map((each) => ({ property: each, value: read, place }));
  if (value === "") return [];
  const odd = findNoColour(name, value);
  if (odd !== undefined) reporter.warn("svg/colour", place, odd.reason, odd.hint);
  else {
    const fault = describe(name, value, property.choice);
    reporter.error(fault.rule, place, fault.reason, fault.hint);
  }
  return [];
}

/** `inherit` of a property that elements do not inherit would have to be followed through every `use`: it is refused. */
function readKeyword(
  value: string,
  { inherits, initial }: { readonly inherits: boolean; readonly initial: string },
): string | undefined {
  const word = value.toLowerCase();
  if (word === "initial" || (word === "unset" && !inherits)) return initial;
  return inherits && (word === "inherit" || word === "unset") ? "inherit" : undefined;
}

interface Fault {
  readonly rule: string;
  readonly reason: string;
  readonly hint: string;
}

const show = (value: string): string => JSON.stringify(value.slice(0, 60));

/** Why a value is not looked at any further. */
function findDanger(name: string, value: string): Fault | undefined {
  if (value.length > limit.valueLength) {
    const reason = `${name} is longer than ${limit.valueLength} characters: ${show(value)}.`;
    return { rule: "svg/css", reason, hint: "Export the drawing again, or mend the value by hand." };
  }
  if (value.includes("\\")) {
    const reason = `A style uses a backslash, which can hide other addresses: ${show(value)}.`;
    return { rule: "svg/css", reason, hint: "Write the value without escapes." };
  }
  if (!properties.has(name)) return undefined;
  if (hasOddBlank(value)) {
    const reason = `${name} has a blank that is none in SVG: ${show(value)}.`;
    return { rule: "svg/value", reason, hint: "Type it again, with plain blanks." };
  }
  const id = findReference(value);
  if (id !== null && id?.includes("%") !== true) return undefined;
  const reason = `${name} points outside the drawing, or by an address with %: ${show(value)}.`;
  return {
    rule: "svg/reference",
    reason,
    hint: "Write a colour, or url(#id) of a gradient in this file.",
  };
}

function describe(name: string, value: string, choice: string): Fault {
  const unit = findUnit(value);
  if (/^(?:stroke-(?:width|dash)|stroke-miterlimit|.*opacity$)/.test(name)) {
    if (unit !== undefined) return describeUnit(`${name}: ${show(value)}`, unit);
    if (!/\(|^(?:inherit|revert|revert-layer)$/i.test(value)) {
      const reason = `${name}: ${show(value)} is not a number that can be drawn.`;
      return { rule: "svg/number", reason, hint: `Write ${mendNumber(value) ?? choice}.` };
    }
  }
  const reason = `${name} is ${show(value)}, which programs draw differently or not at all.`;
  return { rule: "svg/value", reason, hint: `Write ${choice}.` };
}

/** What is wrong with a length in `unit`; `what` names where it stands. */
export function describeUnit(what: string, unit: string): Fault {
  const reason = `${what} is in ${unit}, which has another length in every program.`;
  return {
    rule: "svg/unit",
    reason,
    hint: "Write the length in the units of the viewBox, as a plain number.",
  };
}

/** A property that drawings do not have. */
function readOther(name: string, value: string, place: Place, reporter: Reporter): readonly Declared[] {
  if (silentProperty.test(name) || value === "") return [];
  const effect = effectProperties.has(name) ? readEffect(name, value) : undefined;
  if (effect !== undefined) return [{ property: name, value: effect, place }];
  const isInitial = /^(?:none|normal|auto|initial|unset)$/i.test(value);
  // These have attributes of their own, which even their initial value sets aside.
  if (isInitial && name !== "all" && name !== "transform" && !geometry.test(name)) return [];
  if (geometry.test(name)) return [{ property: handedOn.geometry, value: name, place }];
  if (isCssProperty(name) && !box.test(name) && !bygone.test(name)) {
    reporter.error(
      "svg/unsupported",
      place,
      `The drawing uses the style ${name}, which is not supported.`,
      hintFor(name),
    );
    return [];
  }
  reporter.warn("svg/removed", place, `The style ${name} was removed.`);
  return box.test(name) ? [{ property: handedOn.box, value: name, place }] : [];
}

function hintFor(name: string): string {
  if (name === "transform") return 'Write it as an attribute: transform="…".';
  if (/filter/.test(name))
    return "Remove the shadow, blur or glow in a drawing program, or draw it as a plain shape.";
  if (name === "mix-blend-mode") return "Draw the mixed colour as a shape of its own.";
  return "Remove it, and draw what it does as plain shapes.";
}
