// Part. A contact sheet: the flag after other single changes, each with its numbers; what is behind them opens on demand.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { OptionsView, OptionView } from "../../src/site/present/options.ts";
import { Move } from "./move.tsx";
import { Mat } from "./plate.tsx";
import { SwatchChip } from "./swatch.tsx";

/** The section of a study page. */
export function Options({ options }: { options: OptionsView }): JSX.Element {
  return (
    <section class="evidence other-changes" aria-labelledby="options">
      <h2 id="options">Other single changes</h2>
      <div class="main">
        <p>{options.first}</p>
        {options.standing && <p>{options.standing}</p>}
      </div>
      <div class="margin source">
        <p>
          Every colour of the flag is tried with every colour of the palette, with its other colours, and with
          the nearest shade that clears. Numbers order them; looks are the author’s.{" "}
          <a href={options.how}>How options are ranked</a>
        </p>
      </div>
      <Sheet options={options.best} />
      {options.noted.length > 0 && (
        <>
          <h3>Also tried by the author</h3>
          <Sheet options={options.noted} />
        </>
      )}
      <div class="source after-sheet">
        {options.vanishing && <p>{options.vanishing}</p>}
        {options.notes.map((note) => (
          <p key={note}>{note}</p>
        ))}
      </div>
    </section>
  );
}

function Sheet({ options }: { options: readonly OptionView[] }): JSX.Element {
  return (
    <ul class="sheet">
      {options.map((option) => (
        <li key={option.plate.src} class={option.isChosen ? "chosen" : undefined}>
          <Mat plate={option.plate} />
          <p class="option-change">
            <Move
              before={<SwatchChip hex={option.swatches[0].hex} />}
              after={<SwatchChip hex={option.swatches[1].hex} />}
            />{" "}
            {option.change}
          </p>
          <p class="option-figures">
            {option.figures}
            {option.isChosen && <strong> · this study</strong>}
          </p>
          {option.ties && <p class="option-ties">{option.ties}</p>}
          {option.note && <p class="option-note">{option.note}</p>}
          <details>
            <summary>What it does</summary>
            <ul>
              {option.details.map((detail) => (
                <li key={detail}>{detail}</li>
              ))}
            </ul>
          </details>
        </li>
      ))}
    </ul>
  );
}
