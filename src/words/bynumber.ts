// Floor 7. A message for each kind of number that a language tells apart, for a script that counts on the page.
import type { Format } from "./format.ts";

/** Attributes of an element, named after the categories of `Intl.PluralRules`: `data-one`, `data-other`. */
export type ByNumber = Readonly<Record<`data-${string}`, string>>;

/** No category of our languages begins behind it, but that of millions: what has no attribute is said as `data-other`. */
const farthest = 100;

/** Says a message that chooses by `count`, with `#` in the place of the number, once for each category. */
export function sayByNumber(id: "surveyTable.chosen", { language, say }: Format): ByNumber {
  const rules = new Intl.PluralRules(language);
  const counts = new Map<string, number>();
  for (let count = 0; count <= farthest; count += 1) {
    const category = rules.select(count);
    if (!counts.has(category)) counts.set(category, count);
  }
  return Object.fromEntries(
    [...counts].map(([category, count]) => [`data-${category}`, say(id, { count, number: "#" })]),
  );
}
