// Part. Facts beside the numbers, none of them a score: the rule of tincture in a line, all of them with their sources behind it.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { StudyPage } from "../../src/views/study/studypage.ts";
import { Message, useSay } from "./words.tsx";

type FactsProps = Pick<StudyPage, "facts" | "links">;

/** What goes against the rule of tincture, before and after. */
export function FactLine({ facts }: Pick<FactsProps, "facts">): JSX.Element {
  return (
    <>
      {facts.tincture && <p>{facts.tincture}</p>}
      {facts.exempt.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </>
  );
}

/** All facts, to be opened. */
export function FactTable({ facts, links }: FactsProps): JSX.Element {
  const say = useSay();
  return (
    <details>
      <summary>{say("facts.heading")}</summary>
      <table class="fact-table">
        <caption class="unseen">{say("facts.caption")}</caption>
        <thead>
          <tr>
            <th scope="col">{say("facts.fact")}</th>
            <th scope="col">{say("plate.original")}</th>
            <th scope="col">{say("plate.redesign")}</th>
          </tr>
        </thead>
        <tbody>
          {facts.rows.map((row) => (
            <tr key={row.id}>
              <th scope="row">{row.name}</th>
              {[row.before, row.after].map((side, index) => (
                <td key={index}>
                  {side.map((line) => (
                    <span key={line} class="line">
                      {line}
                    </span>
                  ))}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <FactSources facts={facts} links={links} />
    </details>
  );
}

function FactSources({ facts, links }: FactsProps): JSX.Element {
  const say = useSay();
  return (
    <div class="source">
      <p>
        <Message id="facts.clearShareNote" tags={{ near: (text) => <a href={links.nearLine}>{text}</a> }} />
      </p>
      <p>{say("facts.hueNote")}</p>
      {facts.tincture && (
        <p>
          <Message id="facts.tinctureNote" tags={{ book: (title) => <i>{title}</i> }} />
        </p>
      )}
      {facts.rows.some(({ id }) => id === "count") && (
        <p>
          <Message id="facts.countNote" tags={{ book: (title) => <i>{title}</i> }} />
        </p>
      )}
      <p>
        <a href={links.facts}>{say("facts.more")}</a>
      </p>
    </div>
  );
}
