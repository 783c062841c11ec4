// Floor 6. A focus typed as one word or phrase → the colour or the shapes that are meant, by what the drawing has.
import { parseColour } from "../../colour/colourtext.ts";
import type { Focus } from "../../content/study/study.ts";
import { readDrawing } from "../../svg/gate/sanitise.ts";
import { resolveDrawing } from "../../svg/instance.ts";
import { selectInstances } from "../../svg/limitedchange.ts";
import { mapColours } from "../../svg/recolour.ts";

/**
 * Decides what `text` means: a colour that the drawing has; else a CSS selector that matches something in it (`#fade` is
 * both, so the drawing decides); else any colour, or a name in letters and spaces; else a selector. What then is not
 * there is reported by whoever looks for it.
 */
export function readTypedFocus(bytes: Uint8Array, text: string): Focus {
  const hex = parseColour(text)?.hex;
  const isNamed = hex !== undefined || /^\p{L}[\p{L} '-]*$/u.test(text.trim());
  const { value: drawing } = readDrawing("", bytes);
  const otherwise: Focus = isNamed ? { colour: text } : { select: text };
  if (drawing === undefined) return otherwise;
  const resolved = resolveDrawing(drawing);
  let hasColour = false;
  mapColours(resolved, (each) => {
    hasColour ||= each === hex;
    return each;
  });
  if (hasColour) return { colour: text };
  const selected = selectInstances(resolved, text);
  return typeof selected !== "string" && selected.size > 0 ? { select: text } : otherwise;
}
