// Page `/studies/<slug>/`: one comparison, from the verdict to the downloads.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SiteView } from "../../src/views/siteview.ts";
import type { StudyPage } from "../../src/views/study/studypage.ts";
import { Afar } from "../parts/afar.tsx";
import { Contents } from "../parts/contents.tsx";
import { Document } from "../parts/document.tsx";
import { Edges } from "../parts/edges.tsx";
import { Record } from "../parts/record.tsx";
import { StampNote } from "../parts/refer.tsx";
import { Said } from "../parts/said.tsx";
import { SeriesPlaces } from "../parts/series.tsx";
import { Argument, Heading, Plates, Seen } from "../parts/study.tsx";

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
        <Argument study={study} />
        <Said said={study.said} />
        <Edges study={study} />
        {study.ruler && <Afar study={study} />}
        <Seen study={study} />
        <Record study={study} />
        <SeriesPlaces places={study.series} />
      </article>
    </Document>
  );
}
