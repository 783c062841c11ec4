// Part. Other single changes: the best for each colour in a table, all of them in a matrix, and those the author tried.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { BestView, ColourView, NotedView, OptionsView } from "../../src/views/study/optionsview.ts";
import { MatrixFigure } from "../figures/matrix.tsx";
import { Move } from "./move.tsx";
import { Mat } from "./plate.tsx";
import { SwatchChip } from "./swatch.tsx";
import { Message, useSay } from "./words.tsx";

/** The sections of their page. */
export function Options({ options }: { options: OptionsView }): JSX.Element {
  const say = useSay();
  return (
    <>
      {options.colours.length > 0 && (
        <section class="other-changes" aria-labelledby="options">
          <h2 id="options">{say("options.byColour")}</h2>
          <ByColour colours={options.colours} />
        </section>
      )}
      <section class="other-changes" aria-labelledby="all">
        <h2 id="all">{say("options.all")}</h2>
        {options.matrix && <MatrixFigure matrix={options.matrix} id="matrix" />}
        <div class="source after-matrix">
          {!options.matrix && options.unranked && <p>{options.unranked}</p>}
          {options.notes.map((note) => (
            <p key={note}>{note}</p>
          ))}
          <p>
            <Message id="options.how" tags={{ how: (text) => <a href={options.how}>{text}</a> }} />
          </p>
        </div>
      </section>
      {options.noted.length > 0 && (
        <section class="other-changes" aria-labelledby="tried">
          <h2 id="tried">{say("options.tried")}</h2>
          <ul class="sheet">
            {options.noted.map((noted) => (
              <Noted key={noted.id} noted={noted} />
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

function ByColour({ colours }: { colours: readonly ColourView[] }): JSX.Element {
  const say = useSay();
  const hasFocus = colours.some(({ best }) => best?.focus !== undefined);
  return (
    <table class="by-colour">
      <caption class="unseen">{say("options.caption")}</caption>
      <thead>
        <tr>
          <th scope="col">{say("options.changed")}</th>
          <th scope="col">{say("options.best")}</th>
          <th scope="col">{say("mark.clarity")}</th>
          {hasFocus && <th scope="col">{say("options.ofFocus")}</th>}
          <th scope="col">{say("options.worse")}</th>
        </tr>
      </thead>
      <tbody>
        {colours.map(({ id, hex, name, share, best }) => (
          <tr key={id}>
            <th scope="row">
              <SwatchChip hex={hex} /> {name} <span class="part">{say("options.share", { share })}</span>
            </th>
            {best === undefined ? (
              <td colSpan={hasFocus ? 4 : 3}>{say("options.none")}</td>
            ) : (
              <Best best={best} hasFocus={hasFocus} />
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Best({ best, hasFocus }: { best: BestView; hasFocus: boolean }): JSX.Element {
  const say = useSay();
  const { hex, name, cell, short, equals, clarity, focus, worse } = best;
  return (
    <>
      <td>
        {short ? <span class="quiet">{short} </span> : <Label>{say("options.bestLabel")}</Label>}
        <SwatchChip hex={hex} /> {cell ? <a href={cell}>{name}</a> : name}
        {equals && `${say("list.semicolon")}${equals}`}
      </td>
      <td class="number">
        <Label>{say("mark.clarity")}</Label>
        <Move before={clarity[0]} after={clarity[1]} />
      </td>
      {hasFocus && (
        <td class="number">
          <Label>{say("options.ofFocus")}</Label>
          {focus && <Move before={focus[0]} after={focus[1]} />}
        </td>
      )}
      <td>
        <Label>{say("options.worseLabel")}</Label>
        {worse.length === 0 ? say("options.nothing") : worse.join(" ")}
      </td>
    </>
  );
}

/** The head of its column, where on a phone there is none over it. */
function Label({ children }: { children: string }): JSX.Element {
  return <span class="only-phone">{children} </span>;
}

function Noted({ noted }: { noted: NotedView }): JSX.Element {
  return (
    <li id={noted.id}>
      <Mat plate={noted.plate} />
      <p class="option-change">
        {noted.number}.{" "}
        <Move
          before={<SwatchChip hex={noted.swatches[0].hex} />}
          after={<SwatchChip hex={noted.swatches[1].hex} />}
        />{" "}
        {noted.change}
      </p>
      <p class="option-figures">{noted.figures}</p>
      <p class="option-figures">{noted.verdict}</p>
      {noted.note && <p class="option-note">{noted.note}</p>}
    </li>
  );
}
