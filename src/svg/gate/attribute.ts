// Floor 2, part of step 2. Attributes of one element that are no properties: kept, dropped, or refused with the reason.
import type { Place } from "../../problem/problem.ts";
import { findUnit, hasOddBlank, mendNumber, readLength, readNumber } from "../style/attributevalue.ts";
import { describeUnit, silentProperty } from "../style/declaration.ts";
import { isEffectAttribute } from "../style/effectproperty.ts";
import { properties } from "../style/property.ts";
import type { XmlAttribute, XmlElement } from "../xml/xmlnode.ts";
import * as allow from "./allowlist.ts";
import { limit } from "./drawinglimit.ts";
import type { Reporter } from "./drawingreport.ts";
import { type Reading, readPath, readPoints, readTransform } from "./geometry.ts";

export interface CleanAttributes {
  readonly attributes: Record<string, string>;
  readonly places: Record<string, Place>;
}

/**
 * Returns the attributes of `element` that may stay, as null-prototype records. Properties are none of them: see cascade.ts.
 *
 * Problems: svg/removed (warning), svg/reference, svg/number, svg/unit, svg/value, svg/viewbox, svg/unsupported.
 */
export function cleanAttributes(element: XmlElement, reporter: Reporter): CleanAttributes {
  const attributes: Record<string, string> = Object.create(null);
  const places: Record<string, Place> = Object.create(null);
  for (const attribute of element.attributes) {
    const kept = admit(element, attribute, reporter);
    if (kept === undefined) continue;
    attributes[kept.name] = kept.value;
    places[kept.name] = attribute.place;
  }
  // Whatever it points at, href is followed and xlink:href is not (SVG 2, section 5.6).
  if (attributes["href"] !== undefined) delete attributes["xlink:href"];
  return { attributes, places };
}

function admit(
  element: XmlElement,
  attribute: XmlAttribute,
  reporter: Reporter,
): { name: string; value: string } | undefined {
  const { local, value, place } = attribute;
  if (attribute.uri === allow.xlinkNamespace)
    return local === "href" ? href(element, attribute, reporter) : undefined;
  if (local.toLowerCase().startsWith("on")) return removed(reporter, place, local);
  if (attribute.uri !== "") return foreign(attribute, reporter);
  if (local === "xmlns" || properties.has(local) || isEffectAttribute(local)) return undefined;
  if (local === "href") return href(element, attribute, reporter);
  if (local === "viewbox") {
    reporter.error(
      "svg/viewbox",
      place,
      "The attribute is written viewbox, so drawing programs do not see it.",
      'Write viewBox="…" with a capital B.',
    );
    return undefined;
  }
  if (allow.refusedAttributes.has(local)) return refuse(attribute, reporter);
  if (allow.textAttribute.test(local)) return { name: local, value };
  if (allow.silentAttribute.test(local) || silentProperty.test(local)) return undefined;
  const list =
    value.length > limit.valueLength && local.endsWith("ransform") ? undefined : lists[local]?.(value);
  if (list !== undefined)
    return "text" in list ? { name: local, value: list.text } : reportList(attribute, list.at, reporter);
  const read = readers[local] ?? (allow.numericAttributes.has(local) ? readNumeric(local) : undefined);
  if (read === undefined) return removed(reporter, place, local);
  const kept =
    value.length > limit.valueLength || (local !== "viewBox" && hasOddBlank(value)) ? undefined : read(value);
  return kept === undefined ? report(attribute, reporter) : { name: local, value: kept };
}

function refuse({ local, place }: XmlAttribute, reporter: Reporter): undefined {
  reporter.error(
    "svg/unsupported",
    place,
    `The drawing uses ${local}, which is not supported.`,
    "Remove it, and draw what it does as plain shapes.",
  );
  return undefined;
}

function foreign(attribute: XmlAttribute, reporter: Reporter): undefined {
  if (allow.silentNamespace.test(attribute.uri) || attribute.prefix === "xmlns") return undefined;
  return removed(reporter, attribute.place, `${attribute.prefix}:${attribute.local}`);
}

