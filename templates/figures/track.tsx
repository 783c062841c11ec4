// Figure. A line from 0 to 100 for one row of a table: a ring, a dot, or the way from one to the other.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";

/** `marks` are places on the line that mean something; the words of the row say what is drawn. */
export function Track({
  ring,
  dot,
  marks,
}: {
  ring?: number | undefined;
  dot?: number | undefined;
  marks: readonly number[];
}): JSX.Element {
  return (
    <svg
      class="track"
      viewBox="0 0 100 10"
      width="100"
      height="10"
      preserveAspectRatio="none"
      aria-hidden="true"
      focusable="false"
    >
      <path class="track-line" d="M0 5H100" />
      {marks.map((x) => (
        <path key={x} class="track-line" d={`M${x} 1V9`} />
      ))}
      {ring !== undefined && dot !== undefined && <path class="track-way" d={`M${ring} 5H${dot}`} />}
      {ring !== undefined && <path class="track-ring" d={`M${ring} 5h0`} />}
      {ring !== undefined && <path class="track-hole" d={`M${ring} 5h0`} />}
      {dot !== undefined && <path class="track-dot" d={`M${dot} 5h0`} />}
    </svg>
  );
}
