// Floor 11. Rows of text → a table in columns, as wide as what stands in it.
import { showText } from "../../problem/quote.ts";
import { measureColumns } from "../../problem/width.ts";

/** A column: its heading, and whether its cells end or begin under one another. */
export interface Column {
  readonly head: string;
  readonly align: "left" | "right";
}

/** Returns the table, indented by two spaces, two spaces between columns, no space at the ends of lines. */
export function formatTable(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const all = [columns.map((column) => column.head), ...rows.map((row) => row.map(showText))];
  const widths = columns.map((_, index) => Math.max(...all.map((row) => measureColumns(row[index] ?? ""))));
  return all
    .map((row) => {
      const cells = columns.map(({ align }, index) => {
        const cell = row[index] ?? "";
        const space = " ".repeat((widths[index] ?? 0) - measureColumns(cell));
        return align === "left" ? cell + space : space + cell;
      });
      return `  ${cells.join("  ")}`.trimEnd();
    })
    .join("\n");
}
