// Part. Sheets for a class: each part of the page fills one page of paper.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SheetPage, SheetPart } from "../../src/views/sheet/sheetpage.ts";
import type { SheetStudy } from "../../src/views/sheet/sheetpart.ts";
import { BlankRuler, RulerScale, RulerTable } from "../figures/ruler.tsx";
import { Document } from "./document.tsx";
import { ChipList, SignChip } from "./hatch.tsx";
import { CaptionedPlate, Mat } from "./plate.tsx";
import { Message, useSay } from "./words.tsx";

/** The whole page. */
export function Sheets({ sheet }: { sheet: SheetPage }): JSX.Element {
  return (
    <Document frame={sheet.frame} layout="sheets">
      <article>
        <Opening sheet={sheet} />
        {sheet.parts.map((part) => (
          <section key={part.id} id={part.id} class={`sheets-page sheets-${part.kind}`}>
            <Part part={part} sheet={sheet} />
            <SheetFoot foot={sheet.foot} page={part.page} />
          </section>
        ))}
      </article>
    </Document>
  );
}

function Opening({ sheet }: { sheet: SheetPage }): JSX.Element {
  const say = useSay();
  return (
    <header class="opening">
      <p class="flag-name">{say("sheet.kind")}</p>
      <h1>{sheet.title}</h1>
      <p class="measured">
        {say("sheet.print")} <a href={sheet.back.address}>{sheet.back.text}</a>
      </p>
    </header>
  );
}

/** What stands at the foot of a sheet of paper: whose it is, where the study is, and which page it is. */
export function SheetFoot({ foot, page }: { foot: string; page: string }): JSX.Element {
  return (
    <p class="sheets-foot">
      <bdi>
        {foot.split("/").map((part, at) => (
          <>
            {at > 0 && (
              <>
                /<wbr />
              </>
            )}
            {part}
          </>
        ))}
      </bdi>{" "}
      <span class="number">{page}</span>
    </p>
  );
}

function Part({ part, sheet }: { part: SheetPart; sheet: SheetPage }): JSX.Element {
  switch (part.kind) {
    case "contents":
      return <Contents part={part} title={sheet.title} />;
    case "handout":
      return <Handout study={part.study} />;
    case "worksheet":
      return <Worksheet study={part.study} />;
    case "answers":
      return <Answers study={part.study} sheet={sheet} />;
    case "yours":
      return <Yours part={part} />;
  }
}

const columns = ["handout", "worksheet", "answers"] as const;

