// Part. The sections of an edge's page.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { EdgePage } from "../../src/views/edge/edgepage.ts";
import type { SeenReading } from "../../src/views/edge/edgevision.ts";
import type { LocatorView } from "../../src/views/study/edgemap.ts";
import type { Say } from "../../src/words/say.ts";
import { RulerOfOne, RulerTable } from "../figures/ruler.tsx";
import { Move } from "./move.tsx";
import { PlateName } from "./plate.tsx";
import { Argue } from "./refer.tsx";
import { Summary } from "./summary.tsx";
import { DetailChip, MeetingChip } from "./swatch.tsx";
import { Message, useSay } from "./words.tsx";

/** Where on the flag the two colours meet, that place before and after, what became of the edge, and all its numbers. */
export function Meeting({ edge }: { edge: EdgePage }): JSX.Element {
  const say = useSay();
  return (
    <section class="comparison" aria-labelledby="outcome">
      {edge.place && (
        <div class="places" id="crops">
          <figure class="plate">
            <Locator locator={edge.place.locator} />
            <figcaption>{say("edgepage.place")}</figcaption>
          </figure>
          {edge.place.crops.map((crop) => (
            <figure key={crop.label} class="plate">
              <div class="mat">
                <img
                  class="flag flag-wide"
                  src={crop.src}
                  alt={crop.alt}
                  width={crop.width}
                  height={crop.height}
                  decoding="async"
                />
              </div>
              <figcaption>
                <PlateName plate={crop} note={crop.note} />
              </figcaption>
            </figure>
          ))}
        </div>
      )}
      <div class="verdict">
        <h2 id="outcome">{edge.outcome.word}</h2>
        <p class="verdict-sentence">{edge.outcome.sentence}</p>
        <RulerOfOne ruler={edge.ruler} />
        {edge.near && (
          <p class="measured">
            <Message
              id="edgepage.nearLine"
              values={{ near: edge.near }}
              tags={{ why: (text) => <a href={edge.links.nearLine}>{text}</a> }}
            />
          </p>
        )}
        <p class="measured">
          {edge.measuredHow}{" "}
          <Message
            id="edgepage.how"
            tags={{
              contrast: (text) => <a href={edge.links.contrast}>{text}</a>,
              beside: (text) => <a href={edge.links.beside}>{text}</a>,
            }}
          />
        </p>
        {edge.answer && <Argue answer={edge.answer} />}
      </div>
      <Summary rows={edge.numbers} caption={say("edgepage.numbers")} id="numbers" />
    </section>
  );
}

/** The flag in pale with the lines of one edge. `id` is that of its drawing on the page. */
export function Locator({ locator, id = "locator" }: { locator: LocatorView; id?: string }): JSX.Element {
  const say = useSay();
  const { width, height, description, ground, path, frame } = locator;
  return (
    <div class="mat">
      <svg
        class={`flag flag-${locator.fit}`}
        viewBox={`0 0 ${width} ${height}`}
        width={width}
        height={height}
        role="img"
        aria-labelledby={`${id}-title ${id}-desc`}
      >
        <title id={`${id}-title`}>{say("edgepage.locator")}</title>
        <desc id={`${id}-desc`}>{description}</desc>
        <rect class="locator-paper" width={width} height={height} />
        <image
          class="locator-ground"
          href={ground}
          width={width}
          height={height}
          preserveAspectRatio="none"
        />
        <path class="locator-halo" d={path} fill="none" />
        <path class="locator-line" d={path} fill="none" />
        <rect class="locator-frame" {...frame} fill="none" />
      </svg>
    </div>
  );
}

/** The place as every kind of vision has it in both flags, with contrast and difference. */
export function Seen({ edge }: { edge: EdgePage }): JSX.Element {
  const say = useSay();
  return (
    <section class="evidence" aria-labelledby="seen">
      <h2 id="seen">{say("study.seen")}</h2>
      <div class="seen-grid">
        {edge.visions.map((row) => (
          <figure key={row.vision} class="seen-one">
            <div class="small-pair">
              {(edge.isUnchanged ? [row.after] : [row.before, row.after]).map((reading, index) => (
                <div key={index} class="mat">
                  {reading && <MeetingChip hexes={reading.hexes} detail={row.details?.[index]} />}
                </div>
              ))}
            </div>
            <figcaption>
              <strong>{row.heading}</strong>
              {row.after?.contrast && (
                <span class="seen-number">
                  {say("edgepage.contrast")}{" "}
                  {moveSeen(row, say, ({ contrast, grade }) => `${contrast} ${grade}`)}
                </span>
              )}
              <span class="seen-number">
                {say("edgepage.difference")} {moveSeen(row, say, ({ difference }) => difference)}
              </span>
            </figcaption>
          </figure>
        ))}
      </div>
      <p class="source">
        {!edge.isUnchanged && `${say("edgepage.sides")} `}
        <Message id="edgepage.seenNote" tags={{ how: (text) => <a href={edge.links.vision}>{text}</a> }} />
      </p>
    </section>
  );
}

function moveSeen(
  row: EdgePage["visions"][number],
  say: Say,
  read: (reading: SeenReading) => string,
): JSX.Element | string | undefined {
  const [before, after] = [row.before, row.after].map((reading) =>
    reading ? read(reading) : say("edgepage.noEdge"),
  );
  return before === after ? after : <Move before={before} after={after} />;
}

/** The same two names in other studies, where there are any. */
export function Elsewhere({ edge: { elsewhere } }: { edge: EdgePage }): JSX.Element | null {
  const say = useSay();
  if (elsewhere === undefined) return null;
  return (
    <section class="evidence" aria-labelledby="elsewhere">
      <h2 id="elsewhere">{say("edgepage.elsewhere")}</h2>
      <div class="main ruler">
        <div class="ruler-list">
          <RulerTable ruler={elsewhere} rows={elsewhere.rows} heading={say("edgepage.study")} />
        </div>
        <p class="measured">{say("edgepage.elsewhereNote")}</p>
      </div>
    </section>
  );
}

/** The way to all edges of the study, this one marked, where there are others, and back to their ruler. */
export function Siblings({ edge }: { edge: EdgePage }): JSX.Element {
  const say = useSay();
  return (
    <nav class="siblings" aria-label={say("edgepage.siblings")}>
      <ul>
        {edge.siblings.map((sibling) => (
          <li key={sibling.address}>
            {sibling.details && <DetailChip detail={sibling.details[1]} />}
            <p>
              <a href={sibling.address} aria-current={sibling.isHere ? "page" : undefined}>
                {sibling.names}
              </a>{" "}
              <span class="quiet">{sibling.outcome}</span>
            </p>
          </li>
        ))}
        <li>
          <a href={edge.study.table}>{say("edgepage.all")}</a>
        </li>
      </ul>
    </nav>
  );
}
