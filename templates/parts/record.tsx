// Part. The record of a study, compact: each matter in a line or two, and what stands behind it opens.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { ComponentChildren, JSX } from "preact";
import type { StudyPage } from "../../src/views/study/studypage.ts";
import { ColourLine, ColourTable } from "./colours.tsx";
import { Ways } from "./contents.tsx";
import { FactLine, FactTable } from "./facts.tsx";
import { Near } from "./near.tsx";
import { CreditLine, DownloadList } from "./notes.tsx";
import { Citation } from "./refer.tsx";
import { Message, useSay } from "./words.tsx";

/** The last section of a study page. */
export function Record({ study }: { study: StudyPage }): JSX.Element {
  const say = useSay();
  const { likeness, facts, colours, notes, refer, maker } = study;
  return (
    <section class="record" aria-labelledby="record">
      <h2 id="record">{say("record.heading")}</h2>
      {likeness && (
        <Matter id="likeness" heading={say("study.likeness")}>
          <Near likeness={likeness} />
        </Matter>
      )}
      <Matter id="facts" heading={say(facts.tincture ? "record.tincture" : "record.facts")}>
        <FactLine facts={facts} />
        <FactTable facts={facts} links={study.links} />
      </Matter>
      {facts.warnings.length > 0 && (
        <Matter id="warnings" heading={say("record.uncertain")}>
          {facts.warnings.map((warning) => (
            <p key={warning}>{warning}</p>
          ))}
        </Matter>
      )}
      <Matter id="colours" heading={say("record.colours")}>
        <ColourLine colours={colours} />
        <details>
          <summary>{say(facts.tincture ? "record.reflectanceAndTincture" : "record.reflectance")}</summary>
          <ColourTable colours={colours} hasTincture={facts.tincture !== undefined} />
        </details>
      </Matter>
      <Matter id="drawings" heading={say("record.drawings")}>
        {notes.credit ? <CreditLine credit={notes.credit} /> : <p>{say("record.noSource")}</p>}
        {maker && (
          <p>
            <Message id="record.maker" tags={{ sheet: (text) => <a href={maker}>{text}</a> }} />
          </p>
        )}
        <DownloadList downloads={notes.downloads} />
        {study.lesson.length > 0 && (
          <details>
            <summary>{say("record.lesson")}</summary>
            <DownloadList downloads={study.lesson} />
          </details>
        )}
      </Matter>
      {study.tags.length > 0 && (
        <Matter id="tags" heading={say("record.tags")}>
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
        <Matter id="history" heading={say("record.history")}>
          {study.history.revised.map(({ iso, date, what }) => (
            <p key={`${iso} ${what}`}>
              <Message
                id="history.revised"
                values={{ what }}
                tags={{ date: () => <time dateTime={iso}>{date}</time> }}
              />
            </p>
          ))}
          {study.history.kin.map(({ lead, title, address }) => (
            <p key={address}>
              {lead} <a href={address}>{title}</a>
            </p>
          ))}
        </Matter>
      )}
      <Matter id="refer" heading={say("refer.heading")}>
        <Citation refer={refer} />
      </Matter>
      <Ways study={study} />
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
