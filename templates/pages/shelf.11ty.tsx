// Pages `/authors/<slug>/`, `/tags/<slug>/` and `/decisions/`: all studies of one author, with one tag, or that are decided.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { ShelfPage } from "../../src/views/shelf/shelfpage.ts";
import type { SiteView } from "../../src/views/siteview.ts";
import { Document } from "../parts/document.tsx";
import { Entry } from "../parts/entry.tsx";
import { PageLinks } from "../parts/pagelinks.tsx";
import { Message } from "../parts/words.tsx";

export const data = {
  pagination: { data: "site.shelves", size: 1, alias: "shelf" },
  permalink: ({ shelf }: { shelf: ShelfPage }) => `${shelf.folder}/index.html`,
};

/** Renders the page of one author or tag, or of all decisions. */
export function render({ shelf }: { site: SiteView; shelf: ShelfPage }): JSX.Element {
  return (
    <Document frame={shelf.frame} layout="shelf">
      <header class="opening">
        <p class="flag-name">{shelf.kind.text}</p>
        <h1>{shelf.name}</h1>
        <p class="count">
          <Message
            id={shelf.cards.length > 1 ? "shelf.waysOrdered" : "shelf.ways"}
            values={{ studies: shelf.count, name: shelf.kind.all }}
            tags={{
              index: (text) => <a href={shelf.kind.address}>{text}</a>,
              all: (text) => <a href={shelf.frame.links.home}>{text}</a>,
            }}
          />
        </p>
      </header>
      <div class="catalogue">
        {shelf.cards.map((card, index) => (
          <Entry
            key={card.address}
            card={card}
            eager={index < 4}
            outcome={card.outcome}
            decision={card.why}
            maker={card.maker}
          />
        ))}
      </div>
      {shelf.pages && <PageLinks pages={shelf.pages} />}
    </Document>
  );
}
