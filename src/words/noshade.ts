// Floor 7. Why a paint has no shade that is well clear of its neighbours, in one sentence with the limits it would have to keep.
import { nameColour } from "../colour/colourname.ts";
import type { Demand, Shade, ShadeFinding } from "../measure/options/kepthue.ts";
import { formatLimit } from "../measure/percenttext.ts";

/**
 * Returns the sentence, or undefined where a shade meets every demand or none is needed. *Well clear* is clear with 5 points
 * in hand, and no grade lost. `word` is the plain word for the colour.
 *
 * Examples: “No shade of this blue is well clear of both black and yellow: beside black it would have to reflect 24.7 % or more,
 * beside yellow 19.2 % or less.” “No shade of this red is well clear of dark blue: the nearest colour that is well clear is pink, #e8818c.”
 */
export function describeNoShade(
  word: string,
  { isClear, least, lighter, darker, demands }: ShadeFinding,
): string | undefined {
  if (isClear || least !== null) return undefined;
  const others = [lighter, darker].filter((shade) => shade !== null);
  if (others.length > 0)
    return `No shade of this ${word} is well clear of ${listNames(namesOf(demands))}: ${nameOthers(others)}.`;
  const hopeless = demands.find(({ atMost, atLeast }) => atMost === null && atLeast === null);
  if (hopeless !== undefined) return `No shade of this ${word} is well clear of ${hopeless.name}.`;
  const floor = highest(demands);
  const ceiling = lowest(demands);
  const limits = formatLimits(floor, ceiling);
  const areOpposed = floor !== undefined && ceiling !== undefined && floor.percent > ceiling.percent;
  const names = areOpposed ? [floor.name, ceiling.name] : namesOf(demands);
  return `No shade of this ${word} is well clear of ${listNames(names)}${limits}.`;
}

function namesOf(demands: readonly Demand[]): readonly string[] {
  return [...new Set(demands.map(({ name }) => name))];
}

/** Shades that are well clear and are called by another word. */
function nameOthers(shades: readonly Shade[]): string {
  const named = shades.map(({ hex }) => `${nameColour(hex)}, ${hex}`);
  return named.length === 1
    ? `the nearest colour that is well clear is ${named[0]}`
    : `the nearest colours that are well clear are ${named.join(", and ")}`;
}

interface Limit {
  readonly name: string;
  readonly percent: number;
}

/** The strictest of the neighbours that leave only the lighter side. */
function highest(demands: readonly Demand[]): Limit | undefined {
  let found: Limit | undefined;
  for (const { name, atMost, atLeast } of demands) {
    if (atMost !== null || atLeast === null) continue;
    if (found === undefined || atLeast > found.percent) found = { name, percent: atLeast };
  }
  return found;
}

/** The strictest of the neighbours that leave only the darker side. */
function lowest(demands: readonly Demand[]): Limit | undefined {
  let found: Limit | undefined;
  for (const { name, atMost, atLeast } of demands) {
    if (atLeast !== null || atMost === null) continue;
    if (found === undefined || atMost < found.percent) found = { name, percent: atMost };
  }
  return found;
}

function formatLimits(floor: Limit | undefined, ceiling: Limit | undefined): string {
  const parts = [
    ...(floor === undefined
      ? []
      : [{ name: floor.name, limit: `${formatLimit(floor.percent, "at least")} or more` }]),
    ...(ceiling === undefined
      ? []
      : [
          {
            name: ceiling.name,
            limit: `${formatLimit(ceiling.percent, "at most")} or less`,
          },
        ]),
  ];
  const said = parts.map(
    ({ name, limit }, index) => `beside ${name} ${index === 0 ? "it would have to reflect " : ""}${limit}`,
  );
  return said.length === 0 ? "" : `: ${said.join(", ")}`;
}

function listNames(names: readonly string[]): string {
  const [first = "", second] = names;
  if (second === undefined) return first;
  if (names.length === 2) return `both ${first} and ${second}`;
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1)} at once`;
}
