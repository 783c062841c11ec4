// Figure. One edge, before and after: two colours meeting, with the contrast under each.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { EdgeRow, Reading } from "../../src/site/present/edge.ts";

/** The figure that `::figure{edge="…"}` puts into prose. */
export function EdgeFigure({ edge }: { edge: EdgeRow }): JSX.Element {
  return (
    <figure class="edge-figure">
      <div class="edge-figure-pair">
        {edge.before && <Meeting label="Original" reading={edge.before} />}
        <Meeting label="Redesign" reading={edge.after} />
      </div>
      <figcaption>
        <strong>{edge.address ? <a href={edge.address}>Edge</a> : "Edge"}.</strong>{" "}
        {edge.renamed ? `${edge.names}, which becomes ${edge.renamed}` : edge.names}: {edge.outcome}, over{" "}
        {edge.length} flag heights.
      </figcaption>
    </figure>
  );
}

function Meeting({ label, reading }: { label: string; reading: Reading }): JSX.Element {
  return (
    <div class="meeting">
      <svg
        viewBox="0 0 240 120"
        width="240"
        height="120"
        role="img"
        aria-label={`${label}: ${reading.names}`}
      >
        <rect width="120.5" height="120" fill={reading.hexes[0]} />
        <rect x="120" width="120" height="120" fill={reading.hexes[1]} />
      </svg>
      <p>
        {label}: <span class="number">{reading.contrast}</span> {reading.grade}
      </p>
    </div>
  );
}
