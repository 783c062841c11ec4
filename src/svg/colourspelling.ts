// Floor 2. How a changed colour is spelt in a drawing.
import type { Hex } from "../colour/colour.ts";
import { toRgb } from "../colour/colourtext.ts";

/**
 * Writes a colour in the spelling that every SVG reader knows: hex, or rgba() where it is translucent, with four decimals of
 * the opacity at most.
 */
export function formatColour(hex: Hex, alpha01: number): string {
  const alpha = Number(alpha01.toFixed(4));
  if (alpha >= 1) return hex;
  const { r, g, b } = toRgb(hex);
  return `rgba(${Math.round(r * 255)}, ${Math.round(g * 255)}, ${Math.round(b * 255)}, ${alpha})`;
}
