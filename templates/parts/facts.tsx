// Part. Facts beside the numbers, none of them a score, with their sources in the margin.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { StudyPage } from "../../src/site/present/study.ts";

/** The section with the facts of a study. */
export function Facts({ study }: { study: StudyPage }): JSX.Element {
  const { rows, exempt, warnings } = study.facts;
  return (
    <section class="evidence" aria-labelledby="facts">
      <h2 id="facts">Beside the numbers</h2>
      <div class="main">
        <table class="fact-table">
          <caption>Facts, none of them a score and none of them part of the verdict.</caption>
          <thead>
            <tr>
              <th scope="col">Fact</th>
              <th scope="col">Original</th>
              <th scope="col">Redesign</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
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
        {exempt.map((sentence) => (
          <p key={sentence} class="measured">
            {sentence}
          </p>
        ))}
        {warnings.length > 0 && (
          <section class="warnings" aria-labelledby="warnings">
            <h3 id="warnings">Where the figures are less certain</h3>
            <ul>
              {warnings.map((warning) => (
                <li key={warning}>{warning}</li>
              ))}
            </ul>
          </section>
        )}
      </div>
      <div class="margin source">
        <p>
          The clear-edge share jumps where a grade does, so it is data and decides nothing.{" "}
          <a href={study.links.nearLine}>Near the line</a>
        </p>
        <p>
          Hue alone: a contrast under 30 with ΔE00 of 20 or more. Such an edge goes in dusk, in grey print and
          for many colour-blind readers. The steps are our own judgement.
        </p>
        <p>
          Rule of tincture: no metal on metal, no colour on colour; A. C. Fox-Davies,{" "}
          <i>A Complete Guide to Heraldry</i>, 1909, chapter VII. Parted fields, fimbriations and furs are
          exempt; furs are not recognised here.
        </p>
        <p>
          Colours over half a percent of the area. The booklet <i>Good Flag, Bad Flag</i>, 2006, advises two
          or three; the <i>Guiding Principles of Flag Design</i>, 2014, prefer fewer to more.
        </p>
        <p>
          <a href={study.links.facts}>More on these facts</a>
        </p>
      </div>
    </section>
  );
}
