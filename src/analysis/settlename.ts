// Floor 6. What the author calls colours: the names of a study with the palette's word that it uses, and names of nothing.
import type { Hex } from "../colour/colour.ts";
import { isOwnName, type NamedColour } from "../colour/colourname.ts";
import { linearOf, parseColour } from "../colour/colourtext.ts";
import { measureDifference } from "../colour/difference.ts";
import { keyed } from "../content/study/colourword.ts";
import type { Change } from "../content/study/study.ts";
import { type Problem, report } from "../problem/problem.ts";

/** Names that are settled before a drawing is looked at. */
export interface Settled {
  readonly palette: ReadonlyMap<string, string>;
  readonly names?: ReadonlyMap<Hex, string>;
}

/**
 * Returns the names of a study with that of the palette which `change.with` uses: where the flag has that very colour
 * already, it is called so before and after. A word that the tool gives colours itself (`dark blue`) settles nothing.
 */
export function settleNames(
  change: Change,
  { palette, names = new Map() }: Settled,
): ReadonlyMap<Hex, string> {
  const word = change.with.trim().toLowerCase();
  const [name, text] = [...palette].find(([one]) => one.toLowerCase() === word) ?? [];
  const hex = text === undefined ? undefined : parseColour(text)?.hex;
  const isName = hex !== undefined && name !== undefined && !isOwnName(word);
  return isName && !names.has(hex) ? new Map([...names, [hex, name]]) : names;
}

/**
 * Returns a warning for each name of a colour that is neither in the drawing nor put into it, with the nearest that is.
 *
 * Problems: warning study/name-absent.
 */
export function checkNames(
  change: Change,
  colours: readonly NamedColour[],
  { palette, names = new Map() }: Settled,
): readonly Problem[] {
  const put = parseColour(palette.get(change.with) ?? change.with)?.hex;
  return [...names].flatMap(([hex, name]): Problem[] => {
    if (put === hex || colours.some((colour) => colour.hex === hex)) return [];
    const [nearest] = [...colours].sort((a, b) => measureAway(a, hex) - measureAway(b, hex));
    return [
      report(
        "study/name-absent",
        keyed(`names.${hex}`),
        {
          reason: `The drawing has no colour ${hex}, so nothing is called “${name}”.`,
          hint:
            nearest === undefined
              ? "Delete the line."
              : `The nearest that it has is ${nearest.hex} (${nearest.name}): type ${JSON.stringify(nearest.hex)}, if that is meant.`,
        },
        "warning",
      ),
    ];
  });
}

function measureAway(colour: NamedColour, hex: Hex): number {
  return measureDifference(linearOf(colour.hex), linearOf(hex));
}
