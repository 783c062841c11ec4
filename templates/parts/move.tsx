// Part. From one value to another: an arrow for the eye, a word for the ear.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { ComponentChildren, JSX } from "preact";
import { useSay } from "./words.tsx";

/** `before → after`. */
export function Move({
  before,
  after,
}: {
  before: ComponentChildren;
  after: ComponentChildren;
}): JSX.Element {
  return (
    <span class="move">
      <span class="move-before">{before}</span> <Arrow /> <span class="move-after">{after}</span>
    </span>
  );
}

/** The arrow alone, drawn so that no font has to have it; it turns round where the page runs from right to left. */
export function Arrow(): JSX.Element {
  const say = useSay();
  return (
    <>
      <svg class="arrow" viewBox="0 0 20 10" width="20" height="10" aria-hidden="true" focusable="false">
        <path d="M1 5H18M14 1.5L18 5L14 8.5" fill="none" stroke="currentColor" stroke-width="1.2" />
      </svg>
      <span class="unseen">{say("move.to")}</span>
    </>
  );
}
