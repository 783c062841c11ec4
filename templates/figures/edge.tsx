// Figure. One edge, before and after: the place where two colours meet, with the contrast under each.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { DetailView } from "../../src/views/edge/edgecrop.ts";
import type { EdgeRow, Reading } from "../../src/views/edge/edgerow.ts";
import type { Details } from "../../src/views/study/edgedetail.ts";

/** The figure that `::figure{edge="…"}` puts into prose. `id` is its anchor. */
export function EdgeFigure({
  edge,
  details,
  id,
}: {
  edge: EdgeRow;
  details: Details;
  id: string;
}): JSX.Element {
  const names = edge.called ?? edge.names;
  return (
    <figure class="edge-figure" id={id}>
      <div class="edge-figure-pair">
        {edge.before && (
          <Meeting label="Original" reading={edge.before} detail={details?.[0]} id={`${id}-0`} />
        )}
        <Meeting label="Redesign" reading={edge.after} detail={details?.[1]} id={`${id}-1`} />
      </div>
      <figcaption>
        <strong>
          <a href={`#${id}`}>Edge</a>.
        </strong>{" "}
        {edge.address ? <a href={edge.address}>{names}</a> : names}
        {edge.renamed && `, which becomes ${edge.renamed}`}: {edge.outcome}, over {edge.extent}.
      </figcaption>
    </figure>
  );
}

function Meeting({
  label,
  reading,
  detail,
  id,
}: {
  label: string;
  reading: Reading;
  detail: DetailView | undefined;
  id: string;
}): JSX.Element {
  return (
    <div class="meeting">
      <svg
        viewBox={detail?.viewBox ?? "0 0 240 160"}
        width="240"
        height="160"
        role="img"
        aria-labelledby={`${id}-title ${id}-desc`}
      >
        <title id={`${id}-title`}>{`${label}: ${reading.names}`}</title>
        <desc id={`${id}-desc`}>{`Side by side; contrast ${sayContrast(reading)}.`}</desc>
        {detail ? (
          <image href={detail.src} width={detail.width} height={detail.height} preserveAspectRatio="none" />
        ) : (
          <>
            <rect width="120.5" height="160" fill={reading.hexes[0]} />
            <rect x="120" width="120" height="160" fill={reading.hexes[1]} />
          </>
        )}
      </svg>
      <p>
        {label}: {sayContrast(reading)}
      </p>
    </div>
  );
}

function sayContrast({ contrast, grade, near }: Reading): string {
  return [contrast, grade, ...(near === undefined ? [] : [near])].join(", ");
}
