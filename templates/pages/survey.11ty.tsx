// Page `/survey/`: every flag of the gallery as it is, least clear first.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SiteView } from "../../src/views/siteview.ts";
import { FieldFigure } from "../figures/field.tsx";
import { Document } from "../parts/document.tsx";
import { Nominate } from "../parts/refer.tsx";
import { ChosenBar, SurveyForm, SurveyTable } from "../parts/survey.tsx";
import { pageOf, useSay } from "../parts/words.tsx";

export const data = { permalink: "survey/index.html" };

/** Renders the survey. */
export const render = pageOf(Survey);

function Survey({ site: { survey } }: { site: SiteView }): JSX.Element {
  const say = useSay();
  return (
    <Document
      frame={survey.frame}
      layout="survey"
      scripts={survey.rows.length > 0 ? [survey.frame.links.findScript, survey.frame.links.surveyScript] : []}
    >
      <header class="opening">
        <h1>{say("survey.title")}</h1>
        <p class="lede">{say("survey.lede")}</p>
        <p class="count">
          {survey.rows.length > 0 && `${survey.count} `}
          {survey.told && `${survey.told} `}
          <a href={survey.how}>{say("survey.how")}</a>
        </p>
      </header>
      {survey.rows.length === 0 ? (
        <p class="empty">{say("survey.empty")}</p>
      ) : (
        <>
          {survey.field && <FieldFigure field={survey.field} id="field" after="list" />}
          <section class="survey-list" aria-labelledby="every">
            <h2 id="every">{survey.heading}</h2>
            {survey.finder && <SurveyForm finder={survey.finder} />}
            <SurveyTable rows={survey.rows} id="list" caption={survey.caption} />
            {survey.more && (
              <details class="survey-more">
                <summary>{survey.more.label}</summary>
                <SurveyTable rows={survey.more.rows} id="more" caption={survey.more.label} />
              </details>
            )}
            {survey.rest && <p class="measured">{survey.rest}</p>}
            <ChosenBar choosing={survey.choosing} />
          </section>
        </>
      )}
      {survey.failed.length > 0 && (
        <section class="survey-failed" aria-labelledby="failed">
          <h2 id="failed">{say("survey.failed")}</h2>
          <dl>
            {survey.failed.map(({ file, reason }) => (
              <div key={file}>
                <dt>
                  <code>{file}</code>
                </dt>
                <dd>{reason}</dd>
              </div>
            ))}
          </dl>
          {survey.failedRest && <p class="measured">{survey.failedRest}</p>}
        </section>
      )}
      <Nominate nominate={survey.nominate} />
      <section class="survey-files" aria-labelledby="files">
        <h2 id="files">{say("survey.files")}</h2>
        <ul class="downloads">
          {survey.downloads.map((download) => (
            <li key={download.file}>
              <a href={download.address} download={download.file}>
                {download.text}
              </a>
            </li>
          ))}
        </ul>
      </section>
    </Document>
  );
}
