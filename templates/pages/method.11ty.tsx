// Page `/method/`: how every number is made, with its source and live worked examples.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MethodPage } from "../../src/views/method/method.ts";
import type { SiteView } from "../../src/views/siteview.ts";
import { Document } from "../parts/document.tsx";
import { CautionStep, LikenessStep, OptionsStep, SurveyStep, VisionStep } from "../parts/gathering.tsx";
import { Mat } from "../parts/plate.tsx";
import { EdgeStep, LastingStep, ViewingStep } from "../parts/sight.tsx";
import { headings } from "../parts/step.tsx";
import { BesideStep, ContrastStep, LightStep } from "../parts/steps.tsx";
import { FactsStep, NumbersStep, OutcomeStep, WordsStep } from "../parts/terms.tsx";
import { Message, useSay } from "../parts/words.tsx";

export const data = { permalink: "method/index.html" };

/** Renders the method page. */
export function render({ site: { method } }: { site: SiteView }): JSX.Element {
  return (
    <Document frame={method.frame} layout="method">
      <Method method={method} />
    </Document>
  );
}

function Method({ method }: { method: MethodPage }): JSX.Element {
  const { worked } = method;
  const say = useSay();
  return (
    <>
      <header class="opening">
        <div>
          <h1>{say("method.title")}</h1>
          <p class="lede">
            {worked ? (
              <Message
                id="method.ledeShown"
                values={worked}
                tags={{ a: (text) => <a href={worked.address}>{text}</a> }}
              />
            ) : (
              say("method.lede")
            )}
          </p>
          <p class="count">{say("method.count")}</p>
        </div>
        {worked && <Mat plate={worked.plate} eager />}
        <nav aria-label={say("method.contents")}>
          <ol class="contents">
            {Object.entries(headings).map(([id, heading]) => (
              <li key={id}>
                <a href={`#${id}`}>{say(heading)}</a>
              </li>
            ))}
          </ol>
        </nav>
      </header>
      <div class="steps">
        <EdgeStep method={method} />
        <ViewingStep method={method} />
        <LastingStep method={method} />
        <LightStep method={method} />
        <ContrastStep method={method} />
        <NumbersStep method={method} />
        <OutcomeStep method={method} />
        <WordsStep method={method} />
        <OptionsStep method={method} />
        <SurveyStep method={method} />
        <LikenessStep method={method} />
        <BesideStep method={method} />
        <FactsStep />
        <VisionStep method={method} />
        <CautionStep />
      </div>
    </>
  );
}
