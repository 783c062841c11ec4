// Page `/method/`: how every number is made, with its source and live worked examples.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SiteView } from "../../src/views/siteview.ts";
import { Document } from "../parts/document.tsx";
import { CautionStep, LikenessStep, OptionsStep, SurveyStep, VisionStep } from "../parts/gathering.tsx";
import { Mat } from "../parts/plate.tsx";
import { EdgeStep, LastingStep, ViewingStep } from "../parts/sight.tsx";
import { headings } from "../parts/step.tsx";
import { BesideStep, ContrastStep, LightStep } from "../parts/steps.tsx";
import { FactsStep, NumbersStep, OutcomeStep, WordsStep } from "../parts/terms.tsx";

export const data = { permalink: "method/index.html" };

/** Renders the method page. */
export function render({ site: { method } }: { site: SiteView }): JSX.Element {
  const { worked } = method;
  return (
    <Document frame={method.frame} layout="method">
      <header class="opening">
        <div>
          <h1>Method</h1>
          <p class="lede">
            How every number here is made
            {worked ? (
              <>
                , shown on one flag: <a href={worked.address}>{worked.name}</a>.
              </>
            ) : (
              "."
            )}
          </p>
          <p class="count">The small print beside each step says where its numbers come from.</p>
        </div>
        {worked && <Mat plate={worked.plate} eager />}
      </header>
      <nav aria-label="On this page">
        <ol class="contents">
          {Object.entries(headings).map(([id, text]) => (
            <li key={id}>
              <a href={`#${id}`}>{text}</a>
            </li>
          ))}
        </ol>
      </nav>
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
    </Document>
  );
}
