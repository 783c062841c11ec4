// Floor 2, part of step 2. Attributes of one element: kept as they are, dropped, or refused with the reason.
import type { Place } from "../problem/problem.ts";
import * as allow from "./allow.ts";
import { findComments, findLive, parseDeclarations } from "./css.ts";
import { cut } from "./cut.ts";
import { limit } from "./limit.ts";
import type { Reporter } from "./report.ts";
import { checkDeclaration } from "./sheet.ts";
import { isLength, isLengthList, isPathData, isPointList, isTransform } from "./value.ts";
import type { XmlAttribute, XmlElement } from "./xmlnode.ts";

export interface CleanAttributes {
  readonly attributes: Record<string, string>;
  readonly places: Record<string, Place>;
}

/**
 * Returns the attributes of `element` that may stay, as null-prototype records.
 *
 * Problems: svg/removed (warning), svg/reference, svg/number, svg/value, svg/viewbox, and those of checkDeclaration.
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
  return { attributes, places };
}

function admit(
  element: XmlElement,
  attribute: XmlAttribute,
  reporter: Reporter,
): { name: string; value: string } | undefined {
  const { local, value, place } = attribute;
  const lower = local.toLowerCase();
  if (attribute.uri === allow.xlinkNamespace)
    return local === "href" ? href(element, attribute, reporter) : undefined;
  if (lower.startsWith("on")) return removed(reporter, place, local);
  if (attribute.uri !== "") return foreign(attribute, reporter);
  if (local === "xmlns") return undefined;
  if (local === "href") return href(element, attribute, reporter);
  if (local === "style") return inlineStyle(attribute, reporter);
  if (local === "viewbox") {
    reporter.error(
      "svg/viewbox",
      place,
      "The attribute is written viewbox, so drawing programs do not see it.",
      'Write viewBox="…" with a capital B.',
    );
    return undefined;
  }
  if (allow.properties.has(local)) {
    return checkDeclaration(local, value, place, reporter) ? { name: local, value } : undefined;
  }
  if (local === "filter") return filter(attribute, reporter);
  if (allow.attributes.has(local) || /^(?:data|aria)-[\w.-]+$/.test(local))
    return checked(attribute, reporter);
  if (allow.silentAttribute.test(local) || allow.silentProperty.test(local)) return undefined;
  return removed(reporter, place, local);
}

function filter(attribute: XmlAttribute, reporter: Reporter): undefined {
  if (attribute.value.trim() === "none") return undefined;
  reporter.error(
    "svg/unsupported",
    attribute.place,
    "The drawing uses a filter, which is not supported.",
    "Remove the shadow, blur or glow in a drawing program, or draw it as a plain shape.",
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
  if (/^#[^\s#]+$/.test(value) || value === "#") return { name, value };
  if (!allow.elements.has(element.local)) return undefined;
  reporter.error(
    "svg/reference",
    attribute.place,
    `<${element.local}> points outside the drawing: ${JSON.stringify(value.slice(0, 60))}.`,
    'Copy what it points at into this file and write href="#its-id".',
  );
  return undefined;
}

function checked(attribute: XmlAttribute, reporter: Reporter): { name: string; value: string } | undefined {
  const { local, value, place } = attribute;
  if (isValid(local, value)) return { name: local, value };
  reporter.error(
    "svg/number",
    place,
    `${local}=${JSON.stringify(value.slice(0, 60))} is not ${describe(local)}.`,
    mendNumber(local, value) ?? "Export the drawing again, or mend the value by hand.",
  );
  return undefined;
}

/** A number with a comma, as much of the world writes it. */
function mendNumber(name: string, value: string): string | undefined {
  const isComma = /^-?\d+,\d+(?:px)?$/.test(value.trim());
  return isComma
    ? `Write a point in place of the comma: ${name}="${value.trim().replace(",", ".")}"`
    : undefined;
}

/** Free text: ids, names, languages. Everything else that is kept is made of words and numbers. */
const freeText = /^(?:id|class|lang|role|data-.*|aria-.*)$/;

function isValid(name: string, value: string): boolean {
  if (name === "d") return isPathData(value) || value.trim() === "none";
  if (name === "points") return isPointList(value);
  if (freeText.test(name)) return true;
  if (value.length > limit.valueLength) return false;
  if (name.endsWith("ransform")) return isTransform(value);
  if (allow.numericAttributes.has(name))
    return (
      isLength(value) ||
      value.trim() === "auto" ||
      (name === "x" || name === "y" ? isLengthList(value) : false)
    );
  return /^[-+\w\s.,%/]*$/.test(value);
}

function describe(name: string): string {
  if (name === "d") return "path data";
  if (name === "points") return "a list of points";
  if (name.endsWith("ransform")) return "a transform";
  return allow.numericAttributes.has(name) ? "a number" : "a plain value";
}

/** Removes what is not allowed from a `style` attribute by offset, so that the rest stays letter for letter. */
function inlineStyle(
  attribute: XmlAttribute,
  reporter: Reporter,
): { name: string; value: string } | undefined {
  const { value, place } = attribute;
  const { declarations, oddities } = parseDeclarations(value);
  const cuts: { start: number; end: number }[] = [...findComments(value)];
  for (const oddity of oddities) {
    if (oddity.what.trim() !== "" && oddity.what.trim() !== ";")
      reporter.warn("svg/removed", place, `Unreadable style was removed: ${JSON.stringify(oddity.what)}.`);
    cuts.push(oddity);
  }
  for (const declaration of declarations) {
    if (!checkDeclaration(declaration.property, declaration.value, place, reporter)) cuts.push(declaration);
  }
  const text = cut(value, cuts);
  const live = findLive(text);
  if (live !== undefined || parseDeclarations(text).oddities.some(({ what }) => /[^\s;]/.test(what))) {
    reporter.error(
      "svg/css",
      place,
      `style is no plain list of declarations: ${JSON.stringify((live ?? text).slice(0, 60))}.`,
      'Write style="property: value; …".',
    );
    return undefined;
  }
  return text.trim() === "" ? undefined : { name: "style", value: text };
}

function removed(reporter: Reporter, place: Place, name: string): undefined {
  reporter.warn("svg/removed", place, `The attribute ${name} was removed.`);
  return undefined;
}
