// Floor 5. What to say of a word that should be a colour and is none: the same words wherever it stands.

import { cssNames } from "../../colour/cssname.ts";
import { findNearest } from "../../problem/knownword.ts";
import type { Advice } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";

/** Returns the reason and the hint for `text`. `names` are those that may be used. */
export function describeUnknownColour(text: string, names: readonly string[]): Advice {
  if (text.startsWith("#")) return describeHex(text);
  if (inkCode.test(text)) {
    const reason = `${quoteText(text)} is a code for inks or paints, and has no one colour on a screen.`;
    return { reason, hint: 'Look up its colour on screen and type that in hex, such as "#f4c430".' };
  }
  const isWhat =
    names.length === 0 ? "is not a CSS colour" : "is neither a name of the palette nor a CSS colour";
  return { reason: `${quoteText(text)} ${isWhat}.`, hint: proposeColour(text, names) };
}

/** Codes that say how to mix or order a colour: four inks in percent, and the books of paint and ink makers. */
const inkCode = /^(?:cmyk\b|c\s*(?:[:=]\s*)?\d+\D+m\s*(?:[:=]\s*)?\d|pms\b|pantone\b|ral\b|hks\b|ncs\b)/i;

function describeHex(text: string): Advice {
  const digits = text.slice(1);
  const wrong = /[^0-9a-f]/i.exec(digits)?.[0];
  const meant = digits.toLowerCase().replace(/o/g, "0").replace(/[il]/g, "1");
  if (wrong !== undefined) {
    const reason = `${quoteText(text)} has ${quoteText(wrong)} in it; a hex colour has digits from 0 to 9 and letters from a to f.`;
    const isRead = /^(?:[0-9a-f]{3}|[0-9a-f]{6})$/.test(meant);
    return { reason, hint: isRead ? `Type: "#${meant}"` : 'Type # and six of them, such as "#f4c430".' };
  }
  const count = digits.length === 1 ? "1 digit" : `${digits.length} digits`;
  const reason = `${quoteText(text)} has ${count} behind the #; a hex colour has six, or three.`;
  return { reason, hint: 'Type all six, such as "#f4c430".' };
}

function proposeColour(text: string, names: readonly string[]): string {
  if (/^(?:[0-9a-f]{3}|[0-9a-f]{6})$/i.test(text)) return `Put # before it: "#${text.toLowerCase()}"`;
  const near = findNearest(text, [...names, ...cssNames]);
  if (near !== undefined) return `Type “${near}”, if that is meant.`;
  const css = 'Type a hex colour in quotes, such as "#f4c430"';
  return names.length === 0 ? `${css}.` : `${css}, or a name: ${names.join(", ")}.`;
}
