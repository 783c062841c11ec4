// Part. Sheets for a class: each part of the page fills one page of paper.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SheetPage, SheetPart } from "../../src/views/sheet/sheetpage.ts";
import type { SheetStudy } from "../../src/views/sheet/sheetpart.ts";
import { BlankRuler, RulerTable } from "../figures/ruler.tsx";
import { Document } from "./document.tsx";
import { ChipList, SignChip } from "./hatch.tsx";
import { CaptionedPlate, Mat } from "./plate.tsx";

type Words = SheetPage["words"];

/** The whole page. */
export function Sheets({ sheet }: { sheet: SheetPage }): JSX.Element {
  const { words } = sheet;
  return (
    <Document frame={sheet.frame} layout="sheets">
      <article>
        <header class="opening">
          <p class="flag-name">Sheets for a class</p>
          <h1>{sheet.title}</h1>
          <p class="measured">
            {words.print} <a href={sheet.back.address}>{sheet.back.text}</a>
          </p>
        </header>
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
  const { words } = sheet;
  switch (part.kind) {
    case "contents":
      return <Contents part={part} title={sheet.title} />;
    case "handout":
      return <Handout study={part.study} words={words} />;
    case "worksheet":
      return <Worksheet study={part.study} words={words} />;
    case "answers":
      return <Answers study={part.study} sheet={sheet} />;
    case "yours":
      return <Yours part={part} words={words} />;
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
  return (
    <>
      <h2>{title}</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">Contents</th>
            <th scope="col" class="end">
              Handout
            </th>
            <th scope="col" class="end">
              Worksheet
            </th>
            <th scope="col" class="end">
              Answers
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

function Handout({ study, words }: { study: SheetStudy; words: Words }): JSX.Element {
  const { verdict, ruler } = study;
  return (
    <>
      <Head kind="Handout" study={study} />
      <div class="pair">
        {study.plates.map((plate, index) => (
          <CaptionedPlate key={plate.label} plate={plate} eager>
            {plate.label}
            {index === 1 && `, ${words.unofficial.toLowerCase()}`}
          </CaptionedPlate>
        ))}
      </div>
      <p class="sheets-verdict">
        {study.change} <strong>{verdict.word}.</strong> {verdict.sentence}
      </p>
      <h3>Three questions</h3>
      <ol class="sheets-questions">
        {study.questions.map(({ ask }) => (
          <li key={ask}>
            <p>{ask}</p>
            <span class="sheets-line" />
          </li>
        ))}
      </ol>
      {ruler ? (
        <div class="sheets-ruler">
          <RulerTable ruler={ruler} rows={ruler.rows} />
          <p class="quiet">
            {words.ruler} {ruler.left}
          </p>
        </div>
      ) : (
        <p class="quiet">{words.noRuler}</p>
      )}
      <div class="sheets-hatched">
        <div class="pair">
          {study.hatched.map((plate) => (
            <Picture key={plate.label} plate={plate} />
          ))}
        </div>
        <div>
          <h3>{words.hatched}</h3>
          <p class="quiet">{words.hatchedHow}</p>
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

function Worksheet({ study, words }: { study: SheetStudy; words: Words }): JSX.Element {
  const { outline, ruler } = study;
  return (
    <>
      <Head kind="Worksheet" study={study} />
      <p class="sheets-who">
        Name <span class="sheets-line" />
      </p>
      <p>{words.change}</p>
      <Picture plate={outline} />
      <div class="sheets-colours">
        <div>
          <h3>{words.own}</h3>
          <ChipList chips={study.colours} />
        </div>
        <div>
          <h3>{words.palette}</h3>
          <ChipList chips={study.palette} />
        </div>
      </div>
      {ruler && (
        <div class="sheets-ruler">
          <p>{words.guess}</p>
          <BlankRuler ruler={ruler} />
        </div>
      )}
      <Reason words={words} />
    </>
  );
}

/** A sentence to fill in, and room for more. */
function Reason({ words }: { words: Words }): JSX.Element {
  return (
    <div class="sheets-reason">
      <p>
        {words.fill} <span class="sheets-line" /> {words.into} <span class="sheets-line" />, {words.because}
      </p>
      <span class="sheets-line" />
      <span class="sheets-line" />
      <p>
        {words.price} <span class="sheets-line" />
      </p>
      <span class="sheets-line" />
    </div>
  );
}

function Yours({
  part,
  words,
}: {
  part: Extract<SheetPart, { readonly kind: "yours" }>;
  words: Words;
}): JSX.Element {
  return (
    <>
      <Head kind="Worksheet" study={part} />
      <p class="sheets-who">
        Name <span class="sheets-line" />
      </p>
      <Mat plate={part.plate} eager />
      <p class="sheets-verdict">
        {part.ask} <span class="quiet">{words.yours}</span>
      </p>
      <h3>{words.palette}</h3>
      <ChipList chips={part.palette} />
      <Reason words={words} />
    </>
  );
}

function Answers({ study, sheet }: { study: SheetStudy; sheet: SheetPage }): JSX.Element {
  const { words, signs } = sheet;
  return (
    <>
      <Head kind="For the teacher" study={study} />
      <h3>{words.answers}</h3>
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
          <strong>{words.own}</strong>
        </dt>
        <dd>{study.shares}</dd>
        {study.best && (
          <>
            <dt>
              <strong>Other changes</strong>
            </dt>
            <dd>{study.best}</dd>
          </>
        )}
        <dt>
          <strong>The worksheet</strong>
        </dt>
        <dd>{words.opinion}</dd>
      </dl>
      <h3>Colours in lines</h3>
      <ul class="sheets-chips">
        {signs.map(({ name, sign }) => (
          <li key={name}>
            <SignChip sign={sign} /> {name}
          </li>
        ))}
      </ul>
      <p class="source">{words.signs}</p>
    </>
  );
}
