// Part. One study in the catalogue of the front page.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { Linked } from "../../src/site/present/byline.ts";
import type { Card } from "../../src/site/present/card.ts";
import { Move } from "./move.tsx";
import { Mat } from "./plate.tsx";

/** The entry of a study. `eager` is for entries that open the page. */
export function Entry({ card, eager }: { card: Card; eager: boolean }): JSX.Element {
  return (
    <article
      class="entry"
      data-slug={card.search.slug}
      data-status={card.search.status}
      data-verdict={card.search.verdict}
      data-author={card.search.authors}
      data-tag={card.search.tags}
      data-date={card.search.date}
      data-after={card.search.after}
      data-gain={card.search.gain}
    >
      <div class="pair">
        {card.plates.map((plate) => (
          <Mat key={plate.label} plate={plate} eager={eager} />
        ))}
      </div>
      <div class="entry-label">
        <h2>
          <a href={card.address}>{card.title}</a>
        </h2>
        <p class="entry-change">{card.change}</p>
        <dl class="facts">
          <div>
            <dt>Clarity</dt>
            <dd class="number">
              <Move before={card.clarity.before} after={card.clarity.after} />
            </dd>
          </div>
          <div>
            <dt>Verdict</dt>
            <dd>{card.verdict}</dd>
          </div>
          <div>
            <dt>Status</dt>
            <dd>{card.status.word}</dd>
          </div>
        </dl>
        {card.decision && <p class="entry-decision">{card.decision}</p>}
        <Byline authors={card.authors} date={card.date} />
      </div>
    </article>
  );
}

/** Who and when, as far as the study says. */
export function Byline({
  authors,
  people,
  date,
}: Pick<Card, "authors" | "date"> & { people?: readonly Linked[] }): JSX.Element | null {
  if (!authors && !date) return null;
  return (
    <p class="byline">
      {authors && (
        <span>
          {people
            ? people.map((piece, index) =>
                piece.address ? (
                  <a key={index} href={piece.address}>
                    {piece.text}
                  </a>
                ) : (
                  piece.text
                ),
              )
            : authors}
        </span>
      )}
      {authors && date && <span aria-hidden="true"> · </span>}
      {date && <time dateTime={date.iso}>{date.text}</time>}
    </p>
  );
}
