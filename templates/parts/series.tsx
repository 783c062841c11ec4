// Part. Series beside what belongs to them: on the front page, and at the end of a study.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SeriesCard, SeriesPlace } from "../../src/views/series/seriesplace.ts";
import { Mat } from "./plate.tsx";

/** The series of a gallery, each with its flags. */
export function SeriesList({ series }: { series: readonly SeriesCard[] }): JSX.Element | null {
  if (series.length === 0) return null;
  return (
    <section class="series-list" aria-labelledby="series">
      <h2 id="series">Series</h2>
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
  if (places.length === 0) return null;
  return (
    <nav class="series-places" aria-label="In series">
      {places.map(({ place, title, address, previous, next }) => (
        <div key={address} class="series-place">
          <p>
            {place} <a href={address}>{title}</a>
          </p>
          <p>
            {previous && (
              <>
                Before it: <a href={previous.address}>{previous.title}</a>
              </>
            )}
          </p>
          <p>
            {next && (
              <>
                Next: <a href={next.address}>{next.title}</a>
              </>
            )}
          </p>
        </div>
      ))}
    </nav>
  );
}
