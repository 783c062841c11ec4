// Figure. One edge, before and after: two colours meeting, with the contrast under each.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { EdgeRow, Reading } from "../../src/site/present/edge.ts";

/** The figure that `::figure{edge="…"}` puts into prose. `id` is its anchor. */
export function EdgeFigure({ edge, id }: { edge: EdgeRow; id: string }): JSX.Element {
  const names = edge.address ? <a href={edge.address}>{edge.names}</a> : edge.names;
  return (
    <figure class="edge-figure" id={id}>
      <div class="edge-figure-pair">
        {edge.before && <Meeting label="Original" reading={edge.before} id={`${id}-0`} />}
        <Meeting label="Redesign" reading={edge.after} id={`${id}-1`} />
      </div>
      <figcaption>
        <strong>
          <a href={`#${id}`}>Edge</a>.
        </strong>{" "}
        {names}
        {edge.renamed && `, which becomes ${edge.renamed}`}: {edge.outcome}, over {edge.length} flag heights.
      </figcaption>
    </figure>
  );
}

function Meeting({ label, reading, id }: { label: string; reading: Reading; id: string }): JSX.Element {
  return (
    <div class="meeting">
      <svg
        viewBox="0 0 240 120"
        width="240"
        height="120"
        role="img"
        aria-labelledby={`${id}-title ${id}-desc`}
      >
        <title id={`${id}-title`}>{`${label}: ${reading.names}`}</title>
        <desc id={`${id}-desc`}>{`Side by side; contrast ${reading.contrast}, ${sayGrade(reading)}.`}</desc>
        <rect width="120.5" height="120" fill={reading.hexes[0]} />
        <rect x="120" width="120" height="120" fill={reading.hexes[1]} />
      </svg>
      <p>
        {label}: <span class="number">{reading.contrast}</span> {sayGrade(reading)}
      </p>
    </div>
  );
}

function sayGrade({ grade, near }: Reading): string {
  return near === undefined ? grade : `${grade}, ${near}`;
}
