// Floor 2, part of step 2. Properties of filters and of blending: read so that what they do can be seen once, then left out.

import { readShare, splitReference } from "./attributevalue.ts";
import { properties } from "./property.ts";

/** What filters and blends are declared with; all but the last three are attributes too (SVG 2, section 6.6). */
export const effectProperties: ReadonlySet<string> = new Set([
  "filter",
  "flood-color",
  "flood-opacity",
  "color-interpolation-filters",
  "mix-blend-mode",
  "isolation",
]);

export const isEffectAttribute = (name: string): boolean =>
  effectProperties.has(name) && name !== "mix-blend-mode" && name !== "isolation";

/** Source: Compositing and Blending 1, section 9. */
export const blendModes: ReadonlySet<string> = new Set(
  `multiply screen overlay darken lighten color-dodge color-burn hard-light soft-light difference exclusion hue saturation
  color luminosity`.split(/\s+/),
);

/** What is written for a value of which nothing is known; no value of the properties below. */
export const unknownValue = "?";

/**
 * Returns a value in one form; `unknownValue` for one that counts only where a filter has it, undefined for one that nobody
 * can look through. Example: `readEffect("filter", "url('#a')")` → `url(#a)`.
 */
export function readEffect(name: string, text: string): string | undefined {
  const value = text.toLowerCase();
  const isReset = /^(?:initial|unset)$/.test(value);
  if (name === "filter") return isReset || value === "none" ? "none" : readFilter(text);
  if (name === "mix-blend-mode") {
    if (isReset || value === "normal") return "normal";
    return blendModes.has(value) ? value : undefined;
  }
  if (name === "isolation") return value === "isolate" ? value : "auto";
  if (name === "flood-color") return properties.get("stop-color")?.read(text) ?? unknownValue;
  if (name === "flood-opacity") return readShare(text) ?? unknownValue;
  if (value === "linearrgb") return "linearRGB";
  return value === "srgb" ? "sRGB" : unknownValue;
}

function readFilter(text: string): string | undefined {
  const reference = splitReference(text);
  return reference?.rest === "" && !reference.id.includes("%") ? `url(#${reference.id})` : undefined;
}
