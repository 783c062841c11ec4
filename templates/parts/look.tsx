// Part. Both flags once more: in one box, where a script runs, and at true size.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { Plate } from "../../src/site/present/plate.ts";
import type { SizeRow } from "../../src/site/present/size.ts";
import type { StudyPage } from "../../src/site/present/study.ts";

/** The section of a study page. */
export function Look({ study }: { study: StudyPage }): JSX.Element {
  return (
    <section class="evidence look" aria-labelledby="look">
      <h2 id="look">Another look</h2>
      <Wipe plates={study.plates} />
      <Sizes rows={study.sizes} />
    </section>
  );
}

/** Hidden until the script that moves it runs. */
function Wipe({ plates }: { plates: readonly [Plate, Plate] }): JSX.Element {
  const [original, redesign] = plates;
  return (
    <figure class="wipe" id="wipe" hidden>
      <div class="mat">
        {plates.map((plate, index) => (
          <img
            key={plate.label}
            class={`flag flag-${plate.fit}${index === 1 ? " wipe-over" : ""}`}
            src={plate.src}
            alt={plate.alt}
            width={plate.width}
            height={plate.height}
            loading="lazy"
            decoding="async"
          />
        ))}
      </div>
      <div class="wipe-controls">
        <button type="button" value="0" aria-pressed="false">
          {original.label}
        </button>
        <input
          type="range"
          min="0"
          max="100"
          value="50"
          step="1"
          aria-label="How much of the redesign shows"
          aria-valuetext="Half original, half redesign"
        />
        <button type="button" value="100" aria-pressed="false">
          {redesign.label}
        </button>
      </div>
      <figcaption>
        <strong>
          <a href="#wipe">One box</a>.
        </strong>{" "}
        Draw the redesign over the original.
      </figcaption>
    </figure>
  );
}

function Sizes({ rows }: { rows: readonly [SizeRow, SizeRow] }): JSX.Element {
  return (
    <figure class="sizes" id="true-size">
      {rows.map((row) => (
        <ul key={row.label} class="size-row" aria-label={row.label}>
          {row.pictures.map((picture) => (
            <li key={picture.height}>
              <img
                src={picture.src}
                alt={picture.alt}
                width={picture.width}
                height={picture.height}
                loading="lazy"
                decoding="async"
              />
            </li>
          ))}
        </ul>
      ))}
      <figcaption>
        <strong>
          <a href="#true-size">At true size</a>.
        </strong>{" "}
        Original over redesign, {rows[0].pictures.map(({ height }) => height).join(", ")} pixels high, as
        flags stand in lists and headings.
      </figcaption>
    </figure>
  );
}
