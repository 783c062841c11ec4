// Part. Other single changes: the best for each colour in a table, all of them in a matrix, and those the author tried.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { BestView, ColourView, NotedView, OptionsView } from "../../src/views/study/optionsview.ts";
import { MatrixFigure } from "../figures/matrix.tsx";
import { Move } from "./move.tsx";
import { Mat } from "./plate.tsx";
import { SwatchChip } from "./swatch.tsx";

/** The sections of their page. */
export function Options({ options }: { options: OptionsView }): JSX.Element {
  return (
    <>
      {options.colours.length > 0 && (
        <section class="other-changes" aria-labelledby="options">
          <h2 id="options">The best for each colour</h2>
          <ByColour colours={options.colours} />
        </section>
      )}
      <section class="other-changes" aria-labelledby="all">
        <h2 id="all">All at once</h2>
        {options.matrix && <MatrixFigure matrix={options.matrix} id="matrix" />}
        <div class="source after-matrix">
          {!options.matrix && options.unranked && <p>{options.unranked}</p>}
          {options.notes.map((note) => (
            <p key={note}>{note}</p>
          ))}
          <p>
            Each colour of the flag is tried with the palette, with the flag’s other colours, and with the
            nearest shade of its own hue that clears. Numbers order them; looks are the author’s.{" "}
            <a href={options.how}>How options are ranked</a>
          </p>
        </div>
      </section>
      {options.noted.length > 0 && (
        <section class="other-changes" aria-labelledby="tried">
          <h2 id="tried">Also tried by the author</h2>
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
  const hasFocus = colours.some(({ best }) => best?.focus !== undefined);
  return (
    <table class="by-colour">
      <caption class="unseen">The best replacement for each colour</caption>
      <thead>
        <tr>
          <th scope="col">Colour changed</th>
          <th scope="col">Best replacement</th>
          <th scope="col">Clarity</th>
          {hasFocus && <th scope="col">Of what has to be seen</th>}
          <th scope="col">What gets worse</th>
        </tr>
      </thead>
      <tbody>
        {colours.map(({ id, hex, name, share, best }) => (
          <tr key={id}>
            <th scope="row">
              <SwatchChip hex={hex} /> {name} <span class="part">{share} of the flag</span>
            </th>
            {best === undefined ? (
              <td colSpan={hasFocus ? 4 : 3}>None that leaves every charge its outline.</td>
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
  const { hex, name, cell, short, equals, clarity, focus, worse } = best;
  return (
    <>
      <td>
        {short ? <span class="quiet">{short} </span> : <Label>Best:</Label>}
        <SwatchChip hex={hex} /> {cell ? <a href={cell}>{name}</a> : name}
        {equals && <>; {equals}</>}
      </td>
      <td class="number">
        <Label>Clarity</Label>
        <Move before={clarity[0]} after={clarity[1]} />
      </td>
      {hasFocus && (
        <td class="number">
          <Label>Of what has to be seen</Label>
          {focus && <Move before={focus[0]} after={focus[1]} />}
        </td>
      )}
      <td>
        <Label>Gets worse:</Label>
        {worse.length === 0 ? "Nothing." : worse.join(" ")}
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
