// Floor 7. Names of paints as a sentence needs them.
import type { MeasuredColour } from "../measure/measurement.ts";
import type { Format } from "./format.ts";

/** A paint in a sentence: the part that `only` selects is what the author calls it, else `the selected brown`. */
export function nameInText({ name, part }: Pick<MeasuredColour, "name" | "part">, { say }: Format): string {
  if (part === undefined) return name;
  return part.called ?? say("colour.selected", { colour: part.of });
}

/** Two paint names as an edge is called: `white / light blue`. */
export function formatNames([one, other]: readonly [string, string], { say }: Format): string {
  return say("edge.names", { one, other });
}

/** A text with its first letter in upper case. */
export function capitalise(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
