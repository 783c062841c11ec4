// Floor 2, part of step 2. Which child of a <switch> shows: the first that asks for nothing, where every browser passes over
// those before it. Source: SVG 2, section 5.8 (conditional processing).

import type { Place } from "../../problem/problem.ts";
import { walkXml, type XmlElement } from "../xml/xmlnode.ts";
import * as allow from "./allowlist.ts";
import type { Reporter } from "./drawingreport.ts";

/** What browsers take for the child that shows; others, such as a title, some take and show nothing. */
const shows = new Set([...allow.shapes, "g", "a", "svg", "use", "switch"]);

/** `requiredFeatures` is of SVG 1.1 and followed by some programs alone. */
const asks = /^(?:systemLanguage|requiredExtensions|requiredFeatures)$/;

/**
 * Returns the child that shows, or undefined after an error; ids below the others are noted in `hidden`, since browsers show
 * what points there in their own ways.
 *
 * Problems: svg/unsupported.
 */
export function chooseChild(
  element: XmlElement,
  hidden: Map<string, Place>,
  reporter: Reporter,
): XmlElement | undefined {
  const children = element.children.filter((child): child is XmlElement => child.kind === "element");
  const chosen = children.find((child) => !isPassedOver(child));
  if (chosen === undefined || chosen.uri !== allow.svgNamespace || !shows.has(chosen.local))
    return refuse(chosen ?? element, "stands where a shape or a group should be the first to show", reporter);
  const asked = chosen.attributes.find(({ uri, local }) => uri === "" && asks.test(local));
  if (asked !== undefined)
    return refuse(chosen, `asks for ${asked.local}, which depends on who looks at it`, reporter, asked.place);
  for (const other of children) if (other !== chosen) noteIds(other, hidden);
  return chosen;
}

/** Whether an element asks for what a drawing program alone can show. */
function isPassedOver({ uri, attributes }: XmlElement): boolean {
  const asked = attributes.find(
    (attribute) => attribute.uri === "" && attribute.local === "requiredExtensions",
  );
  return uri === allow.svgNamespace && asked !== undefined && allow.silentNamespace.test(asked.value.trim());
}

function noteIds(element: XmlElement, hidden: Map<string, Place>): void {
  for (const { attributes } of walkXml(element))
    for (const { uri, local, value, place } of attributes)
      if (uri === "" && local === "id") hidden.set(value, place);
}

function refuse(
  { local, place }: XmlElement,
  what: string,
  reporter: Reporter,
  at: Place = place,
): undefined {
  const reason = local === "switch" ? `<switch> ${what}.` : `<${local}> in a <switch> ${what}.`;
  reporter.error(
    "svg/unsupported",
    at,
    reason,
    "Keep one of the alternatives of <switch> and remove the rest.",
  );
  return undefined;
}
