// Page `/studies/<slug>/`: one comparison, from the verdict to the downloads.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SiteView } from "../../src/site/present/site.ts";
import type { StudyPage } from "../../src/site/present/study.ts";
import { EdgeMapFigure } from "../figures/map.tsx";
import { ScaleFigure } from "../figures/scale.tsx";
import { Afar } from "../parts/afar.tsx";
import { Contents } from "../parts/contents.tsx";
import { Document } from "../parts/document.tsx";
import { EdgeTable } from "../parts/edges.tsx";
import { Record } from "../parts/record.tsx";
import { StampNote } from "../parts/refer.tsx";
import { Argument, Heading, Plates, Seen } from "../parts/study.tsx";
import { Words } from "../parts/words.tsx";

export const data = {
  pagination: { data: "site.studies", size: 1, alias: "study" },
  permalink: ({ study }: { study: StudyPage }) => `studies/${study.slug}/index.html`,
};

/** Renders the page of one study. */
export function render({ study }: { site: SiteView; study: StudyPage }): JSX.Element {
  return (
    <Document
      frame={study.frame}
      layout="study"
      scripts={[study.frame.links.studyScript, study.frame.links.swapScript]}
    >
      <article>
        <StampNote stamp={study.refer.stamp} />
        <Heading study={study} />
        <Plates study={study} />
        <Contents study={study} />
        <Words study={study} />
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
              <div class="margin source">
                <p>
                  {study.measuredHow} <a href={study.links.distance}>More on distance and focus</a>
                </p>
                <p>In clarity the edges of the focus count twice.</p>
                {study.edgePages && <p>{study.edgePages}</p>}
                {study.edges.some(({ before, after }) => before?.near || after.near) && (
                  <p>
                    Near the line: on other cloth the grade would be another.{" "}
                    <a href={study.links.nearLine}>More on cloth</a>
                  </p>
                )}
              </div>
              <EdgeMapFigure map={study.edgeMap} id="edge-map" />
              <ScaleFigure scale={study.scale} id="reflectance-scale" />
            </>
          )}
        </section>
        {study.edges.length > 0 && <Afar study={study} />}
        <Seen study={study} />
        <Record study={study} />
      </article>
    </Document>
  );
}
