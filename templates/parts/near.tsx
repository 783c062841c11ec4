// Part. Whether a redesign could be mistaken for another flag, in a line, with the flags that it looks most like behind it.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { LikenessView } from "../../src/views/study/likenessfact.ts";
import { Mat } from "./plate.tsx";

/** Open where a flag is so near that it has to be looked at. */
export function Near({ likeness }: { likeness: LikenessView }): JSX.Element {
  return (
    <>
      <p>{likeness.sentence}</p>
      <details open={likeness.isNear}>
        <summary>Beside the flags it is nearest to</summary>
        <ul class="sheet near">
          <li>
            <Mat plate={likeness.own} eager />
            <p class="option-change">{likeness.own.label}</p>
          </li>
          {likeness.nearest.map((near) => (
            <li key={near.name}>
              {near.shown && <Mat plate={near.shown.plate} eager />}
              <p class="option-change">
                {near.shown ? (
                  <a href={near.shown.address}>{near.shown.plate.label}</a>
                ) : (
                  <>{near.name}, not shown here</>
                )}
              </p>
              <p class="option-figures">{near.figures}</p>
            </li>
          ))}
        </ul>
        <p class="measured">
          Mean ΔE00 over the whole flag as cloth: 0 is the same picture.{" "}
          <a href={likeness.how}>How likeness is measured</a>
        </p>
      </details>
    </>
  );
}
