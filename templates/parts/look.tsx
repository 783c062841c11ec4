// Part. Both flags once more, in one box, where a script runs.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { Plate } from "../../src/site/present/plate.ts";
import type { StudyPage } from "../../src/site/present/study.ts";

/** The section of a study page. */
export function Look({ study }: { study: StudyPage }): JSX.Element {
  return (
    <section class="evidence look" aria-labelledby="look">
      <h2 id="look">Another look</h2>
      <Wipe plates={study.plates} />
    </section>
  );
}

/** Hidden until the script that moves it runs. The range says in words how much of the redesign shows. */
function Wipe({ plates }: { plates: readonly [Plate, Plate] }): JSX.Element {
  const [original, redesign] = plates;
  return (
    <figure class="wipe" id="wipe" hidden>
      <p class="wipe-sides" aria-hidden="true">
        <span>{redesign.label}</span> <span>{original.label}</span>
      </p>
      <div class="mat">
        <div class={`flag flag-${original.fit} wipe-box`}>
          {plates.map((plate) => (
            <img
              key={plate.label}
              src={plate.src}
              alt={plate.alt}
              width={plate.width}
              height={plate.height}
              loading="lazy"
              decoding="async"
              draggable={false}
            />
          ))}
        </div>
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
          <a href="#wipe">Wipe</a>.
        </strong>{" "}
        Draw the redesign over the original, with the slider or on the flag itself.
      </figcaption>
    </figure>
  );
}
