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
import { Message, useSay } from "./words.tsx";

/** The form; hidden until the script that answers it runs. */
export function SurveyForm({ finder }: { finder: SurveyFinder }): JSX.Element {
  const say = useSay();
  return (
    <search>
      <form class="finder survey-finder" hidden>
        <p class="field wide">
          <label for="survey-words">{say("finder.words")}</label>
          <input type="search" id="survey-words" name="q" autocomplete="off" />
        </p>
        {finder.first.length > 1 && (
          <p class="field">
            <label for="survey-first">{say("surveyTable.first")}</label>
            <select id="survey-first" name="first">
              <option value="">{say("finder.any")}</option>
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
            <label for="survey-study">{say("survey.study")}</label>
            <select id="survey-study" name="study">
              <option value="">{say("finder.any")}</option>
              <option value="yes">{say("survey.withStudy")}</option>
              <option value="no">{say("survey.withoutStudy")}</option>
            </select>
          </p>
        )}
        <div class="field buttons answer">
          <button type="submit">{say("finder.find")}</button>
          <button type="reset">{say("finder.all")}</button>
          <p class="found" role="status" data-found={finder.found} data-all={finder.all}>
            {finder.all}
          </p>
        </div>
      </form>
      <p class="none-found" hidden>
        {say("survey.none")}
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
  const say = useSay();
  return (
    <section class="survey-scroll" aria-labelledby={id}>
      <table class="survey-table">
        <caption id={id}>
          {caption}
          <span class="choose-head" hidden>
            {say("surveyTable.choose")}
          </span>
        </caption>
        <thead>
          <tr data-order={say("surveyTable.sortBy")}>
            <Head name="name">{say("surveyTable.flag")}</Head>
            <Head name="clarity" sorted>
              {say("mark.clarity")}
            </Head>
            <Head name="focus">{say("surveyTable.focus")}</Head>
            <Head name="lasts">{say("surveyTable.lasts")}</Head>
            <Head name="weakest">{say("surveyTable.weakest")}</Head>
            <Head name="first">{say("surveyTable.first")}</Head>
            <Head name="best">{say("surveyTable.best")}</Head>
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
  const say = useSay();
  return (
    <div class="chosen-bar" hidden>
      <p role="status" {...choosing.said} />
      <a class="chosen-only" href="./">
        {say("surveyTable.onlyChosen")}
      </a>
      <a
        class="chosen-file"
        href="./"
        download={choosing.file}
        data-head={choosing.heading}
        data-line={say("list.colon", { name: "{name}", said: "{said}" })}
      >
        {say("surveyTable.list")}
      </a>
      <a
        class="chosen-series"
        href="./"
        download={choosing.series}
        data-title={say("surveyTable.seriesTitle")}
        data-note={say("surveyTable.seriesNote")}
        data-closing={say("surveyTable.seriesClosing")}
      >
        {say("surveyTable.series")}
      </a>
      <button type="button">{say("surveyTable.chooseNone")}</button>
      <a class="chosen-all" href="./">
        {say("surveyTable.showAll")}
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
  const say = useSay();
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
          <input
            type="checkbox"
            class="choose"
            hidden
            aria-label={say("surveyTable.chooseOne", { name: row.name })}
          />
          <Mat plate={row.plate} />
          <div>
            <a class="flag-name" href={row.plate.src}>
              {row.name}
            </a>
            {row.studies.map((study) => (
              <span key={study.address} class="renamed">
                <Message
                  id="surveyTable.study"
                  values={{ title: study.title }}
                  tags={{ a: (text) => <a href={study.address}>{text}</a> }}
                />
              </span>
            ))}
            {row.moreStudies && <span class="renamed">{row.moreStudies}</span>}
            {row.nominated?.said.map((said) => (
              <span key={said} class="renamed">
                <a href={row.nominated?.address ?? ""}>{say("surveyTable.named")}</a> <bdi>{said}</bdi>
              </span>
            ))}
          </div>
        </div>
      </th>
      <td class="number" data-head={say("mark.clarity")} data-value={row.clarity.value}>
        {row.clarity.text}
      </td>
      <td class="number" data-head={say("surveyTable.focus")} data-value={row.focus.value}>
        {row.focus.text}
      </td>
      <td class="number" data-head={say("surveyTable.lasts")} data-value={row.lasts.value}>
        <bdi>{row.lasts.text}</bdi>
      </td>
      <td data-head={say("surveyTable.weakest")} data-value={row.weakest?.value ?? ""}>
        {row.weakest ? (
          <div>
            <span class="number">{row.weakest.text}</span>{" "}
            <span class="quiet">{say("surveyTable.ofContrast")}</span>{" "}
            <span class="renamed">
              <span class="stacked">
                <Colour swatch={row.weakest.swatches[0]} /> <span class="unseen">/</span>
              </span>{" "}
              <span class="stacked">
                <Colour swatch={row.weakest.swatches[1]} />
              </span>
            </span>
          </div>
        ) : (
          <span class="quiet">{say("number.noEdges")}</span>
        )}
      </td>
      <td data-head={say("surveyTable.first")} data-value={row.first.map(({ name }) => name).join(" ")}>
        {row.first.length === 0 ? (
          <span class="quiet">{say("surveyTable.noFirst")}</span>
        ) : (
          <div>
            {row.first.map((swatch, index) => (
              <span key={swatch.hex} class="stacked">
                {index > 0 && `${say("surveyTable.or")} `}
                <Colour swatch={swatch} />{" "}
              </span>
            ))}
          </div>
        )}
      </td>
      <td data-head={say("surveyTable.best")} data-value={row.best?.value ?? ""}>
        {row.best ? (
          <div>
            <span class="number">{row.best.text}</span>{" "}
            <span class="quiet">{say("surveyTable.ofClarity")}</span>{" "}
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
          <span class="quiet">{say("surveyTable.noBest")}</span>
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