function href(
  element: XmlElement,
  attribute: XmlAttribute,
  reporter: Reporter,
): { name: string; value: string } | undefined {
  if (element.local === "a") return undefined;
  const name = attribute.uri === "" ? "href" : "xlink:href";
  const value = attribute.value.trim();
  // Browsers take %20 in an address for a blank, other programs for three letters.
  if (/^#[^\s#%]+$/.test(value) || value === "#") return { name, value };
  if (!allow.elements.has(element.local)) return undefined;
  reporter.error(
    "svg/reference",
    attribute.place,
    `<${element.local}> points outside the drawing, or by an address with %: ${JSON.stringify(value.slice(0, 60))}.`,
    'Copy what it points at into this file and write href="#its-id".',
  );
  return undefined;
}

type Read = (value: string) => string | undefined;

const test =
  (isValid: (value: string) => boolean): Read =>
  (value) =>
    isValid(value) ? value.trim() : undefined;
const oneOf = (words: string): Read => test((value) => words.split(" ").includes(value.trim()));
const units = oneOf("userSpaceOnUse objectBoundingBox");

/** Attributes that hold a list of numbers, by name. */
const lists: Readonly<Record<string, (value: string) => Reading>> = Object.assign(Object.create(null), {
  d: readPath,
  points: readPoints,
  transform: readTransform,
  gradientTransform: readTransform,
  patternTransform: readTransform,
});

/** Attributes that hold no single number, by name: each returns what is written, or undefined. */
const readers: Readonly<Record<string, Read>> = Object.assign(Object.create(null), {
  gradientUnits: units,
  patternUnits: units,
  patternContentUnits: units,
  clipPathUnits: units,
  maskUnits: units,
  maskContentUnits: units,
  markerUnits: oneOf("strokeWidth userSpaceOnUse"),
  spreadMethod: oneOf("pad reflect repeat"),
  orient: test(
    (value) =>
      /^\s*(?:auto|auto-start-reverse)\s*$/.test(value) ||
      Math.abs(Number(readNumber(value) ?? Number.NaN)) <= limit.angle,
  ),
  preserveAspectRatio: test((value) =>
    /^\s*(?:none|xM(?:in|id|ax)YM(?:in|id|ax))(?:\s+(?:meet|slice))?\s*$/.test(value),
  ),
  viewBox: test((value) => /^[-+\w\s.,%/]*$/.test(value)),
});

const size = /^(?:width|height|r|rx|ry|fr|markerWidth|markerHeight)$/;

/** Sizes are not negative. */
function readNumeric(name: string): Read {
  const least = size.test(name) ? 0 : Number.NEGATIVE_INFINITY;
  // Of a percentage of the place of a marker or symbol programs take another length each.
  return (value) => (name.startsWith("ref") && value.includes("%") ? undefined : readLength(value, least));
}

function report({ local, value, place }: XmlAttribute, reporter: Reporter): undefined {
  const shown = `${local}=${JSON.stringify(value.slice(0, 60))}`;
  const unit = allow.numericAttributes.has(local) ? findUnit(value) : undefined;
  if (unit !== undefined) {
    const fault = describeUnit(shown, unit);
    reporter.error(fault.rule, place, fault.reason, fault.hint);
    return undefined;
  }
  const what = describe(local);
  const mended = mendNumber(value);
  reporter.error(
    what === undefined ? "svg/value" : "svg/number",
    place,
    what === undefined ? `${shown} is no value that every program knows.` : `${shown} is not ${what}.`,
    mended === undefined
      ? "Export the drawing again, or mend the value by hand."
      : `Write a point in place of the comma: ${local}="${mended}"`,
  );
  return undefined;
}

/** `at` is the offset of what is wrong. */
function reportList({ local, value, place }: XmlAttribute, at: number, reporter: Reporter): undefined {
  const before = JSON.stringify(value.slice(Math.max(0, at - 30), at));
  const wrong =
    at >= value.length ? "it breaks off" : `${JSON.stringify(value.slice(at, at + 20))} cannot follow`;
  const where = at === 0 ? "at its beginning" : `behind ${before}`;
  reporter.error(
    "svg/number",
    place,
    `${local} is not ${describe(local)}: ${wrong} ${where}.`,
    "Export the drawing again, or mend the value by hand: programs draw what stands before the mistake, or nothing.",
  );
  return undefined;
}

function describe(name: string): string | undefined {
  if (name === "d") return "path data";
  if (name === "points") return "a list of points";
  if (name === "viewBox") return "four numbers";
  if (name.endsWith("ransform")) return "a transform";
  if (size.test(name)) return "a number of 0 or more";
  return allow.numericAttributes.has(name) ? "a number" : undefined;
}

function removed(reporter: Reporter, place: Place, name: string): undefined {
  reporter.warn("svg/removed", place, `The attribute ${name} was removed.`);
  return undefined;
}
