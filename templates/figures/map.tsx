// Figure. The edge map: the drawing in pale grey, its traced edges over it, drawn by grade.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { EdgeMapPanel, EdgeMapView } from "../../src/views/study/edgemap.ts";
import { useSay } from "../parts/words.tsx";

const grades = ["strong", "clear", "soft", "weak", "merged"] as const;

/**
 * The figure with its key and caption. `id` is its anchor; `isAgain` where the page has shown the map before, whose
 * lines are then drawn again; `more` ends the caption.
 */
export function EdgeMapFigure({
  map,
  id,
  isAgain = false,
  more,
}: {
  map: EdgeMapView;
  id: string;
  isAgain?: boolean;
  more?: JSX.Element;
}): JSX.Element {
  const say = useSay();
  const drawn = new Set(map.panels.flatMap(({ lines }) => lines.map(({ grade }) => grade)));
  return (
    <figure class="edge-map" id={id}>
      <div class="pair">
        {map.panels.map((panel, index) => (
          <div key={panel.heading} class="map-panel">
            <div class="mat">
              <MapPanel map={map} panel={panel} id={`${id}-${index}`} shapes={index === 0 && !isAgain} />
            </div>
            <p class="map-heading" aria-hidden="true">
              {panel.heading}
            </p>
          </div>
        ))}
      </div>
      <figcaption>
        <strong>
          <a href={`#${id}`}>{map.title}</a>.
        </strong>{" "}
        {say("map.caption")}
        {map.focus && ` ${say("map.bandNote")}`}
        <ul class="map-key">
          {grades
            .filter((grade) => drawn.has(grade))
            .map((grade) => (
              <li key={grade}>
                <svg viewBox="0 0 64 12" width="64" height="12" aria-hidden="true" focusable="false">
                  <path class={`map-line key-line ${grade}`} d="M2 6H62" fill="none" />
                </svg>{" "}
                {map.gradeNames[grade]}
              </li>
            ))}
          {map.focus && (
            <li>
              <svg viewBox="0 0 64 12" width="64" height="12" aria-hidden="true" focusable="false">
                <path class="map-focus key-focus" d="M2 6H62" fill="none" />
              </svg>{" "}
              {map.focus}
            </li>
          )}
        </ul>
        {more}
      </figcaption>
    </figure>
  );
}

/** One side of the map. `id` is that of its drawing on the page; `shapes` where the page has drawn the lines nowhere before. */
export function MapPanel({
  map,
  panel,
  id,
  shapes,
}: {
  map: EdgeMapView;
  panel: EdgeMapPanel;
  id: string;
  shapes: boolean;
}): JSX.Element {
  const say = useSay();
  return (
    <svg
      class={`flag flag-${map.fit}`}
      viewBox={`0 0 ${map.width} ${map.height}`}
      width={map.width}
      height={map.height}
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
    >
      <title id={`${id}-title`}>{say("list.colon", { name: map.title, said: panel.heading })}</title>
      <desc id={`${id}-desc`}>{panel.description}</desc>
      {shapes && (
        <defs>
          {map.shapes.map((shape) => (
            <path key={shape.id} id={shape.id} d={shape.path} />
          ))}
        </defs>
      )}
      <rect class="map-paper" width={map.width} height={map.height} />
      <image
        class="map-ground"
        href={panel.ground}
        width={map.width}
        height={map.height}
        preserveAspectRatio="none"
      />
      {map.band && (
        <>
          <clipPath id={`${id}-band`}>
            <path clip-rule="evenodd" d={`M0 0H${map.width}V${map.height}H0Z${map.band}`} />
          </clipPath>
          <path class="map-focus" clip-path={`url(#${id}-band)`} d={map.band} fill="none" />
        </>
      )}
      {panel.lines.map((line) => (
        <use key={line.id} class={`map-line ${line.grade}`} href={`#${line.id}`} fill="none" />
      ))}
    </svg>
  );
}
