// Figure. The contrast ruler: a row for each edge, from ring to dot on one axis, and the ladder of reflectance beside it.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { RulerRow, RulerView } from "../../src/views/study/contrastruler.ts";
import type { LadderView } from "../../src/views/study/reflectanceladder.ts";
import { Move } from "../parts/move.tsx";
import { MeetingChip } from "../parts/swatch.tsx";
import { useSay } from "../parts/words.tsx";
import { Ladder } from "./ladder.tsx";

/** The figure with its caption. `id` is its anchor. */
export function RulerFigure({
  ruler,
  ladder,
  id,
}: {
  ruler: RulerView;
  ladder: LadderView | undefined;
  id: string;
}): JSX.Element {
  const say = useSay();
  const { notes } = ruler;
  return (
    <figure class="ruler" id={id}>
      <div class="ruler-body">
        <div class="ruler-list">
          <RulerTable ruler={ruler} rows={ruler.rows} />
          {ruler.rest && (
            <details>
              <summary>
                <bdi>{ruler.rest.label}</bdi>
              </summary>
              <RulerTable ruler={ruler} rows={ruler.rest.rows} />
            </details>
          )}
        </div>
        {ladder && <Ladder ladder={ladder} id={`${id}-ladder`} />}
      </div>
      <figcaption>
        <strong>
          <a href={`#${id}`}>{ruler.title}</a>.
        </strong>{" "}
        {say("ruler.caption")}
        {notes.falls && ` ${say("ruler.fallsNote")}`}
        {notes.crosses && ` ${say("ruler.crossesNote")}`}
        {notes.merged && ` ${say("ruler.mergedNote")}`}
        {notes.outline && ` ${say("ruler.outlineNote")}`}
        {notes.near && ` ${say("ruler.nearNote")}`}
        {notes.hue && ` ${say("ruler.hueNote")}`}
        {ladder && ` ${say("ruler.ladderNote")}`}
      </figcaption>
    </figure>
  );
}

/** The line of one edge, whose numbers stand beside it. */
export function RulerOfOne({ ruler }: { ruler: RulerView }): JSX.Element {
  return (
    <div class="ruler-one">
      <Axis ruler={ruler} />
      {ruler.rows.map((row) => (
        <Track key={row.edge.key} row={row} ruler={ruler} />
      ))}
    </div>
  );
}

/** The rows under their axis; `heading` says what their names are of. */
export function RulerTable({
  ruler,
  rows,
  heading,
}: {
  ruler: RulerView;
  rows: readonly RulerRow[];
  heading?: string;
}): JSX.Element {
  const say = useSay();
  return (
    <table class="ruler-rows">
      <thead>
        <tr>
          <th scope="col">{heading ?? say("ruler.edge")}</th>
          <th scope="col" class="ruler-contrast">
            <span class="unseen">{say("ruler.contrast")}</span>
            <Axis ruler={ruler} />
          </th>
          <th scope="col">{say("ruler.outcome")}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <Row key={row.edge.key} row={row} ruler={ruler} />
        ))}
      </tbody>
    </table>
  );
}

/** The axis and its steps alone: what grades are read off. */
export function RulerScale({ ruler }: { ruler: RulerView }): JSX.Element {
  return (
    <div class="ruler-one">
      <Axis ruler={ruler} />
      <BlankTrack ruler={ruler} />
    </div>
  );
}

