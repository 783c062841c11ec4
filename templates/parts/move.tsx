// Part. From one value to another: an arrow for the eye, a word for the ear.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { ComponentChildren, JSX } from "preact";

/** `before → after`. */
export function Move({ before, after }: { before: ComponentChildren; after: ComponentChildren }): JSX.Element {
  return (
    <span class="move">
      <span class="move-before">{before}</span> <Arrow /> <span class="move-after">{after}</span>
    </span>
  );
}

/** The arrow alone; it turns round where the page runs from right to left. */
export function Arrow(): JSX.Element {
  return (
    <>
      <span class="arrow" aria-hidden="true">
        →
      </span>
      <span class="unseen">to</span>
    </>
  );
}
