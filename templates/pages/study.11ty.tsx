// Page `/studies/<slug>/`: one comparison, from the verdict to the downloads.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SiteView } from "../../src/site/present/site.ts";
import type { StudyPage } from "../../src/site/present/study.ts";
import { LastingFigure } from "../figures/lasting.tsx";
import { StripFigure } from "../figures/strip.tsx";
import { ColourTable } from "../parts/colours.tsx";
import { Document } from "../parts/document.tsx";
import { Edges } from "../parts/edges.tsx";
import { Facts } from "../parts/facts.tsx";
import { Look } from "../parts/look.tsx";
import { Near } from "../parts/near.tsx";
import { Options } from "../parts/options.tsx";
import { Refer, StampNote } from "../parts/refer.tsx";
import { Argument, Colophon, Heading, Plates, Seen } from "../parts/study.tsx";

export const data = {
  pagination: { data: "site.studies", size: 1, alias: "study" },
  permalink: ({ study }: { study: StudyPage }) => `studies/${study.slug}/index.html`,
};

/** Renders the page of one study. */
export function render({ study }: { site: SiteView; study: StudyPage }): JSX.Element {
  return (
    <Document frame={study.frame} layout="study" scripts={[study.frame.links.studyScript]}>
      <article>
        <StampNote stamp={study.refer.stamp} />
        <Heading study={study} />
        <Plates study={study} />
        <Argument study={study} />
        <Look study={study} />
        <Edges study={study} />
        {study.ruler && (
          <section class="evidence" aria-labelledby="distance">
            <h2 id="distance">From afar</h2>
            <StripFigure strip={study.strip} id="distance-strip" />
            {study.lasting && (
              <LastingFigure lasting={study.lasting} id="lasts-to" method={study.links.lasting} />
            )}
          </section>
        )}
        <Seen study={study} />
        {study.options && <Options options={study.options} />}
        {study.likeness && <Near likeness={study.likeness} />}
        <Facts study={study} />
        <section class="evidence" aria-labelledby="colours">
          <h2 id="colours">Colours</h2>
          <div class="main">
            <ColourTable colours={study.colours} />
          </div>
        </section>
        <Colophon study={study} />
        <Refer refer={study.refer} />
      </article>
    </Document>
  );
}