/** Rows to be filled in by hand: the axis and its steps, and no mark. */
export function BlankRuler({ ruler }: { ruler: RulerView }): JSX.Element {
  const say = useSay();
  return (
    <table class="ruler-rows">
      <thead>
        <tr>
          <th scope="col">{say("ruler.edge")}</th>
          <th scope="col" class="ruler-contrast">
            <span class="unseen">{say("ruler.guess")}</span>
            <Axis ruler={ruler} />
          </th>
        </tr>
      </thead>
      <tbody>
        {ruler.rows.map(({ edge }) => (
          <tr key={edge.key}>
            <th scope="row">{edge.called ?? edge.names}</th>
            <td class="ruler-contrast">
              <BlankTrack ruler={ruler} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function BlankTrack({ ruler }: { ruler: RulerView }): JSX.Element {
  return (
    <svg class="ruler-track" aria-hidden="true" focusable="false">
      <Steps ruler={ruler} />
    </svg>
  );
}

function Axis({ ruler: { bands, ticks } }: { ruler: RulerView }): JSX.Element {
  return (
    <svg class="ruler-axis" aria-hidden="true" focusable="false">
      {bands.map(({ name, middle }) => (
        <text key={name} class="ruler-band" x={`${middle}%`} y="1em" text-anchor="middle">
          {name}
        </text>
      ))}
      {ticks.map(({ x, text }) => (
        <text key={text} x={`${x}%`} y="2.35em" text-anchor="middle">
          {text}
        </text>
      ))}
    </svg>
  );
}

function Row({ row, ruler }: { row: RulerRow; ruler: RulerView }): JSX.Element {
  const say = useSay();
  const { edge, group } = row;
  const isLevel = edge.before === undefined || edge.before.contrast === edge.after.contrast;
  return (
    <>
      {group !== undefined && (
        <tr class="ruler-group">
          <td colSpan={3}>
            <strong>{group}</strong>
          </td>
        </tr>
      )}
      <tr>
        <th scope="row">
          <EdgeCell row={row} />
        </th>
        <td class="ruler-contrast">
          <Track row={row} ruler={ruler} />
          <span class="number">
            {isLevel ? (
              edge.after.contrast
            ) : (
              <Move before={edge.before?.contrast} after={edge.after.contrast} />
            )}
          </span>
        </td>
        <td class="ruler-outcome">
          {edge.outcome}{" "}
          <span class="quiet">
            <bdi>{[edge.grades, ...edge.marks].join(say("list.comma"))}</bdi>
          </span>
        </td>
      </tr>
    </>
  );
}

/** The place on the flag, before and after, beside what the edge is called and how long it is. */
function EdgeCell({ row }: { row: RulerRow }): JSX.Element {
  const { edge, details } = row;
  const chips = [edge.before, edge.after].flatMap((reading, index) =>
    reading ? [<MeetingChip key={index} hexes={reading.hexes} detail={details?.[index]} />] : [],
  );
  const name = <Name row={row} />;
  return (
    <div class="ruler-edge">
      <span class="ruler-chips">{chips}</span>
      <span class="ruler-name">
        {edge.address ? <a href={edge.address}>{name}</a> : name}{" "}
        <span class="ruler-extent">
          <bdi>{edge.extent}</bdi>
        </span>
      </span>
    </div>
  );
}

function Name({ row: { edge } }: { row: RulerRow }): JSX.Element {
  if (edge.called !== undefined) return <>{edge.called}</>;
  const [one, other] = edge.sides.map(([was, is]) =>
    is === undefined ? was : <Move key={was} before={was} after={is} />,
  );
  return (
    <>
      {one} / {other}
    </>
  );
}

function Steps({ ruler }: { ruler: RulerView }): JSX.Element {
  return (
    <>
      {ruler.ticks.map(({ x, isClear }) => (
        <line
          key={x}
          class={isClear ? "ruler-step clear" : "ruler-step"}
          x1={`${x}%`}
          x2={`${x}%`}
          y1="0"
          y2="100%"
        />
      ))}
    </>
  );
}

/** Drawn in percent of its width across and in pixels up and down, so that no mark is stretched. */
function Track({ row, ruler }: { row: RulerRow; ruler: RulerView }): JSX.Element {
  const { ring, dot, thickness, radius, hollow } = row;
  const way = { x1: `${ring}%`, x2: `${dot ?? 0}%`, y1: "50%", y2: "50%" };
  return (
    <svg class="ruler-track" aria-hidden="true" focusable="false">
      <Steps ruler={ruler} />
      {ring !== undefined && <line class="ruler-move" {...way} stroke-width={thickness} />}
      {hollow !== undefined && <line class="ruler-hollow" {...way} stroke-width={hollow} />}
      {ring !== undefined && (
        <circle
          class={radius.ring > radius.dot ? "ring held" : "ring"}
          cx={`${ring}%`}
          cy="50%"
          r={radius.ring}
        />
      )}
      {dot === undefined ? (
        <svg x="0%" y="50%" overflow="visible" aria-hidden="true">
          <path class="ruler-cross" d="M-6-6L6 6M-6 6L6-6" />
        </svg>
      ) : (
        <circle class="dot" cx={`${dot}%`} cy="50%" r={radius.dot} />
      )}
    </svg>
  );
}
