// Floor 2, part of step 2. A paint that is a colour by its looks and none by its spelling, which every program passes over.

import { parseColour } from "../../colour/colourtext.ts";
import { cssNames } from "../../colour/cssname.ts";
import { findNearest } from "../../problem/knownword.ts";

/** What is drawn in its place: as if the property were not there. */
const drawn: Readonly<Record<string, string>> = {
  fill: "Until then the shape is drawn as if it had no fill of its own: black, unless its group has one.",
  stroke: "Until then the shape is drawn as if it had no stroke of its own.",
  "stop-color": "Until then the stop of the gradient is drawn as if it had no colour: black.",
};

/**
 * Words of a paint that name no colour of their own.
 *
 * Source: SVG 2, section 13.2 (none, context-fill, context-stroke); CSS Cascade 5, section 7.3 (inherit and the like);
 * CSS Color 4, section 6.2 and appendix A (system colours, and those that are deprecated).
 */
const keywords = new Set(
  `none context-fill context-stroke inherit initial unset revert revert-layer currentcolor transparent
  accentcolor accentcolortext activetext buttonborder buttonface buttontext canvas canvastext field fieldtext graytext
  highlight highlighttext linktext mark marktext selecteditem selecteditemtext visitedtext
  activeborder activecaption appworkspace background buttonhighlight buttonshadow captiontext inactiveborder
  inactivecaption inactivecaptiontext infobackground infotext menu menutext scrollbar threeddarkshadow threedface
  threedhighlight threedlightshadow threedshadow window windowframe windowtext`.split(/\s+/),
);

/**
 * Returns why `value` is no colour and what to write, or undefined where it is one, or anything but `#` with letters and
 * digits or one plain word: functions, references and empty values are none of our business.
 *
 * Example: `findNoColour("fill", "#3b3f4")`.
 */
export function findNoColour(
  property: string,
  value: string,
): { readonly reason: string; readonly hint: string } | undefined {
  const until = drawn[property];
  const word = value.trim().toLowerCase();
  if (until === undefined || !/^#\w*$|^[a-z]+$|^(?:[\da-f]{3}|[\da-f]{6})$/.test(word)) return undefined;
  if (keywords.has(word) || parseColour(word) !== undefined) return undefined;
  const reason = `${property} is ${JSON.stringify(value.trim().slice(0, 60))}, which is no colour.`;
  return { reason, hint: `${propose(word)}\n${until}` };
}

function propose(word: string): string {
  if (word.startsWith("#")) return "A hex colour has six digits, or three: write, for example, #f4c430.";
  if (/^(?:[\da-f]{3}|[\da-f]{6})$/.test(word)) return `Put # before it: #${word}`;
  const near = findNearest(word, cssNames);
  return near === undefined
    ? "Write a hex colour, for example #f4c430."
    : `Write “${near}”, if that is meant.`;
}
