// Page `/`: the newest study at full width, those before it, and all of them as a chart with the ways to find one.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { FrontPage } from "../../src/views/front/front.ts";
import type { SiteView } from "../../src/views/siteview.ts";
import { GainFigure } from "../figures/gain.tsx";
import { Document } from "../parts/document.tsx";
import { Entry, Lead } from "../parts/entry.tsx";
import { FinderForm } from "../parts/finder.tsx";
import { LinkList } from "../parts/linked.tsx";
import { Nominate } from "../parts/refer.tsx";
import { SeriesList } from "../parts/series.tsx";
import { Message, pageOf, useSay } from "../parts/words.tsx";

export const data = { permalink: "index.html" };

/** Renders the front page. */
export const render = pageOf(Front);

function Front({ site: { front } }: { site: SiteView }): JSX.Element {
  const say = useSay();
  const { takePart } = front.frame.links;
  return (
    <Document
      frame={front.frame}
      layout="front"
      scripts={[
        ...(front.lead ? [front.frame.links.swapScript] : []),
        ...(front.finder ? [front.frame.links.findScript, front.frame.links.listScript] : []),
      ]}
    >
      <header class="opening">
        <h1>{front.title}</h1>
        <p class="lede">{front.description}</p>
      </header>
      {front.lead === undefined ? (
        <p class="empty">
          <Message
            id="front.empty"
            tags={{ method: (text) => <a href={front.frame.links.method}>{text}</a> }}
          />
        </p>
      ) : (
        <>
          <Lead lead={front.lead} />
          <SeriesList series={front.series} />
          {front.cards.length > 0 && (
            <section class="earlier" aria-labelledby="earlier">
              <h2 id="earlier">{say("front.earlier")}</h2>
              <div class="catalogue">
                {front.cards.map((card) => (
                  <Entry key={card.address} card={card} eager={false} level="h3" />
                ))}
              </div>
            </section>
          )}
          <AllStudies front={front} />
        </>
      )}
      <div class="ways-in">
        <Nominate nominate={front.nominate} />
        {takePart && (
          <p class="nominate">
            <a href={takePart.address}>{takePart.text}</a>
          </p>
        )}
      </div>
    </Document>
  );
}

function AllStudies({ front }: { front: FrontPage }): JSX.Element {
  const say = useSay();
  const { count, finder, gain, edgeless, shelves } = front;
  return (
    <section class="all-studies" aria-labelledby="all-studies">
      <h2 id="all-studies">{say("frame.allStudies")}</h2>
      {shelves.length > 0 && (
        <ul class="shelves">
          {shelves.map(({ text, address }) => (
            <li key={address}>
              <a href={address}>
                <bdi>{text}</bdi>
              </a>
            </li>
          ))}
        </ul>
      )}
      {finder && <FinderForm finder={finder} count={count} />}
      {gain && <GainFigure gain={gain} id="gain" />}
      {edgeless.length > 0 && (
        <p class="measured">
          <Message id="front.edgeless" tags={{ list: () => <LinkList pieces={edgeless} /> }} />
        </p>
      )}
    </section>
  );
}
