// Test support. What axe finds wrong with a page.
import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";

const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** The rules whose answer hangs on colours alone, or on where things lie: the others see the same in every look of a page. */
const byLook = {
  colours: ["color-contrast", "link-in-text-block"],
  layout: ["target-size", "scrollable-region-focusable"],
} as const;

/**
 * Returns each rule of WCAG 2.2 AA that the page breaks, with the elements. Only violations are told in full, in the page
 * itself: what passes is thousands of elements, and our pages have no frames of another origin, which this way leaves out.
 * `look`: the page was asked about all rules before, and now has other colours, or another width.
 */
export async function listViolations(page: Page, look?: keyof typeof byLook): Promise<readonly string[]> {
  // What a page was given when it was first asked is there still, unless it was loaded again: it is half a megabyte to read.
  const isThere = await page.evaluate(() => "axe" in globalThis);
  const given = isThere ? { page, axeSource: ";" } : { page };
  const builder = new AxeBuilder(given).options({ resultTypes: ["violations"] });
  const asked = look === undefined ? builder.withTags(tags) : builder.withRules([...byLook[look]]);
  const { violations } = await asked.setLegacyMode().analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
}
