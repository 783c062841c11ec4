// Part. The survey as a table: a row for each flag, least clear first; a script adds buttons that sort and a form.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { ComponentChildren, JSX } from "preact";
import type { FlagRow } from "../../src/views/survey/flagrow.ts";
import type { Choosing, SurveyFinder } from "../../src/views/survey/surveypage.ts";
import type { Swatch } from "../../src/words/paintname.ts";
import { Arrow } from "./move.tsx";
import { Mat } from "./plate.tsx";
import { SwatchChip } from "./swatch.tsx";

/** The form; hidden until the script that answers it runs. */
export function SurveyForm({ finder }: { finder: SurveyFinder }): JSX.Element {
  return (
    <search>
      <form class="finder survey-finder" hidden>
        <p class="field wide">
          <label for="survey-words">Words</label>
          <input type="search" id="survey-words" name="q" autocomplete="off" />
        </p>
        {finder.first.length > 1 && (
          <p class="field">
            <label for="survey-first">Colour to change first</label>
            <select id="survey-first" name="first">
              <option value="">Any</option>
              {finder.first.map((name) => (
                <option key={name} value={name}>
                  {name}
                </option>
              ))}
            </select>
          </p>
        )}
        {finder.hasBoth && (
          <p class="field">
            <label for="survey-study">Study</label>
            <select id="survey-study" name="study">
              <option value="">Any</option>
              <option value="yes">With a study</option>
              <option value="no">Without one</option>
            </select>
          </p>
        )}
        <div class="field buttons answer">
          <button type="submit">Find</button>
          <button type="reset">Show all</button>
          <p class="found" role="status" data-found={finder.found} data-all={finder.all}>
            {finder.all}
          </p>
        </div>
      </form>
      <p class="none-found" hidden>
        No flag fits all of this. Take away a word or a choice, or show all.
      </p>
    </search>
  );
}

/** All flags with their numbers. Where the page is narrow each row is a card, whose cells say what they are. */
export function SurveyTable({
  rows,
  id,
  caption,
}: {
  rows: readonly FlagRow[];
  id: string;
  caption: string;
}): JSX.Element {
  return (
    <section class="survey-scroll" aria-labelledby={id}>
      <table class="survey-table">
        <caption id={id}>{caption}</caption>
        <thead>
          <tr>
            <Head name="name">
              <span class="choose-head" hidden>
                Choose
              </span>
              Flag
            </Head>
            <Head name="clarity" sorted>
              Clarity
            </Head>
            <Head name="focus">Clarity of what has to be seen</Head>
            <Head name="lasts">Large enough up to</Head>
            <Head name="weakest">Weakest edge</Head>
            <Head name="first">Colour to change first</Head>
            <Head name="best">Best change of one colour</Head>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <Row key={row.id} row={row} />
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** What can be done with chosen flags; hidden until the script that answers it runs and one is chosen. */
export function ChosenBar({ choosing }: { choosing: Choosing }): JSX.Element {
  return (
    <div class="chosen-bar" hidden>
      <p role="status" data-one={choosing.one} data-many={choosing.many} />
      <a class="chosen-only" href="./">
        Show only these
      </a>
      <a class="chosen-file" href="./" download={choosing.file} data-head={choosing.heading}>
        List to begin studies from
      </a>
      <a class="chosen-series" href="./" download={choosing.series}>
        File to begin a series from
      </a>
      <button type="button">Choose none</button>
      <a class="chosen-all" href="./">
        Show all flags
      </a>
    </div>
  );
}

function Head({
  name,
  sorted = false,
  children,
}: {
  name: string;
  sorted?: boolean;
  children: ComponentChildren;
}): JSX.Element {
  return (
    <th scope="col" data-sort={name} aria-sort={sorted ? "ascending" : undefined}>
      {children}
    </th>
  );
}

function Row({ row }: { row: FlagRow }): JSX.Element {
  return (
    <tr
      id={row.id}
      data-words={row.words}
      data-first={row.first.map(({ name }) => name).join("|")}
      data-study={row.studies.length > 0 ? "yes" : "no"}
      data-file={row.file}
      data-slug={row.slug}
      data-entry={row.studies[0]?.slug}
    >
      <th scope="row" data-value={row.name}>
        <div class="survey-flag">
          <input type="checkbox" class="choose" hidden aria-label={`Choose ${row.name}`} />
          <Mat plate={row.plate} />
          <div>
            <a class="flag-name" href={row.plate.src}>
              {row.name}
            </a>
            {row.studies.map((study) => (
              <span key={study.address} class="renamed">
                Study: <a href={study.address}>{study.title}</a>
              </span>
            ))}
            {row.moreStudies && <span class="renamed">{row.moreStudies}</span>}
            {row.nominated?.said.map((said) => (
              <span key={said} class="renamed">
                <a href={row.nominated?.address ?? ""}>Named by readers.</a> <bdi>{said}</bdi>
              </span>
            ))}
          </div>
        </div>
      </th>
      <td class="number" data-head="Clarity" data-value={row.clarity.value}>
        {row.clarity.text}
      </td>
      <td class="number" data-head="Clarity of what has to be seen" data-value={row.focus.value}>
        {row.focus.text}
      </td>
      <td class="number" data-head="Large enough up to" data-value={row.lasts.value}>
        <bdi>{row.lasts.text}</bdi>
      </td>
      <td data-head="Weakest edge" data-value={row.weakest?.value ?? ""}>
        {row.weakest ? (
          <div>
            <span class="number">{row.weakest.text}</span> <span class="quiet">contrast</span>{" "}
            <span class="renamed">
              <span class="stacked">
                <Colour swatch={row.weakest.swatches[0]} /> /
              </span>{" "}
              <span class="stacked">
                <Colour swatch={row.weakest.swatches[1]} />
              </span>
            </span>
          </div>
        ) : (
          <span class="quiet">no edges</span>
        )}
      </td>
      <td data-head="Colour to change first" data-value={row.first.map(({ name }) => name).join(" ")}>
        {row.first.length === 0 ? (
          <span class="quiet">none</span>
        ) : (
          <div>
            {row.first.map((swatch, index) => (
              <span key={swatch.hex} class="stacked">
                {index > 0 && "or "}
                <Colour swatch={swatch} />{" "}
              </span>
            ))}
          </div>
        )}
      </td>
      <td data-head="Best change of one colour" data-value={row.best?.value ?? ""}>
        {row.best ? (
          <div>
            <span class="number">{row.best.text}</span> <span class="quiet">clarity</span>{" "}
            <span class="renamed">
              <span class="stacked">
                <Colour swatch={row.best.swatches[0]} />
              </span>{" "}
              <span class="stacked">
                <Arrow /> <Colour swatch={row.best.swatches[1]} />
              </span>
            </span>
          </div>
        ) : (
          <span class="quiet">none</span>
        )}
      </td>
    </tr>
  );
}

function Colour({ swatch }: { swatch: Swatch }): JSX.Element {
  return (
    <span class="named">
      <SwatchChip hex={swatch.hex} /> {swatch.name}
    </span>
  );
}
