// Page `/series/<slug>/sheet/`: the sheets of all that a series holds, with contents before and answers at the end.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SheetPage } from "../../src/views/sheet/sheetpage.ts";
import type { SiteView } from "../../src/views/siteview.ts";
import { Sheets } from "../parts/sheets.tsx";

export const data = {
  pagination: { data: "site.seriesSheets", size: 1, alias: "sheet" },
  permalink: ({ sheet }: { sheet: SheetPage }) => `${sheet.folder}/index.html`,
};

/** Renders the sheets of one series. */
export function render({ sheet }: { site: SiteView; sheet: SheetPage }): JSX.Element {
  return <Sheets sheet={sheet} />;
}
