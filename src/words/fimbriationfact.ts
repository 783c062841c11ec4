// Floor 7. Fimbriation in words: what the line of a third colour does for the pair it keeps apart, before and after.
import type { Comparison } from "../measure/comparison.ts";
import { type Fimbriation, findFimbriations } from "../measure/fimbriation.ts";
import type { Measure } from "../measure/measurement.ts";
import type { Format } from "./format.ts";
import { findPaint } from "./paintname.ts";
import { nameInText } from "./phrase.ts";

/** `lead`: the contrast of the pair itself, and that of the weaker edge that stands instead; then how it was before. */
export interface FimbriationView {
  readonly key: string;
  readonly lead: string;
  readonly direct: string;
  readonly across: string;
  readonly rest: string | undefined;
}

/** Every line of the original, as it works in the redesign, with how it worked before where the change touches it. */
export function presentFimbriations(comparison: Comparison, format: Format): readonly FimbriationView[] {
  const { before, after } = comparison;
  const now = findFimbriations(after);
  return findFimbriations(before).flatMap((was) => {
    const is = now.find((other) => other.line === was.line && other.pair.join() === was.pair.join());
    return is === undefined ? [] : [present(was, is, comparison, format)];
  });
}

/** The ids of the paints that are lines between two others. */
export function listLines(measure: Measure): ReadonlySet<string> {
  return new Set(findFimbriations(measure).map(({ line }) => line));
}

function present(was: Fimbriation, is: Fimbriation, comparison: Comparison, format: Format): FimbriationView {
  const nameOf = (id: string) => nameInText(findPaint(comparison.after, id) ?? { name: id }, format);
  const [one = "", other = ""] = is.pair.map(nameOf);
  return {
    key: `${is.line}-${is.pair.join("-")}`,
    lead: format.say(helps(is) ? "fimbriation.parts" : "fimbriation.doesNotPart", {
      line: nameOf(is.line),
      one,
      other,
    }),
    direct: format.contrast(is.direct),
    across: format.contrast(is.across),
    rest: recall(was, is, nameBefore(is.line, comparison, format), format),
  };
}

/** Whether the weaker edge of a line has more contrast than the pair would have without it. */
function helps({ direct, across }: Fimbriation): boolean {
  return across > direct;
}

function nameBefore(id: string, { before, after }: Comparison, format: Format): string {
  const [was, is] = [findPaint(before, id), findPaint(after, id)];
  if (was === undefined || was.hex === is?.hex) return format.say("fimbriation.it");
  return was.part === undefined
    ? format.say("fimbriation.theLine", { colour: was.name })
    : format.say("fimbriation.partLine", { part: nameInText(was, format) });
}

/** How it was before, where the numbers were others. */
function recall(
  was: Fimbriation,
  is: Fimbriation,
  line: string,
  { say, contrast }: Format,
): string | undefined {
  if (was.direct === is.direct && was.across === is.across) return undefined;
  const did = helps(was) === helps(is) ? "fimbriation.didAlready" : "fimbriation.did";
  const didNot = helps(was) === helps(is) ? "fimbriation.didNotEither" : "fimbriation.didNot";
  return say(helps(was) ? did : didNot, { line, across: contrast(was.across), direct: contrast(was.direct) });
}
