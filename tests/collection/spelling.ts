// The spelling of colours in SVG text, evened out by text alone, so that two drawings can be compared that differ in it
// and in nothing else. Written apart from the code under test; only the colour names come from there.
import { parseColour } from "../../src/colour/colourtext.ts";

const properties = "fill|stroke|color|stop-color";

/**
 * Returns `svg` with every declared colour as #rrggbb/alpha. On the root, on masks and on stops a declared black is
 * dropped, for it is what stands there without a declaration.
 */
export function evenOut(svg: string): string {
  return svg
    .replace(
      new RegExp(`( (?:${properties})=")([^"]*)"`, "g"),
      (_, before: string, value: string) => `${before}${spell(value)}"`,
    )
    .replace(
      new RegExp(`([\\s;{"](?:${properties})\\s*:\\s*)([^;}"<!]+)`, "g"),
      (_, before: string, value: string) => `${before}${spell(value)}`,
    )
    .replace(/<(?:svg|mask)\b[^>]*>/g, (tag) => tag.replace(/ (?:fill|color)="#000000\/1"/g, ""))
    .replace(/<stop\b[^>]*>/g, (tag) => tag.replace(/ stop-color="#000000\/1"/g, ""));
}

function spell(value: string): string {
  const colour = parseColour(value.trim() === "initial" ? "black" : value);
  return colour === undefined ? value.trim() : `${colour.hex}/${colour.alpha01}`;
}
