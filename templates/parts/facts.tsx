// Part. Facts beside the numbers, none of them a score: the rule of tincture in a line, all of them with their sources behind it.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { StudyPage } from "../../src/views/study/studypage.ts";

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
  return (
    <details>
      <summary>Facts beside the numbers, none of them a score</summary>
      <table class="fact-table">
        <caption class="unseen">Facts beside the numbers</caption>
        <thead>
          <tr>
            <th scope="col">Fact</th>
            <th scope="col">Original</th>
            <th scope="col">Redesign</th>
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
  return (
    <div class="source">
      <p>
        The clear-edge share jumps where a grade does, so it is data and decides nothing.{" "}
        <a href={links.nearLine}>Near the line</a>
      </p>
      <p>
        Hue alone: a contrast under 30% with ΔE00 of 20 or more, and under 10 in grey. Such an edge goes in
        dusk, in grey print and for many colour-blind readers. The steps are our own judgement.
      </p>
      {facts.tincture && (
        <p>
          Rule of tincture: no metal on metal, no colour on colour; A. C. Fox-Davies,{" "}
          <i>A Complete Guide to Heraldry</i>, 1909, chapter VII. Parted fields, fimbriations and furs are
          exempt; furs are not recognised here.
        </p>
      )}
      {facts.rows.some(({ id }) => id === "count") && (
        <p>
          Colours over half a percent of the area. The booklet <i>Good Flag, Bad Flag</i>, 2006, advises two
          or three; the <i>Guiding Principles of Flag Design</i>, 2014, prefer fewer to more.
        </p>
      )}
      <p>
        <a href={links.facts}>More on these facts</a>
      </p>
    </div>
  );
}
