// Page `/404.html`: shown by hosts at any address that is not there.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SiteView } from "../../src/views/siteview.ts";
import { Document } from "../parts/document.tsx";
import { pageOf, useSay } from "../parts/words.tsx";

export const data = { permalink: "404.html" };

/** Renders the page for missing addresses. */
export const render = pageOf(Missing);

function Missing({ site: { missing } }: { site: SiteView }): JSX.Element {
  const say = useSay();
  return (
    <Document frame={missing.frame} layout="missing">
      <header class="opening">
        <h1>{say("frame.missing")}</h1>
        <p class="lede">{say("frame.missingText")}</p>
        <p>
          <a href={missing.frame.links.home}>{say("frame.allStudies")}</a>
        </p>
      </header>
    </Document>
  );
}
