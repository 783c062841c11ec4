// Pages `/authors/` and `/tags/`: every name with its studies.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { IndexedStudy, ShelfIndex } from "../../src/views/shelf/shelfindex.ts";
import type { SiteView } from "../../src/views/siteview.ts";
import { Document } from "../parts/document.tsx";
import { PageLinks } from "../parts/pagelinks.tsx";
import { Mat } from "../parts/plate.tsx";
import { pageOf, useSay } from "../parts/words.tsx";

export const data = {
  pagination: { data: "site.shelfIndexes", size: 1, alias: "index" },
  permalink: ({ index }: { index: ShelfIndex }) => `${index.folder}/index.html`,
};

type ShelfEntry = ShelfIndex["entries"][number];

/** Renders the index of all authors or of all tags. */
export const render = pageOf(Shelves);

function Shelves({ index }: { site: SiteView; index: ShelfIndex }): JSX.Element {
  const say = useSay();
  // Those of one study, the most, stand by themselves where flags are all that stands for a study.
  const isLone = ({ studies }: ShelfEntry) => index.isDense && studies.length === 1;
  const lists = [index.entries.filter((shelf) => !isLone(shelf)), index.entries.filter(isLone)].filter(
    ({ length }) => length > 0,
  );
  return (
    <Document frame={index.frame} layout="index">
      <header class="opening">
        <h1>{index.title}</h1>
        <p class="lede">{index.lede}</p>
        <p class="count">
          <a href={index.frame.links.home}>{say("frame.allStudies")}</a>
        </p>
      </header>
      {index.entries.length === 0 ? (
        <p class="empty">{index.empty}</p>
      ) : (
        lists.map((entries) => (
          <ul key={entries[0]?.slug} class={index.isDense ? "shelf-index dense" : "shelf-index"}>
            {entries.map((shelf) => (
              <Shelf key={shelf.slug} shelf={shelf} isDense={index.isDense} />
            ))}
          </ul>
        ))
      )}
      {index.pages && <PageLinks pages={index.pages} />}
    </Document>
  );
}

function Shelf({ shelf, isDense }: { shelf: ShelfEntry; isDense: boolean }): JSX.Element {
  return (
    <li>
      <h2>
        <a href={shelf.address}>{shelf.name}</a> <span class="number quiet">{shelf.count}</span>
      </h2>
      <ul>
        {shelf.studies.map((study) => (
          <li key={study.address} class="shelf-study">
            {isDense ? (
              <a href={study.address} aria-label={study.title} title={study.title}>
                <Flags study={study} />
              </a>
            ) : (
              <>
                <Flags study={study} />
                <span>
                  <a href={study.address}>{study.title}</a>
                  {study.flag && <span class="renamed">{study.flag}</span>}
                  <span class="renamed">{study.verdict}</span>
                </span>
              </>
            )}
          </li>
        ))}
        {shelf.more && (
          <li>
            <a href={shelf.address}>{shelf.more}</a>
          </li>
        )}
      </ul>
    </li>
  );
}

function Flags({ study }: { study: IndexedStudy }): JSX.Element {
  return (
    <div class="shelf-flags">
      {study.plates.map((plate) => (
        <Mat key={plate.src} plate={{ ...plate, alt: "" }} />
      ))}
    </div>
  );
}
