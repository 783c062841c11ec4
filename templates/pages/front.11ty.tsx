// Page `/`: the catalogue of all studies.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SiteView } from "../../src/site/present/site.ts";
import { Document } from "../parts/document.tsx";
import { Entry } from "../parts/entry.tsx";

export const data = { permalink: "index.html" };

/** Renders the front page. */
export function render({ site: { front } }: { site: SiteView }): JSX.Element {
  return (
    <Document frame={front.frame} layout="front">
      <header class="opening">
        <h1>{front.title}</h1>
        <p class="lede">{front.description}</p>
        <p class="count">
          {front.count}, newest first. In each pair the original comes first, then the redesign.
        </p>
      </header>
      {front.cards.length === 0 ? (
        <p class="empty">No study has been published yet.</p>
      ) : (
        <div class="catalogue">
          {front.cards.map((card, index) => (
            <Entry key={card.address} card={card} eager={index < 4} />
          ))}
        </div>
      )}
    </Document>
  );
}
