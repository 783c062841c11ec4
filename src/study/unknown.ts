// Floor 5. What to say of a word that should be a colour and is none: the same words wherever it stands.
import { cssNames } from "../colour/css.ts";
import { findNearest } from "../problem/nearest.ts";
import { quoteText } from "../problem/quote.ts";

/** Returns the reason and the hint for `text`. `names` are those of the palette, where they may be used. */
export function describeUnknownColour(
  text: string,
  names: readonly string[],
): { readonly reason: string; readonly hint: string } {
  const isWhat =
    names.length === 0 ? "is not a CSS colour" : "is neither a name of the palette nor a CSS colour";
  return { reason: `${quoteText(text)} ${isWhat}.`, hint: proposeColour(text, names) };
}

function proposeColour(text: string, names: readonly string[]): string {
  if (/^(?:[0-9a-f]{3}|[0-9a-f]{6})$/i.test(text)) return `Put # before it: "#${text.toLowerCase()}"`;
  if (text.startsWith("#"))
    return 'A hex colour is # and 3 or 6 digits, 0 to 9 and a to f, such as "#f4c430".';
  const near = findNearest(text, [...names, ...cssNames]);
  if (near !== undefined) return `Did you mean “${near}”?`;
  const css = 'Type a CSS colour in quotes, such as "#f4c430"';
  return names.length === 0 ? `${css}.` : `${css}, or one of the palette: ${names.join(", ")}.`;
}
