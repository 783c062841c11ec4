// Figure. How far the focus reads: distance steps on a line, with the reach of the original over that of the redesign.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { Reach, ReadsView } from "../../src/site/present/reads.ts";

/** The figure with its caption. `id` is its anchor. */
export function ReadsFigure({
  reads,
  id,
  method,
}: {
  reads: ReadsView;
  id: string;
  method: string;
}): JSX.Element {
  return (
    <figure class="reads" id={id}>
      <svg
        viewBox={`0 0 ${reads.width} ${reads.height}`}
        width={reads.width}
        height={reads.height}
        role="img"
        aria-labelledby={`${id}-title ${id}-desc`}
      >
        <title id={`${id}-title`}>{reads.title}</title>
        <desc id={`${id}-desc`}>{reads.description}</desc>
        {reads.measuredX !== undefined && (
          <line class="measured-at" x1={reads.measuredX} x2={reads.measuredX} y1="6" y2={reads.tickY - 15} />
        )}
        {reads.ticks.map((tick) => (
          <g key={tick.text}>
            <line class="tick" x1={tick.x} x2={tick.x} y1={reads.tickY - 19} y2={reads.tickY - 13} />
            <text class="tick-text" x={tick.x} y={reads.tickY} text-anchor="middle">
              {tick.text}
            </text>
          </g>
        ))}
        <line
          class="tick"
          x1={reads.axis.x1}
          x2={reads.axis.x2}
          y1={reads.tickY - 16}
          y2={reads.tickY - 16}
        />
        {reads.reaches.map((reach) => (
          <ReachLine key={reach.label} reach={reach} width={reads.width} />
        ))}
      </svg>
      <figcaption>
        <strong>
          <a href={`#${id}`}>{reads.title}</a>.
        </strong>{" "}
        Distance in flag heights, doubling from step to step; the broken line is where the flag is measured
        from. <a href={method}>A model of sight</a>.
      </figcaption>
    </figure>
  );
}

function ReachLine({ reach, width }: { reach: Reach; width: number }): JSX.Element {
  const { y, from, to } = reach;
  return (
    <g>
      <text class="halo" x={from} y={y - 10}>
        {reach.label}: {reach.text}
      </text>
      <path class="post" d={`M${from} ${y - 5}V${y + 5}`} />
      {to === undefined ? null : reach.isOpen ? (
        <path
          class="reach"
          fill="none"
          d={`M${from} ${y}H${width - 2}M${width - 9} ${y - 5}L${width - 2} ${y}L${width - 9} ${y + 5}`}
        />
      ) : (
        <>
          <path class="reach" fill="none" d={`M${from} ${y}H${to}`} />
          <circle class="reach-end" cx={to} cy={y} r="4" />
        </>
      )}
    </g>
  );
}
