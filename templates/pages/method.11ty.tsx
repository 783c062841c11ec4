// Page `/method/`: how every number is made, with its source and live worked examples.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SiteView } from "../../src/site/present/site.ts";
import { BesideStep, VisionStep } from "../parts/beside.tsx";
import { Document } from "../parts/document.tsx";
import { LikenessStep, SurveyStep } from "../parts/gathering.tsx";
import { LastingStep, ViewingStep } from "../parts/sight.tsx";
import { ContrastStep, LightStep } from "../parts/steps.tsx";
import { FactsStep, OptionsStep, WordsStep } from "../parts/telling.tsx";
import { CautionStep, EdgeStep, NumbersStep, OutcomeStep } from "../parts/terms.tsx";

export const data = { permalink: "method/index.html" };

/** Renders the method page. */
export function render({ site: { method } }: { site: SiteView }): JSX.Element {
  return (
    <Document frame={method.frame} layout="method">
      <header class="opening">
        <h1>Method</h1>
        <p class="lede">
          How every number on these pages is made. The examples are computed by the same code that measures
          the flags.
        </p>
      </header>
      <nav aria-label="On this page">
        <ol class="contents">
          <Item id="edges" text="Colours and edges" />
          <Item id="distance" text="Distance, and what has to be seen" />
          <Item id="lasting" text="What is left from afar" />
          <Item id="reflectance" text="Reflectance of the cloth" />
          <Item id="contrast" text="Contrast and grade" />
          <Item id="numbers" text="The numbers of a flag" />
          <Item id="outcomes" text="Outcomes and verdict" />
          <Item id="words" text="What got better and worse" />
          <Item id="options" text="Other single changes" />
          <Item id="survey" text="The survey" />
          <Item id="likeness" text="Which flags look alike" />
          <Item id="beside" text="Beside it, never instead of it" />
          <Item id="facts" text="Facts, none a score" />
          <Item id="vision" text="Seen otherwise" />
          <Item id="cautions" text="Cautions" />
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
        <WordsStep />
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

function Item({ id, text }: { id: string; text: string }): JSX.Element {
  return (
    <li>
      <a href={`#${id}`}>{text}</a>
    </li>
  );
}
