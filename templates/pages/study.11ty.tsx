// Page `/studies/<slug>/`: one comparison, from the verdict to the downloads.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SiteView } from "../../src/site/present/site.ts";
import type { StudyPage } from "../../src/site/present/study.ts";
import { ScaleFigure } from "../figures/scale.tsx";
import { ColourTable } from "../parts/colours.tsx";
import { Document } from "../parts/document.tsx";
import { EdgeTable } from "../parts/edges.tsx";
import { Argument, Colophon, Heading, Outcomes, Plates, Seen } from "../parts/study.tsx";

export const data = {
  pagination: { data: "site.studies", size: 1, alias: "study" },
  permalink: ({ study }: { study: StudyPage }) => `studies/${study.slug}/index.html`,
};

/** Renders the page of one study. */
export function render({ study }: { site: SiteView; study: StudyPage }): JSX.Element {
  return (
    <Document frame={study.frame} layout="study">
      <article>
        <Heading study={study} />
        <Plates study={study} />
        <Argument study={study} />
        <section class="evidence" aria-labelledby="edges">
          <h2 id="edges">Edges</h2>
          {study.edges.length === 0 ? (
            <p class="measured">One colour: no edges to measure.</p>
          ) : (
            <>
              <div class="main">
                <EdgeTable edges={study.edges} />
              </div>
              <div class="margin">
                <Outcomes groups={study.outcomes} />
                <p class="measured">{study.measuredHow}</p>
              </div>
              <ScaleFigure scale={study.scale} id="reflectance-scale" />
            </>
          )}
        </section>
        <Seen study={study} />
        <section class="evidence" aria-labelledby="colours">
          <h2 id="colours">Colours</h2>
          <div class="main">
            <ColourTable colours={study.colours} />
          </div>
        </section>
        <Colophon study={study} />
      </article>
    </Document>
  );
}
