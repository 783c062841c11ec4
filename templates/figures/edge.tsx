// Figure. One edge, before and after: the place where two colours meet, with the contrast under each.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { DetailView } from "../../src/views/edge/edgecrop.ts";
import type { EdgeRow, Reading } from "../../src/views/edge/edgerow.ts";
import type { Details } from "../../src/views/study/edgedetail.ts";
import { useSay } from "../parts/words.tsx";

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
  const say = useSay();
  const names = edge.called ?? edge.names;
  return (
    <figure class="edge-figure" id={id}>
      <div class="edge-figure-pair">
        {edge.before && (
          <Meeting label={say("plate.original")} reading={edge.before} detail={details?.[0]} id={`${id}-0`} />
        )}
        <Meeting label={say("plate.redesign")} reading={edge.after} detail={details?.[1]} id={`${id}-1`} />
      </div>
      <figcaption>
        <strong>
          <a href={`#${id}`}>{say("edgefigure.edge")}</a>.
        </strong>{" "}
        {edge.address ? <a href={edge.address}>{names}</a> : names}
        {edge.renamed && say("edgefigure.becomes", { is: edge.renamed })}
        {say("edgefigure.outcome", { outcome: edge.outcome, extent: edge.extent })}
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
  const say = useSay();
  const contrast = [
    reading.contrast,
    reading.grade,
    ...(reading.near === undefined ? [] : [reading.near]),
  ].join(say("list.comma"));
  return (
    <div class="meeting">
      <svg
        viewBox={detail?.viewBox ?? "0 0 240 160"}
        width="240"
        height="160"
        role="img"
        aria-labelledby={`${id}-title ${id}-desc`}
      >
        <title id={`${id}-title`}>{say("list.colon", { name: label, said: reading.names })}</title>
        <desc id={`${id}-desc`}>{say("edgefigure.sideBySide", { contrast })}</desc>
        {detail ? (
          <image href={detail.src} width={detail.width} height={detail.height} preserveAspectRatio="none" />
        ) : (
          <>
            <rect width="120.5" height="160" fill={reading.hexes[0]} />
            <rect x="120" width="120" height="160" fill={reading.hexes[1]} />
          </>
        )}
      </svg>
      <p>{say("list.colon", { name: label, said: contrast })}</p>
    </div>
  );
}
