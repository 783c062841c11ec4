// Floor 4, for step 4. Why a paint has no shade that clears, in one sentence with the limits it would have to keep.
import { formatLimit } from "./format.ts";
import type { Demand, ShadeFinding } from "./shade.ts";

/**
 * Returns the sentence, or undefined where a shade clears or none is needed. `word` is the plain word for the colour.
 *
 * Example: “No shade of this blue clears both black and yellow: beside black it would have to reflect 28.4 % or more,
 * beside yellow 19.2 % or less.”
 */
export function describeNoShade(word: string, { isClear, least, demands }: ShadeFinding): string | undefined {
  if (isClear || least !== null) return undefined;
  const hopeless = demands.find(({ atMost, atLeast }) => atMost === null && atLeast === null);
  if (hopeless !== undefined) return `No shade of this ${word} clears ${hopeless.name}.`;
  const floor = highest(demands);
  const ceiling = lowest(demands);
  const limits = formatLimits(floor, ceiling);
  const areOpposed = floor !== undefined && ceiling !== undefined && floor.percent > ceiling.percent;
  const names = areOpposed ? [floor.name, ceiling.name] : [...new Set(demands.map(({ name }) => name))];
  return `No shade of this ${word} clears ${listNames(names)}${limits}.`;
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
