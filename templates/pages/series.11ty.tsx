// Page `/series/<slug>/`: an opening, the studies in their order, and the question at the end.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SeriesItem, SeriesPage } from "../../src/views/series/seriespage.ts";
import type { SiteView } from "../../src/views/siteview.ts";
import { GainFigure } from "../figures/gain.tsx";
import { Document } from "../parts/document.tsx";
import { Byline } from "../parts/entry.tsx";
import { CaptionedPlate, Mat, PlateName } from "../parts/plate.tsx";
import { Citation } from "../parts/refer.tsx";
import { pageOf, useSay } from "../parts/words.tsx";

export const data = {
  pagination: { data: "site.series", size: 1, alias: "series" },
  permalink: ({ series }: { series: SeriesPage }) => `series/${series.slug}/index.html`,
};

/** Renders the page of one series. */
export const render = pageOf(Series);

function Series({ series }: { site: SiteView; series: SeriesPage }): JSX.Element {
  const say = useSay();
  return (
    <Document frame={series.frame} layout="series" scripts={[series.frame.links.studyScript]}>
      <article>
        <header class="opening">
          <p class="flag-name">{say("seriesPage.count", { entries: series.count })}</p>
          <h1>{series.title}</h1>
          <Byline authors={series.authors} people={series.people} date={series.date} />
          <p class="series-ways">
            <a href={series.show}>{say("seriesPage.show")}</a> ·{" "}
            <a href={series.sheet}>{say("seriesPage.sheet")}</a>
            {series.vote && (
              <>
                {" "}
                · <a href={series.vote}>{say("seriesPage.vote")}</a>
              </>
            )}
          </p>
        </header>
        <div class="series-opening">
          <div class="prose">
            {series.opening.map((html, index) => (
              // Written by our Markdown renderer, which shows the author's HTML as text.
              <div key={index} class="prose-run" dangerouslySetInnerHTML={{ __html: html }} />
            ))}
          </div>
          {series.strip.length > 0 && (
            <figure>
              <ol class="series-strip">
                {series.strip.map(({ number, anchor, title, plate }) => (
                  <li key={anchor}>
                    <a href={`#${anchor}`}>
                      <Mat plate={{ ...plate, alt: say("seriesPage.step", { number, title }) }} eager />
                    </a>
                  </li>
                ))}
              </ol>
              <figcaption>{say("seriesPage.today")}</figcaption>
            </figure>
          )}
        </div>
        <ol class="series-items">
          {series.items.map((item, index) => (
            <li key={item.anchor} id={item.anchor}>
              <Item item={item} eager={index === 0} />
            </li>
          ))}
        </ol>
        {series.closing && <p class="series-closing">{series.closing}</p>}
        {series.gain && (
          <section class="series-gain" aria-labelledby="all">
            <h2 id="all">{say("seriesPage.gain")}</h2>
            <GainFigure gain={series.gain} id="gain" />
          </section>
        )}
        <section class="series-cite" aria-labelledby="refer">
          <h2 id="refer">{say("seriesPage.cite")}</h2>
          <Citation refer={series.refer} />
        </section>
        <p class="measured">
          {say("seriesPage.unofficial")} <a href={series.frame.links.home}>{say("frame.allStudies")}</a>
        </p>
      </article>
    </Document>
  );
}

function Item({ item, eager }: { item: SeriesItem; eager: boolean }): JSX.Element {
  const say = useSay();
  if ("plate" in item)
    return (
      <article class="series-item">
        <p class="series-number">{item.number}</p>
        <div class="pair">
          <Mat plate={item.plate} eager={eager} />
        </div>
        <div class="series-label">
          <p class="flag-name">{say("seriesPage.bare")}</p>
          <h2>
            <a href={item.address}>{item.name}</a>
          </h2>
          <p>{item.ask}</p>
        </div>
      </article>
    );
  const { card, verdict } = item;
  return (
    <article class="series-item">
      <p class="series-number">{item.number}</p>
      <div class="pair">
        {card.plates.map((plate) => (
          <CaptionedPlate key={plate.label} plate={plate} eager={eager}>
            <PlateName plate={plate} />
          </CaptionedPlate>
        ))}
      </div>
      <div class="series-label">
        {card.flag && <p class="flag-name">{card.flag}</p>}
        <h2>
          <a href={card.address}>{card.title}</a>
        </h2>
        <p>{card.change}</p>
        <p>
          <strong>{verdict.word}.</strong> {verdict.cost}
        </p>
      </div>
    </article>
  );
}
