// Part. One study in a catalogue, and the newest one at full width.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { Card } from "../../src/views/front/card.ts";
import type { FrontPage } from "../../src/views/front/front.ts";
import type { Linked } from "../../src/views/linklist.ts";
import type { StatusView } from "../../src/views/status.ts";
import { LinkList } from "./linked.tsx";
import { Move } from "./move.tsx";
import { Pair } from "./pair.tsx";
import { Mat } from "./plate.tsx";
import { useSay } from "./words.tsx";

/** The entry of a study, in rows that a catalogue aligns. `eager` is for entries that open the page; `outcome` is a decision's. */
export function Entry({
  card,
  eager,
  level = "h2",
  outcome,
  decision,
  maker,
}: {
  card: Card;
  eager: boolean;
  outcome?: string | undefined;
  decision?: string | undefined;
  maker?: string | undefined;
  level?: "h2" | "h3";
}): JSX.Element {
  const say = useSay();
  return (
    <article class="entry">
      <div class="pair">
        {card.plates.map((plate) => (
          <Mat key={plate.label} plate={plate} eager={eager} />
        ))}
      </div>
      {outcome && (
        <p class="entry-outcome">
          <strong>{outcome}</strong>
        </p>
      )}
      <div class="entry-title">
        <CardTitle card={card} level={level} />
        <Byline
          authors={
            outcome && card.authors ? say("entry.putForward", { authors: card.authors }) : card.authors
          }
          date={card.date}
          {...(!outcome && { decided: card.status })}
        />
      </div>
      <p class={decision ? "entry-decision" : "entry-change"}>
        {decision ?? card.change}
        {maker && (
          <>
            {" "}
            <a class="entry-maker" href={maker}>
              {say("entry.makers")}
            </a>
          </>
        )}
      </p>
      <p class="entry-verdict">
        {decision && <span>{card.change}</span>}
        <strong>{card.verdict}</strong>
        <span>
          {say("mark.clarity")}{" "}
          <span class="number">
            <Move before={card.clarity.before} after={card.clarity.after} />
          </span>
        </span>
        {card.price && <span class="entry-price">{card.price}</span>}
      </p>
    </article>
  );
}

/** The study that opens the front page: both flags as large as the page allows, the one number, and what it costs. */
export function Lead({ lead: { card, verdict } }: { lead: NonNullable<FrontPage["lead"]> }): JSX.Element {
  return (
    <article class="lead entry">
      <Pair plates={card.plates} />
      <div class="entry-title">
        <CardTitle card={card} level="h2" />
        <Byline authors={card.authors} date={card.date} />
      </div>
      <p class="lead-verdict">
        <strong>{verdict.word}.</strong> {card.change} {verdict.cost}
      </p>
    </article>
  );
}

function CardTitle({ card, level: Heading }: { card: Card; level: "h2" | "h3" }): JSX.Element {
  return (
    <>
      {card.flag && (
        <p class="flag-name" {...card.tongue}>
          {card.flag}
        </p>
      )}
      <Heading {...card.tongue}>
        <a href={card.address}>{card.title}</a>
      </Heading>
    </>
  );
}

/** Who and when, as far as the study says; `status` says what became of it, `decided` if it is no longer open. */
export function Byline({
  authors,
  people,
  date,
  status,
  decided,
}: Pick<Card, "authors" | "date"> & {
  people?: readonly Linked[];
  status?: StatusView;
  decided?: StatusView;
}): JSX.Element | null {
  const word = decided && decided.status !== "open" ? decided.word : undefined;
  if (!authors && !date && !status && !word) return null;
  return (
    <p class="byline">
      {authors && <span>{people ? <LinkList pieces={people} /> : authors}</span>}
      {authors && date && <span aria-hidden="true"> · </span>}
      {date && <time dateTime={date.iso}>{date.text}</time>}
      {status && (
        <>
          {(authors || date) && <span aria-hidden="true"> · </span>}
          <span class="status">{status.word}</span>
        </>
      )}
      {(authors || date) && word && <span aria-hidden="true"> · </span>}
      {word}
    </p>
  );
}
