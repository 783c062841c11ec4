// Pages at addresses that a study had before: they lead to the new one, with or without script.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MovedPage } from "../../src/views/redirectpage.ts";
import type { SiteView } from "../../src/views/siteview.ts";
import { Document } from "../parts/document.tsx";

export const data = {
  pagination: { data: "site.moved", size: 1, alias: "moved" },
  permalink: ({ moved }: { moved: MovedPage }) => `${moved.folder}/index.html`,
};

/** Renders the page at one old address. */
export function render({ moved }: { site: SiteView; moved: MovedPage }): JSX.Element {
  const leads = (
    <>
      <meta http-equiv="refresh" content={`0; url=${moved.address}`} />
      <meta name="robots" content="noindex" />
    </>
  );
  return (
    <Document frame={moved.frame} layout="missing" head={leads}>
      <header class="opening">
        <h1>This page has moved</h1>
        <p class="lede">It is now at another address.</p>
        <p>
          <a href={moved.address}>{moved.title}</a>
        </p>
      </header>
    </Document>
  );
}
