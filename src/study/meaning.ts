// Floor 5. Names of the usual palette that CSS has for other shades: said once for a whole study, with what was used.
import { parseColour } from "../colour/parse.ts";
import { quoteText } from "../problem/quote.ts";
import type { Finding } from "./finding.ts";
import { isUsualPalette } from "./palette.ts";

/** A name where it was typed. */
interface Typed {
  readonly path: string;
  readonly name: string;
}

/**
 * Returns one warning for all names in `typed` that mean one shade in the palette and another in CSS. A palette that a
 * gallery names itself is its own word on the matter: there is nothing to ask.
 */
export function checkMeanings(typed: readonly Typed[], palette: ReadonlyMap<string, string>): Finding[] {
  if (!isUsualPalette(palette)) return [];
  const shades = new Map<string, readonly [used: string, other: string]>();
  for (const { name } of typed) {
    const used = palette.get(name.toLowerCase());
    const other = parseColour(name)?.hex;
    if (used !== undefined && other !== undefined && used !== other)
      shades.set(name.toLowerCase(), [used, other]);
  }
  const first = typed.find(({ name }) => shades.has(name.toLowerCase()));
  if (first === undefined) return [];
  const means = [...shades].map(
    ([name, [used, other]]) => `${quoteText(name)} is ${used}, not ${other} as in CSS`,
  );
  const used = shades.get(first.name.toLowerCase()) ?? ["", ""];
  return [
    {
      rule: "study/two-meanings",
      severity: "warning",
      path: first.path,
      on: "value",
      reason: `Names are taken from the usual palette: ${means.join("; ")}.`,
      hint: `To settle it, type the one you mean: with: ${JSON.stringify(used[0])} or with: ${JSON.stringify(used[1])}`,
    },
  ];
}
