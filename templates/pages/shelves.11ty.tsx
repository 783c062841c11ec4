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

/** Renders the index of all authors or of all tags. */
export const render = pageOf(Shelves);

function Shelves({ index }: { site: SiteView; index: ShelfIndex }): JSX.Element {
  const say = useSay();
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
        <ul class={index.isDense ? "shelf-index dense" : "shelf-index"}>
          {index.entries.map((shelf) => (
            <li key={shelf.slug}>
              <h2>
                <a href={shelf.address}>{shelf.name}</a> <span class="number quiet">{shelf.count}</span>
              </h2>
              <ul>
                {shelf.studies.map((study) => (
                  <li key={study.address} class="shelf-study">
                    {index.isDense ? (
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
          ))}
        </ul>
      )}
      {index.pages && <PageLinks pages={index.pages} />}
    </Document>
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
