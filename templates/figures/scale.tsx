// Figure. The reflectance scale: paints at their reflectance, edges join them, original and redesign face each other.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { ScalePanel, ScaleView } from "../../src/site/present/scale.ts";

/** The figure with its caption. `id` is its anchor. */
export function ScaleFigure({ scale, id }: { scale: ScaleView; id: string }): JSX.Element {
  return (
    <figure class="scale" id={id}>
      <div class="scale-panels">
        {scale.panels.map((panel, index) => (
          <Panel key={panel.heading} panel={panel} scale={scale} id={`${id}-${index}`} />
        ))}
      </div>
      <figcaption>
        <strong>
          <a href={`#${id}`}>{scale.title}</a>.
        </strong>{" "}
        Each paint stands at the share of light its cloth reflects, in percent. Lines join paints that meet,
        with their contrast: thick for a long edge, solid where it is clear or strong, broken where it is soft
        or weak.
      </figcaption>
    </figure>
  );
}

function Panel({ panel, scale, id }: { panel: ScalePanel; scale: ScaleView; id: string }): JSX.Element {
  return (
    <div class="scale-panel">
      <p class="scale-heading" aria-hidden="true">
        {panel.heading}
      </p>
      <svg
        viewBox={`0 0 ${scale.width} ${scale.height}`}
        width={scale.width}
        height={scale.height}
        role="img"
        aria-labelledby={`${id}-title ${id}-desc`}
      >
        <title id={`${id}-title`}>{`${scale.title}: ${panel.heading}`}</title>
        <desc id={`${id}-desc`}>{panel.description}</desc>
        {panel.ticks.map((tick) => (
          <g key={tick.text}>
            <line class="tick" x1={panel.tick.x1} x2={panel.tick.x2} y1={tick.y} y2={tick.y} />
            <text class="tick-text" x={panel.tick.textX} y={tick.y} dy="4" text-anchor={panel.tickAnchor}>
              {tick.text}
            </text>
          </g>
        ))}
        {panel.arcs.map((arc) => (
          <path
            key={arc.path}
            class="arc"
            d={arc.path}
            fill="none"
            stroke-width={arc.width}
            stroke-dasharray={arc.dash}
          />
        ))}
        {panel.chips.map((chip) => (
          <g key={chip.label}>
            {chip.leader && <path class="leader" d={chip.leader} fill="none" />}
            <rect
              class="chip"
              x={chip.x}
              y={chip.y}
              width={chip.width}
              height={chip.height}
              fill={chip.hex}
            />
            <text class="halo" x={chip.labelX} y={chip.labelY} text-anchor={panel.labelAnchor}>
              {chip.label}
            </text>
          </g>
        ))}
        {panel.arcs.map((arc) => (
          <text
            key={arc.path}
            class="halo arc-text"
            x={arc.textX}
            y={arc.textY}
            text-anchor={panel.tickAnchor}
          >
            {arc.text}
          </text>
        ))}
      </svg>
    </div>
  );
}
