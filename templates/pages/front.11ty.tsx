// Page `/`: the gain chart, the catalogue of all studies, and the ways to find one.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SiteView } from "../../src/site/present/site.ts";
import { GainFigure } from "../figures/gain.tsx";
import { Document } from "../parts/document.tsx";
import { Entry } from "../parts/entry.tsx";
import { FinderForm, Shelves } from "../parts/finder.tsx";

export const data = { permalink: "index.html" };

/** Renders the front page. */
export function render({ site: { front } }: { site: SiteView }): JSX.Element {
  return (
    <Document
      frame={front.frame}
      layout="front"
      scripts={front.finder ? [front.frame.links.findScript, front.frame.links.listScript] : []}
    >
      <header class="opening">
        <h1>{front.title}</h1>
        <p class="lede">{front.description}</p>
        {front.cards.length > 0 && (
          <p class="count">
            {front.count}
            {front.cards.length > 1 && ", newest first"}. In each pair the original comes first, then the
            redesign.
          </p>
        )}
      </header>
      {front.gain && <GainFigure gain={front.gain} id="gain" />}
      {front.cards.length === 0 ? (
        <p class="empty">
          Nothing is published here yet. The first study will stand on this page; until then,{" "}
          <a href={front.frame.links.method}>the method</a> tells how it will be measured.
        </p>
      ) : (
        <>
          {front.finder && <FinderForm finder={front.finder} count={front.count} />}
          <div class="catalogue">
            {front.cards.map((card, index) => (
              <Entry key={card.address} card={card} eager={index < 2} />
            ))}
          </div>
          <Shelves groups={front.shelves} />
        </>
      )}
    </Document>
  );
}
