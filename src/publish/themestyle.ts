// Floor 9. How a gallery's pages look, as the rules that stand behind those of base.css.
import type { Family } from "../content/gallery/fontfamily.ts";
import type { Theme } from "../content/gallery/themekey.ts";
import { familiesOf } from "../views/fontface.ts";

/** Mean width of a character of running text, in sizes of the letters: of the guide of the demo, in a browser. */
const characterWidths: Readonly<Record<Family, number>> = { "source-serif-4": 0.463, "source-sans-3": 0.405 };

/** Properties of base.css by the families that they name. */
const properties: Readonly<Record<Family, string>> = {
  "source-serif-4": "var(--serif)",
  "source-sans-3": "var(--sans)",
};

/** The spaces of base.css for pages that are close, in rem. */
const closeSpaces = { 4: 0.75, 5: 1.125, 6: 1.5, 7: 2.25, 8: 3.5, 9: 5 };

/** Returns the rules of a theme; an empty text for one that says nothing. */
export function formatTheme(theme: Theme): string {
  const { text, headings } = familiesOf(theme);
  const { measure, density, mat } = theme;
  const spaces = density === "close" ? Object.entries(closeSpaces) : [];
  const declared = [
    ...(theme.text === undefined ? [] : [`--reading: ${properties[text]};`]),
    ...(theme.headings === undefined ? [] : [`--headings: ${properties[headings]};`]),
    ...(measure === undefined
      ? []
      : [`--measure: calc(${measure} * ${characterWidths[text]} * var(--text));`]),
    ...spaces.map(([step, rem]) => `--space-${step}: ${rem}rem;`),
    ...(mat === undefined ? [] : [`--mat: lab(${mat}% 0 0);`]),
  ];
  const rules = declared.length === 0 ? "" : `:root {\n${declared.join("\n")}\n}\n`;
  const own =
    theme.headings === undefined ? "" : ":is(h1, h2, h3, h4, h5, h6) {\nfont-family: var(--headings);\n}\n";
  return `${rules}${own}`;
}
