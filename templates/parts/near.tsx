// Part. A redesign beside the flags that it looks most like, with how near they are.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { LikenessView } from "../../src/site/present/likeness.ts";
import { Mat } from "./plate.tsx";

/** The section of a study page. */
export function Near({ likeness }: { likeness: LikenessView }): JSX.Element {
  return (
    <section class="evidence likeness" aria-labelledby="likeness">
      <h2 id="likeness">Looks like</h2>
      <div class="main">
        <p>{likeness.sentence}</p>
        {likeness.warning && <p>{likeness.warning}</p>}
      </div>
      <div class="margin source">
        <p>
          Mean ΔE00 over the whole flag as cloth: 0 is the same picture.{" "}
          <a href={likeness.how}>How likeness is measured</a>
        </p>
      </div>
      <ul class="sheet near">
        <li>
          <Mat plate={likeness.own} />
          <p class="option-change">{likeness.own.label}</p>
        </li>
        {likeness.nearest.map((near) => (
          <li key={near.name}>
            {near.shown && <Mat plate={near.shown.plate} />}
            <p class="option-change">
              {near.shown ? (
                <a href={near.shown.address}>{near.shown.plate.label}</a>
              ) : (
                <>{near.name}, not shown here</>
              )}
            </p>
            <p class="option-figures">
              {near.figures}
              {near.isNear && <strong> · easily taken for it</strong>}
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
