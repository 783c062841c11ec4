// Page `/studies/<slug>/edges/<key>/`: one edge, from the place where its paints meet to the same pair elsewhere.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { EdgePage } from "../../src/views/edge/edgepage.ts";
import type { SiteView } from "../../src/views/siteview.ts";
import { Document } from "../parts/document.tsx";
import { Elsewhere, Meeting, Seen, Siblings } from "../parts/edgepage.tsx";
import { Refer, StampNote } from "../parts/refer.tsx";
import { Said } from "../parts/said.tsx";
import { Message, pageOf, useSay } from "../parts/words.tsx";

export const data = {
  pagination: { data: "site.edges", size: 1, alias: "edge" },
  permalink: ({ edge }: { edge: EdgePage }) => `${edge.folder}/index.html`,
};

/** Renders the page of one edge. */
export const render = pageOf(Edge);

function Edge({ edge }: { site: SiteView; edge: EdgePage }): JSX.Element {
  const say = useSay();
  return (
    <Document frame={edge.frame} layout="edge" scripts={[edge.frame.links.studyScript]}>
      <article>
        <StampNote stamp={edge.refer.stamp} />
        <header class="opening">
          <p class="flag-name">
            <Message
              id="edgepage.of"
              values={{ title: edge.study.title }}
              tags={{ study: (title) => <a href={edge.study.address}>{title}</a> }}
            />{" "}
            · {edge.status.word}
          </p>
          <h1>
            {edge.renamed ? say("edgepage.becomes", { was: edge.title, is: edge.renamed }) : edge.title}
          </h1>
        </header>
        <Siblings edge={edge} />
        <Meeting edge={edge} />
        <Said said={edge.said} />
        <Seen edge={edge} />
        <Elsewhere edge={edge} />
        <Refer refer={edge.refer} />
      </article>
    </Document>
  );
}
