// Figure. What is left from afar: the clarity of the focus at each distance step, before and after, and to where it lasts.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { LastingStep, LastingView } from "../../src/words/fromafar.ts";
import { useSay } from "../parts/words.tsx";

/** The figure with its caption. `id` is its anchor. */
export function LastingFigure({
  lasting,
  id,
  method,
}: {
  lasting: LastingView;
  id: string;
  method: string;
}): JSX.Element {
  const say = useSay();
  const { floor, width, lasts } = lasting;
  return (
    <figure class="lasting" id={id}>
      <svg
        viewBox={`0 0 ${width} ${lasting.height}`}
        width={width}
        height={lasting.height}
        role="img"
        aria-labelledby={`${id}-title ${id}-desc`}
      >
        <title id={`${id}-title`}>{lasting.title}</title>
        <desc id={`${id}-desc`}>{lasting.description}</desc>
        {lasting.levels.map((level) => (
          <g key={level.text}>
            <line class="level" x1={lasting.left} x2={width} y1={level.y} y2={level.y} />
            <text class="tick-text" x={lasting.left - 6} y={level.y} dy="5" text-anchor="end">
              {level.text}
            </text>
          </g>
        ))}
        {lasting.steps.map((step) => (
          <Step key={step.text} step={step} top={lasting.top} floor={floor} />
        ))}
        {lasts !== undefined && (
          <>
            <path class="lasts" d={`M${lasting.left} ${floor}H${lasts}`} />
            <path class="post" d={`M${lasts} ${floor - 6}V${floor + 6}`} />
          </>
        )}
      </svg>
      <figcaption>
        <strong>
          <a href={`#${id}`}>{lasting.title}</a>.
        </strong>{" "}
        {say("lasting.caption")} {lasting.caption} <a href={method}>{say("lasting.model")}</a>
      </figcaption>
    </figure>
  );
}

function Step({ step, top, floor }: { step: LastingStep; top: number; floor: number }): JSX.Element {
  const { x, before, after } = step;
  return (
    <g>
      <line class="tick" x1={x} x2={x} y1={floor} y2={floor + 5} />
      {step.isMeasured && <line class="measured-at" x1={x} x2={x} y1={top} y2={floor} />}
      <text class="tick-text" x={x} y={floor + 21} text-anchor="middle">
        {step.text}
      </text>
      {before !== undefined && after !== undefined && (
        <path class="move-line" d={`M${x} ${before}V${after}`} />
      )}
      {before !== undefined && <circle class="ring" cx={x} cy={before} r="4.5" />}
      {after !== undefined && <circle class="dot" cx={x} cy={after} r="3.5" />}
    </g>
  );
}
