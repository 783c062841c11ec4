// Pages at addresses whose own page has gone: they lead to the new one, with or without script, or say what became of it.
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
      {moved.isSame && <meta http-equiv="refresh" content={`0; url=${moved.address}`} />}
      <meta name="robots" content="noindex" />
    </>
  );
  return (
    <Document frame={moved.frame} layout="missing" head={leads}>
      <header class="opening">
        <h1>{moved.words.heading}</h1>
        <p class="lede">{moved.words.text}</p>
        {[moved, ...moved.others].map(({ address, title }) => (
          <p key={address}>
            <a href={address}>{title}</a>
          </p>
        ))}
      </header>
    </Document>
  );
}
