// Floor 2, part of step 1. What a DOCTYPE may say: a public SVG DTD (never fetched) and literal text entities.
import { limit } from "./limit.ts";

const external =
  /^\s*svg\s*(?:PUBLIC\s*(?:"[^"]*"|'[^']*')\s*(?:"([^"]*)"|'([^']*)')|SYSTEM\s*(?:"([^"]*)"|'([^']*)'))?\s*(\[[\s\S]*\])?\s*$/;
const entity = /^<!ENTITY\s+([A-Za-z_][\w.-]*)\s+(?:"([^"]*)"|'([^']*)')\s*>/;
const knownDtd = /^https?:\/\/www\.w3\.org\/(?:Graphics\/SVG|TR)\//;

/**
 * Returns the entities that the DOCTYPE `content` declares, by name, or a sentence that says why it is refused.
 * Refused: any other DTD, parameter and external entities, entities with markup or references, other declarations.
 */
export function readEntities(content: string): ReadonlyMap<string, string> | string {
  const match = external.exec(content);
  if (match === null) return "The DOCTYPE declares something other than an SVG drawing.";
  const system = match[1] ?? match[2] ?? match[3] ?? match[4];
  if (system !== undefined && !knownDtd.test(system))
    return `The DOCTYPE names a DTD outside the SVG standard: ${JSON.stringify(system)}.`;
  const entities = new Map<string, string>();
  let rest = (match[5] ?? "[]")
    .slice(1, -1)
    .replace(/<!--[\s\S]*?-->/g, "")
    .trim();
  while (rest !== "") {
    const declared = entity.exec(rest);
    if (declared === null) return "The DOCTYPE holds a declaration other than a plain text entity.";
    const name = declared[1] ?? "";
    const value = declared[2] ?? declared[3] ?? "";
    if (value.length > limit.entityLength)
      return `The entity ${name} is longer than ${limit.entityLength} characters.`;
    if (/[<&%]/.test(value)) return `The entity ${name} holds markup or another reference.`;
    entities.set(name, value);
    rest = rest.slice(declared[0].length).trim();
  }
  return entities;
}
