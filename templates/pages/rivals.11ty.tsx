// Page `/flags/<slug>/`: all studies of one flag, or two of them, at one scale and in one table; and who named it.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { RivalsPage } from "../../src/views/flag/rivalspage.ts";
import type { SiteView } from "../../src/views/siteview.ts";
import { RulerFigure } from "../figures/ruler.tsx";
import { Document } from "../parts/document.tsx";
import { LinkList } from "../parts/linked.tsx";
import { Rivals, RivalTable } from "../parts/rivals.tsx";
import { Message, pageOf, useSay } from "../parts/words.tsx";

export const data = {
  pagination: { data: "site.rivals", size: 1, alias: "flag" },
  permalink: ({ flag }: { flag: RivalsPage }) => `${flag.folder}/index.html`,
};

/** Renders the page of one flag. */
export const render = pageOf(Flag);

function Flag({ flag }: { site: SiteView; flag: RivalsPage }): JSX.Element {
  const say = useSay();
  return (
    <Document frame={flag.frame} layout="rivals" scripts={[flag.frame.links.swapScript]}>
      <article>
        <header class="opening">
          <p class="flag-name">
            {flag.all === undefined ? flag.count : <a href={flag.all}>{say("flagPage.all")}</a>}
          </p>
          <h1>{flag.title}</h1>
          {flag.lead && <p class="lede">{flag.lead}</p>}
        </header>
        <Rivals plates={flag.plates} />
        {flag.proposals.length > 0 && <RivalTable proposals={flag.proposals} />}
        {flag.nominated.length > 0 && (
          <section class="rival-named" aria-labelledby="named">
            <h2 id="named">{say("flagPage.named")}</h2>
            <ul>
              {flag.nominated.map((said) => (
                <li key={said}>
                  <bdi>{said}</bdi>
                </li>
              ))}
            </ul>
          </section>
        )}
        {flag.pairs.length > 0 && (
          <p class="rival-pairs">
            <Message id="flagPage.pairs" tags={{ list: () => <LinkList pieces={flag.pairs} /> }} />
          </p>
        )}
        {flag.ruler && (
          <section class="rival-edges" aria-labelledby="edges">
            <h2 id="edges">{say("flagPage.edges")}</h2>
            <RulerFigure ruler={flag.ruler} ladder={undefined} id="contrast-ruler" />
          </section>
        )}
        <p class="measured">
          {flag.proposals.length > 0 && `${say("seriesPage.unofficial")} `}
          <a href={flag.survey}>{say("flagPage.survey")}</a> ·{" "}
          <a href={flag.frame.links.home}>{say("frame.allStudies")}</a>
        </p>
      </article>
    </Document>
  );
}
