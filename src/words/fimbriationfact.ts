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
  const nameOf = (id: string) => nameInText(findPaint(comparison.after, id) ?? { name: id });
  const [one, other] = is.pair.map(nameOf);
  const line = `The ${nameOf(is.line)} line`;
  return {
    key: `${is.line}-${is.pair.join("-")}`,
    lead: helps(is)
      ? `${line} parts ${one} from ${other}`
      : `${line} between ${one} and ${other} does not part them`,
    direct: format.contrast(is.direct),
    across: format.contrast(is.across),
    rest: recall(was, is, nameBefore(is.line, comparison), format),
  };
}

/** Whether the weaker edge of a line has more contrast than the pair would have without it. */
function helps({ direct, across }: Fimbriation): boolean {
  return across > direct;
}

function nameBefore(id: string, { before, after }: Comparison): string {
  const [was, is] = [findPaint(before, id), findPaint(after, id)];
  if (was === undefined || was.hex === is?.hex) return "it";
  return was.part === undefined ? `the ${was.name} line` : `${nameInText(was)} line`;
}

/** How it was before, where the numbers were others. */
function recall(was: Fimbriation, is: Fimbriation, name: string, format: Format): string | undefined {
  if (was.direct === is.direct && was.across === is.across) return undefined;
  const did =
    helps(was) === helps(is)
      ? helps(is)
        ? "did so already"
        : "did not either"
      : helps(was)
        ? "did"
        : "did not";
  return `In the original ${name} ${did}: ${format.contrast(was.across)} in place of ${format.contrast(was.direct)}.`;
}
