// Test support. What axe finds wrong with a page.
import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";

const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/**
 * Returns each rule of WCAG 2.2 AA that the page breaks, with the elements. Only violations are told in full, in the page
 * itself: what passes is thousands of elements, and our pages have no frames of another origin, which this way leaves out.
 */
export async function listViolations(page: Page): Promise<readonly string[]> {
  const builder = new AxeBuilder({ page }).options({ resultTypes: ["violations"] }).withTags(tags);
  const { violations } = await builder.setLegacyMode().analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
}
