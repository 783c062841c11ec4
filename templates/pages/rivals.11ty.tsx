// Page `/flags/<slug>/`: all studies of one flag, or two of them, at one scale and in one table; and who named it.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { RivalsPage } from "../../src/views/flag/rivalspage.ts";
import type { SiteView } from "../../src/views/siteview.ts";
import { RulerFigure } from "../figures/ruler.tsx";
import { Document } from "../parts/document.tsx";
import { Rivals, RivalTable } from "../parts/rivals.tsx";

export const data = {
  pagination: { data: "site.rivals", size: 1, alias: "flag" },
  permalink: ({ flag }: { flag: RivalsPage }) => `${flag.folder}/index.html`,
};

/** Renders the page of one flag. */
export function render({ flag }: { site: SiteView; flag: RivalsPage }): JSX.Element {
  return (
    <Document frame={flag.frame} layout="rivals" scripts={[flag.frame.links.swapScript]}>
      <article>
        <header class="opening">
          <p class="flag-name">
            {flag.all === undefined ? flag.count : <a href={flag.all}>All proposals</a>}
          </p>
          <h1>{flag.title}</h1>
        </header>
        <Rivals plates={flag.plates} />
        {flag.proposals.length > 0 && <RivalTable proposals={flag.proposals} />}
        {flag.nominated.length > 0 && (
          <section class="rival-named" aria-labelledby="named">
            <h2 id="named">Named by readers</h2>
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
            Two side by side:{" "}
            {flag.pairs.map(({ text, address }, index) => (
              <>
                {index > 0 && ", "}
                <a href={address}>{text}</a>
              </>
            ))}
          </p>
        )}
        {flag.ruler && (
          <section class="rival-edges" aria-labelledby="edges">
            <h2 id="edges">What each makes better and worse</h2>
            <RulerFigure ruler={flag.ruler} ladder={undefined} id="contrast-ruler" />
          </section>
        )}
        <p class="measured">
          {flag.proposals.length > 0 && "The redesigns are unofficial studies. "}
          <a href={flag.survey}>Its numbers in the survey</a> ·{" "}
          <a href={flag.frame.links.home}>All studies</a>
        </p>
      </article>
    </Document>
  );
}
