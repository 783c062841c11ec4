// Part. What became of each edge: the ruler, then the map that shows where they are.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { StudyPage } from "../../src/site/present/study.ts";
import { EdgeMapFigure } from "../figures/map.tsx";
import { RulerFigure } from "../figures/ruler.tsx";
import { Move } from "./move.tsx";

/** The section of a study page. */
export function Edges({ study }: { study: StudyPage }): JSX.Element {
  return (
    <section class="evidence edges" aria-labelledby="edges">
      <h2 id="edges">What got better and worse</h2>
      {study.ruler === undefined ? (
        <p class="measured">One colour: no edges to measure.</p>
      ) : (
        <>
          <RulerFigure ruler={study.ruler} ladder={study.ladder} id="contrast-ruler" />
          <Notes study={study} />
          <EdgeMapFigure map={study.edgeMap} id="edge-map" more={<How study={study} />} />
        </>
      )}
    </section>
  );
}

function How({ study: { ruler, measuredHow, edgePages, links } }: { study: StudyPage }): JSX.Element {
  return (
    <p>
      {measuredHow} {edgePages} More on <a href={links.distance}>distance</a>
      {ruler?.notes.near && (
        <>
          {" "}
          and <a href={links.nearLine}>cloth</a>
        </>
      )}
    </p>
  );
}

/** What a line of a third colour does for the pair it parts, and why nothing counts twice where nothing does. */
function Notes({ study: { fimbriations, focus, links } }: { study: StudyPage }): JSX.Element | null {
  if (fimbriations.length === 0 && focus === undefined) return null;
  return (
    <div class="told">
      {fimbriations.map((line) => (
        <p key={line.key}>
          {line.lead}: <Move before={line.direct} after={line.across} />, from the contrast of the pair itself
          to that of the weaker of the two edges that stand instead. {line.rest}{" "}
          <a href={links.words}>More on fimbriation</a>
        </p>
      ))}
      {focus && (
        <p class="focus-sentence">
          {focus.sentence} {focus.example && <code>{focus.example}</code>}
        </p>
      )}
    </div>
  );
}
