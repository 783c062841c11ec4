// Floor 11. Two colours side by side in a terminal that can show them.
import type { Hex } from "../../colour/colour.ts";
import { toRgb } from "../../colour/colourtext.ts";

/**
 * Puts a block of each row's colours in front of the lines of a table, whose first line is its head.
 *
 * Source: ISO/IEC 8613-6 (ITU-T T.416), 13.1.8, select graphic rendition 48;2 for a direct background colour.
 */
export function addSwatches(table: string, rows: readonly (readonly Hex[])[]): string {
  const [head = "", ...lines] = table.split("\n");
  const widest = Math.max(0, ...rows.map((hexes) => hexes.length));
  const pad = (count: number): string => " ".repeat(3 * count);
  const shown = lines.map((line, index) => {
    const hexes = rows[index] ?? [];
    return `  ${hexes.map(formatSwatch).join("")}${pad(widest - hexes.length)}${line.slice(2)}`;
  });
  return [`  ${pad(widest)}${head.slice(2)}`.trimEnd(), ...shown].join("\n");
}

function formatSwatch(hex: Hex): string {
  const { r, g, b } = toRgb(hex);
  const bytes = [r, g, b].map((part) => Math.round(part * 255)).join(";");
  return `\u001b[48;2;${bytes}m  \u001b[0m `;
}
