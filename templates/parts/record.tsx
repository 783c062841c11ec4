// Part. The record of a study, compact: each matter in a line or two, and what stands behind it opens.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { ComponentChildren, JSX } from "preact";
import type { StudyPage } from "../../src/views/study/studypage.ts";
import { ColourLine, ColourTable } from "./colours.tsx";
import { FactLine, FactTable } from "./facts.tsx";
import { Near } from "./near.tsx";
import { CreditLine, DownloadList } from "./notes.tsx";
import { Citation } from "./refer.tsx";

/** The last section of a study page. */
export function Record({ study }: { study: StudyPage }): JSX.Element {
  const { likeness, facts, colours, notes, refer } = study;
  return (
    <section class="record" aria-labelledby="record">
      <h2 id="record">For the record</h2>
      {likeness && (
        <Matter id="likeness" heading="Could it be mistaken?">
          <Near likeness={likeness} />
        </Matter>
      )}
      <Matter id="facts" heading={facts.tincture ? "By the rule of tincture" : "Facts"}>
        <FactLine facts={facts} />
        <FactTable facts={facts} links={study.links} />
      </Matter>
      {facts.warnings.length > 0 && (
        <Matter id="warnings" heading="Where the figures are less certain">
          {facts.warnings.map((warning) => (
            <p key={warning}>{warning}</p>
          ))}
        </Matter>
      )}
      <Matter id="colours" heading="Colours">
        <ColourLine colours={colours} />
        <details>
          <summary>{facts.tincture ? "Reflectance and tincture of each" : "Reflectance of each"}</summary>
          <ColourTable colours={colours} hasTincture={facts.tincture !== undefined} />
        </details>
      </Matter>
      <Matter id="drawings" heading="Drawings and data">
        {notes.credit ? (
          <CreditLine credit={notes.credit} />
        ) : (
          <p>The study names no source for the original drawing.</p>
        )}
        {study.maker && (
          <p>
            Adopted: a <a href={study.maker}>sheet for makers</a>, with proportions, construction and colours.
          </p>
        )}
        <DownloadList downloads={notes.downloads} />
        {study.lesson.length > 0 && (
          <details>
            <summary>Pictures of each step, for slides and recordings</summary>
            <DownloadList downloads={study.lesson} />
          </details>
        )}
      </Matter>
      {study.tags.length > 0 && (
        <Matter id="tags" heading="Filed under">
          <ul class="tags">
            {study.tags.map((tag) => (
              <li key={tag.text}>
                <a href={tag.address}>{tag.text}</a>
              </li>
            ))}
          </ul>
        </Matter>
      )}
      {study.history && (
        <Matter id="history" heading="History">
          {study.history.revised.map(({ iso, date, what }) => (
            <p key={`${iso} ${what}`}>
              <time dateTime={iso}>{date}</time>: {what}
            </p>
          ))}
          {study.history.kin.map(({ lead, title, address }) => (
            <p key={address}>
              {lead} <a href={address}>{title}</a>
            </p>
          ))}
        </Matter>
      )}
      <Matter id="refer" heading="Cite this">
        <Citation refer={refer} />
      </Matter>
    </section>
  );
}

function Matter({
  id,
  heading,
  children,
}: {
  id: string;
  heading: string;
  children: ComponentChildren;
}): JSX.Element {
  return (
    <div class="matter">
      <h3 id={id}>{heading}</h3>
      <div>{children}</div>
    </div>
  );
}
