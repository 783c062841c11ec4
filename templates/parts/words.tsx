// Part. What got better and worse, in words, with what has to be seen and what is left of it from afar in the margin.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { StudyPage } from "../../src/site/present/study.ts";
import { LastingFigure } from "../figures/lasting.tsx";
import { Move } from "./move.tsx";

/** The section that tells the comparison. */
export function Words({ study }: { study: StudyPage }): JSX.Element {
  const { focus, lasting } = study;
  return (
    <section class="words" aria-labelledby="words">
      <h2 id="words">What got better and worse</h2>
      <div class="main told">
        {study.words.map((paragraph) => (
          <p key={paragraph}>{paragraph}</p>
        ))}
        {study.fimbriations.map((line) => (
          <p key={line.key}>
            {line.lead}: <Move before={line.direct} after={line.across} />, from the contrast of the pair
            itself to that of the weaker of the two edges that stand instead. {line.rest}
          </p>
        ))}
        <p class="measured">
          Made of the numbers below and nothing else; <a href={study.links.words}>how</a>.
        </p>
      </div>
      {study.edges.length > 0 && (
        <div class="margin">
          <section>
            <h3>{focus.heading}</h3>
            <p class="focus-sentence">
              {focus.sentence}
              {focus.example && (
                <>
                  {" "}
                  <code>{focus.example}</code>
                </>
              )}
            </p>
          </section>
          {lasting && <LastingFigure lasting={lasting} id="lasts-to" method={study.links.lasting} />}
        </div>
      )}
    </section>
  );
}
