// Floor 2, part of step 1. What a DOCTYPE may say: a public SVG DTD (never fetched) and literal text entities.
import { limit } from "../gate/drawinglimit.ts";

const external =
  /^svg(?: ?(?:PUBLIC ?(?:"[^"]*"|'[^']*') ?(?:"([^"]*)"|'([^']*)')|SYSTEM ?(?:"([^"]*)"|'([^']*)')))?$/;
const entity = /<!ENTITY\s+([A-Za-z_][\w.-]*)\s+(?:"([^"]*)"|'([^']*)')\s*>|<!--[\s\S]*?-->|\s+/y;
const knownDtd = /^https?:\/\/www\.w3\.org\/(?:Graphics\/SVG|TR)\//;

/**
 * Returns the entities that the DOCTYPE `content` declares, by name, or a sentence that says why it is refused.
 * Refused: any other DTD, parameter and external entities, entities with markup or references, other declarations.
 */
export function readEntities(content: string): ReadonlyMap<string, string> | string {
  const bracket = content.indexOf("[");
  const head = bracket < 0 ? content : content.slice(0, bracket);
  const match = external.exec(head.replace(/\s+/g, " ").trim());
  if (/^html\b/i.test(head.trim())) return "The file is a web page, not an SVG drawing.";
  if (match === null) return "The DOCTYPE declares something other than an SVG drawing.";
  const system = match[1] ?? match[2] ?? match[3] ?? match[4];
  if (system !== undefined && !knownDtd.test(system))
    return `The DOCTYPE names a DTD outside the SVG standard: ${JSON.stringify(system)}.`;
  const subset = bracket < 0 ? "[]" : content.slice(bracket).trim();
  return subset.endsWith("]")
    ? readSubset(subset.slice(1, -1))
    : "The DOCTYPE declares something other than an SVG drawing.";
}

function readSubset(subset: string): ReadonlyMap<string, string> | string {
  const entities = new Map<string, string>();
  entity.lastIndex = 0;
  while (entity.lastIndex < subset.length) {
    const declared = entity.exec(subset);
    if (declared === null) return "The DOCTYPE holds a declaration other than a plain text entity.";
    const [, name, double, single] = declared;
    if (name === undefined) continue;
    const value = double ?? single ?? "";
    if (value.length > limit.entityLength)
      return `The entity ${name} is longer than ${limit.entityLength} characters.`;
    if (/[<&%]/.test(value)) return `The entity ${name} holds markup or another reference.`;
    entities.set(name, value);
  }
  return entities;
}