function Contents({
  part,
  title,
}: {
  part: Extract<SheetPart, { readonly kind: "contents" }>;
  title: string;
}): JSX.Element {
  const say = useSay();
  return (
    <>
      <h2>{title}</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">{say("sheet.contents")}</th>
            <th scope="col" class="end">
              {say("sheet.handout")}
            </th>
            <th scope="col" class="end">
              {say("sheet.worksheet")}
            </th>
            <th scope="col" class="end">
              {say("sheet.answers")}
            </th>
          </tr>
        </thead>
        <tbody>
          {part.lines.map(({ name, says, pages }) => (
            <tr key={pages[0]?.anchor}>
              <th scope="row">
                {name} <span class="quiet">{says}</span>
              </th>
              {columns.map((column) => {
                const page = pages.find(
                  ({ kind }) => kind === column || (kind === "yours" && column === "worksheet"),
                );
                return (
                  <td key={column} class="number end">
                    {page && <a href={page.anchor}>{page.number}</a>}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
      {part.closing && <p class="sheets-closing">{part.closing}</p>}
    </>
  );
}

/** The sheet's own line: what it is, and of which flag. */
function Head({ kind, study }: { kind: string; study: Pick<SheetStudy, "name"> }): JSX.Element {
  return (
    <h2>
      {study.name} <span class="sheets-kind">{kind}</span>
    </h2>
  );
}

function Handout({ study }: { study: SheetStudy }): JSX.Element {
  const say = useSay();
  const { verdict, ruler } = study;
  return (
    <>
      <Head kind={say("sheet.handout")} study={study} />
      <div class="pair">
        {study.plates.map((plate, index) => (
          <CaptionedPlate key={plate.label} plate={plate} eager>
            {index === 1 ? say("sheet.redesign") : plate.label}
          </CaptionedPlate>
        ))}
      </div>
      <p class="sheets-verdict">
        {study.change} <strong>{verdict.word}.</strong> {verdict.sentence}
      </p>
      <h3>{say("sheet.questions")}</h3>
      <ol class="sheets-questions">
        {study.questions.map(({ ask }, index) => (
          <li key={ask}>
            <p>{ask}</p>
            {ruler && index === 1 && (
              <div class="sheets-ruler">
                <RulerScale ruler={ruler} />
                <p class="quiet">{ruler.scale}</p>
              </div>
            )}
            <span class="sheets-line" />
          </li>
        ))}
      </ol>
      {!ruler && <p class="quiet">{say("sheet.noRuler")}</p>}
      <div class="sheets-hatched">
        <div class="pair">
          {study.hatched.map((plate) => (
            <Picture key={plate.label} plate={plate} />
          ))}
        </div>
        <div>
          <h3>{say("sheet.hatched")}</h3>
          <p class="quiet">{say("sheet.hatchedHow")}</p>
          <ChipList chips={study.legend} />
        </div>
      </div>
      {study.credit && <p class="sheets-credit">{study.credit}</p>}
    </>
  );
}

/** A picture that has no colour needs no mat. */
function Picture({ plate: { src, alt, width, height } }: { plate: SheetStudy["outline"] }): JSX.Element {
  return <img class="sheets-picture" src={src} alt={alt} width={width} height={height} decoding="async" />;
}

function Worksheet({ study }: { study: SheetStudy }): JSX.Element {
  const say = useSay();
  const { outline, ruler } = study;
  return (
    <>
      <Head kind={say("sheet.worksheet")} study={study} />
      <p class="sheets-who">
        {say("sheet.name")} <span class="sheets-line" />
      </p>
      <p>{say("sheet.change")}</p>
      <Picture plate={outline} />
      <div class="sheets-colours">
        <div>
          <h3>{say("sheet.own")}</h3>
          <ChipList chips={study.colours} />
        </div>
        <div>
          <h3>{say("sheet.palette")}</h3>
          <ChipList chips={study.palette} />
        </div>
      </div>
      {ruler && (
        <div class="sheets-ruler">
          <p>{say("sheet.guess")}</p>
          <BlankRuler ruler={ruler} />
        </div>
      )}
      <Reason />
    </>
  );
}

/** A sentence to fill in, and room for more. */
function Reason(): JSX.Element {
  const say = useSay();
  return (
    <div class="sheets-reason">
      <p>
        <Message id="sheet.reason" tags={{ line: () => <span class="sheets-line" /> }} />
      </p>
      <span class="sheets-line" />
      <span class="sheets-line" />
      <p>
        {say("sheet.price")} <span class="sheets-line" />
      </p>
      <span class="sheets-line" />
    </div>
  );
}

function Yours({ part }: { part: Extract<SheetPart, { readonly kind: "yours" }> }): JSX.Element {
  const say = useSay();
  return (
    <>
      <Head kind={say("sheet.worksheet")} study={part} />
      <p class="sheets-who">
        {say("sheet.name")} <span class="sheets-line" />
      </p>
      <Mat plate={part.plate} eager />
      <p class="sheets-verdict">
        {part.ask} <span class="quiet">{say("sheet.yours")}</span>
      </p>
      <h3>{say("sheet.palette")}</h3>
      <ChipList chips={part.palette} />
      <Reason />
    </>
  );
}

function Answers({ study, sheet }: { study: SheetStudy; sheet: SheetPage }): JSX.Element {
  const say = useSay();
  const { signs } = sheet;
  return (
    <>
      <Head kind={say("sheet.teacher")} study={study} />
      <h3>{say("sheet.answers")}</h3>
      <ol class="sheets-questions">
        {study.questions.map(({ ask, answer }) => (
          <li key={ask}>
            <p class="quiet">{ask}</p>
            <p>
              <strong>{answer}</strong>
            </p>
          </li>
        ))}
      </ol>
      {study.ruler && (
        <div class="sheets-ruler">
          <RulerTable ruler={study.ruler} rows={study.ruler.rows} />
          <p class="quiet">{study.ruler.left}</p>
        </div>
      )}
      <dl class="sheets-facts">
        <dt>
          <strong>{say("sheet.own")}</strong>
        </dt>
        <dd>{study.shares}</dd>
        {study.best && (
          <>
            <dt>
              <strong>{say("sheet.others")}</strong>
            </dt>
            <dd>{study.best}</dd>
          </>
        )}
        <dt>
          <strong>{say("sheet.onWorksheet")}</strong>
        </dt>
        <dd>{say("sheet.opinion")}</dd>
      </dl>
      <h3>{say("sheet.signs")}</h3>
      <ul class="sheets-chips">
        {signs.map(({ name, sign }) => (
          <li key={name}>
            <SignChip sign={sign} /> {name}
          </li>
        ))}
      </ul>
      <p class="source">{say("sheet.signsSource")}</p>
    </>
  );
}
