// Part. One study in a catalogue, and the newest one at full width.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { Card } from "../../src/views/front/card.ts";
import type { FrontPage } from "../../src/views/front/front.ts";
import type { StatusView } from "../../src/views/status.ts";
import type { Linked } from "../../src/views/study/byline.ts";
import { Move } from "./move.tsx";
import { Pair } from "./pair.tsx";
import { Mat } from "./plate.tsx";

/** The entry of a study. `eager` is for entries that open the page. */
export function Entry({ card, eager }: { card: Card; eager: boolean }): JSX.Element {
  return (
    <article class="entry">
      <div class="pair">
        {card.plates.map((plate) => (
          <Mat key={plate.label} plate={plate} eager={eager} />
        ))}
      </div>
      <div class="entry-label">
        <CardTitle card={card} />
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
          {card.status.status !== "open" && (
            <div>
              <dt>Status</dt>
              <dd>{card.status.word}</dd>
            </div>
          )}
        </dl>
        {card.decision && <p class="entry-decision">{card.decision}</p>}
        <Byline authors={card.authors} date={card.date} />
      </div>
    </article>
  );
}

/** The study that opens the front page: both flags as large as the page allows, the one number, and what it costs. */
export function Lead({ lead: { card, verdict } }: { lead: NonNullable<FrontPage["lead"]> }): JSX.Element {
  return (
    <article class="lead entry">
      <Pair plates={card.plates} />
      <div class="entry-label">
        <CardTitle card={card} />
        <Byline authors={card.authors} date={card.date} />
      </div>
      <dl class="lead-mark">
        <dt>Clarity</dt>
        <dd class="number">
          <Move before={card.clarity.before} after={card.clarity.after} />
        </dd>
      </dl>
      <p class="lead-verdict">
        <strong>{verdict.word}.</strong> {card.change} {verdict.cost}
      </p>
    </article>
  );
}

function CardTitle({ card }: { card: Card }): JSX.Element {
  return (
    <>
      {card.flag && <p class="flag-name">{card.flag}</p>}
      <h2>
        <a href={card.address}>{card.title}</a>
      </h2>
    </>
  );
}

/** Who and when, as far as the study says, and with `status` what became of it. */
export function Byline({
  authors,
  people,
  date,
  status,
}: Pick<Card, "authors" | "date"> & {
  people?: readonly Linked[];
  status?: StatusView;
}): JSX.Element | null {
  if (!authors && !date && !status) return null;
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
      {status && (
        <>
          {(authors || date) && <span aria-hidden="true"> · </span>}
          <span class="status">
            {status.word}, {status.meaning}
          </span>
        </>
      )}
    </p>
  );
}
