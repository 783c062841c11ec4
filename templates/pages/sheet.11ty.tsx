// Page `/studies/<slug>/sheet/`: a handout, a worksheet and the answers of one study, to print.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SheetPage } from "../../src/views/sheet/sheetpage.ts";
import type { SiteView } from "../../src/views/siteview.ts";
import { Sheets } from "../parts/sheets.tsx";

export const data = {
  pagination: { data: "site.sheets", size: 1, alias: "sheet" },
  permalink: ({ sheet }: { sheet: SheetPage }) => `${sheet.folder}/index.html`,
};

/** Renders the sheets of one study. */
export function render({ sheet }: { site: SiteView; sheet: SheetPage }): JSX.Element {
  return <Sheets sheet={sheet} />;
}
