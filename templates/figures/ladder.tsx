// Figure. The ladder of reflectance: the colours of a flag by the reflectance of their cloth.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { LadderView } from "../../src/views/study/reflectanceladder.ts";

/** The drawing alone: it stands in a figure with a caption. */
export function Ladder({ ladder, id }: { ladder: LadderView; id: string }): JSX.Element {
  return (
    <svg
      class="ladder"
      viewBox={`0 0 ${ladder.width} ${ladder.height}`}
      width={ladder.width}
      height={ladder.height}
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
    >
      <title id={`${id}-title`}>{ladder.title}</title>
      <desc id={`${id}-desc`}>{ladder.description}</desc>
      <text class="ladder-title" x="0" y="14">
        {ladder.title}
      </text>
      {ladder.ticks.map(({ x, y, text }) => (
        <text key={text} class="ladder-tick" x={x} y={y} dy="0.35em" text-anchor="end">
          {text}
        </text>
      ))}
      <path class="ladder-axis" d={ladder.axis} />
      <path class="ladder-cloth" d={ladder.cloth} />
      {ladder.rungs.map(({ hex, tick, label }) => (
        <g key={hex}>
          <rect class="chip" {...tick} fill={hex} />
          {label && (
            <>
              <path class="leader" d={label.leader} fill="none" />
              <rect class="chip" {...label.chip} fill={hex} />
              <text x={label.x} y={label.y} dy="0.35em">
                {label.text}
              </text>
            </>
          )}
        </g>
      ))}
      {ladder.move && <path class="ladder-move" d={ladder.move} fill="none" />}
    </svg>
  );
}
