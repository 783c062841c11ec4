// Page `/404.html`: shown by hosts at any address that is not there.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SiteView } from "../../src/views/siteview.ts";
import { Document } from "../parts/document.tsx";

export const data = { permalink: "404.html" };

/** Renders the page for missing addresses. */
export function render({ site: { missing } }: { site: SiteView }): JSX.Element {
  return (
    <Document frame={missing.frame} layout="missing">
      <header class="opening">
        <h1>No page here</h1>
        <p class="lede">
          There is no page at this address. A study may have been taken out of the gallery, or the address
          mistyped.
        </p>
        <p>
          <a href={missing.frame.links.home}>All studies</a>
        </p>
      </header>
    </Document>
  );
}
