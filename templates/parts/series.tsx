// Part. Series beside what belongs to them: on the front page, and at the end of a study.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SeriesCard, SeriesPlace } from "../../src/views/series/seriesplace.ts";
import { Mat } from "./plate.tsx";
import { Message, useSay } from "./words.tsx";

/** The series of a gallery, each with its flags. */
export function SeriesList({ series }: { series: readonly SeriesCard[] }): JSX.Element | null {
  const say = useSay();
  if (series.length === 0) return null;
  return (
    <section class="series-list" aria-labelledby="series">
      <h2 id="series">{say("seriesPage.series")}</h2>
      <ul>
        {series.map(({ title, address, count, authors, plates }) => (
          <li key={address} class="series-card">
            <div class="series-strip">
              {plates.map((plate) => (
                <Mat key={plate.src} plate={{ ...plate, alt: "" }} />
              ))}
            </div>
            <h3>
              <a href={address}>{title}</a>
            </h3>
            <p class="byline">
              {count}
              {authors && ` · ${authors}`}
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** The series that a study is in, with the studies before and after it. */
export function SeriesPlaces({ places }: { places: readonly SeriesPlace[] }): JSX.Element | null {
  const say = useSay();
  if (places.length === 0) return null;
  return (
    <nav class="series-places" aria-label={say("seriesPage.places")}>
      {places.map(({ number, count, title, address, previous, next }) => (
        <div key={address} class="series-place">
          <p>
            <Message
              id="seriesPage.place"
              values={{ number, count, title }}
              tags={{ a: (text) => <a href={address}>{text}</a> }}
            />
          </p>
          <p>
            {previous && (
              <Message
                id="seriesPage.before"
                values={{ title: previous.title }}
                tags={{ a: (text) => <a href={previous.address}>{text}</a> }}
              />
            )}
          </p>
          <p>
            {next && (
              <Message
                id="seriesPage.next"
                values={{ title: next.title }}
                tags={{ a: (text) => <a href={next.address}>{text}</a> }}
              />
            )}
          </p>
        </div>
      ))}
    </nav>
  );
}
