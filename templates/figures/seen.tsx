// Figure. Seen otherwise: both flags as four kinds of vision have them, original beside redesign, with one number each.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { StudyPage } from "../../src/views/study/studypage.ts";
import { Move } from "../parts/move.tsx";
import { DrawnMat } from "../parts/plate.tsx";
import { useSay } from "../parts/words.tsx";

/** The figure with its caption. `id` is its anchor; `labels`, if any, stand under the flags of each pair. */
export function SeenFigure({
  seen,
  id,
  labels = [],
}: {
  seen: StudyPage["seen"];
  id: string;
  labels?: readonly string[];
}): JSX.Element {
  const say = useSay();
  return (
    <figure class="seen-figure" id={id}>
      <div class="seen-grid">
        {seen.map((one) => (
          <figure key={one.vision} class="seen-one">
            <div class="small-pair">
              {one.plates.map((plate, index) => (
                <DrawnMat key={plate.label} plate={plate} id={`${id}-${one.vision}-${index}`} />
              ))}
              {labels.map((label) => (
                <span key={label} class="seen-side">
                  {label}
                </span>
              ))}
            </div>
            <figcaption>
              <strong>{one.heading}</strong>
              {say("list.comma")}
              {one.explanation}
              <span class="seen-number">
                {one.measure} <Move before={one.before} after={one.after} />
              </span>
            </figcaption>
          </figure>
        ))}
      </div>
      <figcaption>
        <strong>
          <a href={`#${id}`}>{say("seen.title")}</a>.
        </strong>{" "}
        {say("seen.caption")}
      </figcaption>
    </figure>
  );
}
