// Page `/studies/<slug>/changes/`: every other single change of one colour, measured as the study is.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SiteView } from "../../src/views/siteview.ts";
import type { ChangesPage } from "../../src/views/study/changespage.ts";
import { Document } from "../parts/document.tsx";
import { Options } from "../parts/options.tsx";
import { CaptionedPlate, PlateName } from "../parts/plate.tsx";
import { Said } from "../parts/said.tsx";
import { Message, pageOf } from "../parts/words.tsx";

export const data = {
  pagination: { data: "site.changes", size: 1, alias: "changes" },
  permalink: ({ changes }: { changes: ChangesPage }) => `${changes.folder}/index.html`,
};

/** Renders the page with the other changes of one study. */
export const render = pageOf(Changes);

function Changes({ changes }: { site: SiteView; changes: ChangesPage }): JSX.Element {
  return (
    <Document frame={changes.frame} layout="changes">
      <article>
        <header class="opening">
          <div>
            {changes.flag && <p class="flag-name">{changes.flag}</p>}
            <h1>{changes.title}</h1>
            <p class="byline">
              <Message
                id="options.beside"
                values={{ title: changes.study.title }}
                tags={{ study: (title) => <a href={changes.study.address}>{title}</a> }}
              />{" "}
              · {changes.status.word}
            </p>
          </div>
          <div class="pair">
            {changes.plates.map((plate) => (
              <CaptionedPlate key={plate.label} plate={plate} eager>
                <PlateName plate={plate} />
              </CaptionedPlate>
            ))}
          </div>
          <div>
            <p class="lede">{changes.options.first}</p>
            <p class="measured">{changes.options.standing}</p>
          </div>
        </header>
        <Options options={changes.options} />
        <Said said={changes.said} />
      </article>
    </Document>
  );
}
