// Part. Whether a redesign could be mistaken for another flag, in a line, with the flags that it looks most like behind it.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { LikenessView } from "../../src/views/study/likenessfact.ts";
import { Mat } from "./plate.tsx";
import { Message, useSay } from "./words.tsx";

/** Open where a flag is so near that it has to be looked at. */
export function Near({ likeness }: { likeness: LikenessView }): JSX.Element {
  const say = useSay();
  return (
    <>
      <p>{likeness.sentence}</p>
      <details open={likeness.isNear}>
        <summary>{say("near.beside")}</summary>
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
                  say("near.hidden", { name: near.name })
                )}
              </p>
              <p class="option-figures">{near.figures}</p>
            </li>
          ))}
        </ul>
        <p class="measured">
          <Message id="near.scale" tags={{ how: (text) => <a href={likeness.how}>{text}</a> }} />
        </p>
      </details>
    </>
  );
}
