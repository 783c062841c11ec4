// Part. What became of each edge: the ruler, then the map that shows where they are.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { StudyPage } from "../../src/views/study/studypage.ts";
import { EdgeMapFigure } from "../figures/map.tsx";
import { RulerFigure } from "../figures/ruler.tsx";
import { Move } from "./move.tsx";
import { Shown } from "./shown.tsx";
import { Message, useSay } from "./words.tsx";

/** The section of a study page. */
export function Edges({ study }: { study: StudyPage }): JSX.Element {
  const say = useSay();
  return (
    <section class="evidence edges" aria-labelledby="edges">
      <h2 id="edges">{study.edgesHeading}</h2>
      {study.ruler === undefined ? (
        <p class="measured">{say("edges.none")}</p>
      ) : (
        <>
          {!study.inProse["contrast ruler"] && (
            <RulerFigure ruler={study.ruler} ladder={study.ladder} id="contrast-ruler" />
          )}
          <Notes study={study} />
          {!study.inProse["contrast ruler"] && <h3 class="edges-where">{say("edges.where")}</h3>}
          {study.inProse["edge map"] ? (
            <>
              <Shown at={study.inProse["edge map"]} id="edge-map" name={say("edges.map")} />
              <div class="measured">
                <How study={study} />
              </div>
            </>
          ) : (
            <EdgeMapFigure map={study.edgeMap} id="edge-map" more={<How study={study} />} />
          )}
          {study.inProse["contrast ruler"] && (
            <Shown at={study.inProse["contrast ruler"]} id="contrast-ruler" name={say("edges.ruler")} />
          )}
        </>
      )}
    </section>
  );
}

function How({ study: { ruler, measuredHow, edgePages, links } }: { study: StudyPage }): JSX.Element {
  return (
    <p>
      {measuredHow} {edgePages}{" "}
      <span class="leads-on">
        <Message
          id={ruler?.notes.near ? "edges.moreOnDistanceAndCloth" : "edges.moreOnDistance"}
          tags={{
            distance: (text) => <a href={links.distance}>{text}</a>,
            cloth: (text) => <a href={links.nearLine}>{text}</a>,
          }}
        />
      </span>
    </p>
  );
}

/** Most lines of a third colour that stand open. */
const mostOpen = 3;

/** What a line of a third colour does for the pair it parts, and why nothing counts twice where nothing does. */
function Notes({ study: { fimbriations, focus, links } }: { study: StudyPage }): JSX.Element | null {
  const say = useSay();
  if (fimbriations.length === 0 && focus === undefined) return null;
  return (
    <div class="told">
      {fimbriations.length > 0 && (
        <details open={fimbriations.length <= mostOpen}>
          <summary>{say("edges.fimbriations")}</summary>
          <ul>
            {fimbriations.map((line) => (
              <li key={line.key}>
                <Message
                  id="fimbriation.line"
                  values={{ lead: line.lead }}
                  tags={{ move: () => <Move before={line.direct} after={line.across} /> }}
                />{" "}
                {line.rest}
              </li>
            ))}
          </ul>
          <p class="measured">
            <Message
              id="edges.fimbriationMoves"
              tags={{ more: (text) => <a href={links.words}>{text}</a> }}
            />
          </p>
        </details>
      )}
      {focus && (
        <p class="focus-sentence">
          {focus.sentence} {focus.example && <code>{focus.example}</code>}
        </p>
      )}
    </div>
  );
}
