// Figures. What each step of the method makes of one flag of the gallery.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { ComponentChildren, JSX } from "preact";
import type { WorkedFlag } from "../../src/views/method/workedflag.ts";
import type { Plate } from "../../src/views/plate.ts";
import { Move } from "../parts/move.tsx";
import { Mat } from "../parts/plate.tsx";
import { DetailChip, SwatchChip } from "../parts/swatch.tsx";
import { Message, useSay } from "../parts/words.tsx";
import { MapPanel } from "./map.tsx";
import { Track } from "./track.tsx";

type Worked = { readonly worked: WorkedFlag };

/** Percent of the width under which the number of a bar would run into the next. */
const leastNumbered = 3;

/** Steps of contrast. */
const steps = [30, 45, 60];

/** The label map, and the lines traced on it. */
export function TracedFigure({ worked: { labels, map } }: Worked): JSX.Element {
  const say = useSay();
  return (
    <figure class="worked">
      <div class="pair">
        <Mat plate={labels} />
        <div class="mat">
          <MapPanel map={map} panel={map.panels[0]} id="traced" shapes />
        </div>
      </div>
      <figcaption>{say("method.traced")}</figcaption>
    </figure>
  );
}

/** What has to be seen of it. */
export function MarkedFigure({ worked: { map } }: Worked): JSX.Element | null {
  const say = useSay();
  const [panel] = map.panels;
  const lines = panel.lines.filter(({ isFocus }) => isFocus);
  if (map.focus === undefined || lines.length === 0) return null;
  return (
    <figure class="worked">
      <div class="mat">
        <MapPanel map={map} panel={{ ...panel, lines }} id="marked" shapes={false} />
      </div>
      <figcaption>{say("method.marked", { focus: map.focus })}</figcaption>
    </figure>
  );
}

/** From three distances. */
export function AfarFigure({ worked: { afar } }: Worked): JSX.Element | null {
  const say = useSay();
  if (afar.length === 0) return null;
  return (
    <figure class="worked">
      <Row plates={afar}>
        {({ distance, clarity }) => (
          <Message
            id="method.afarFigure"
            values={{ distance, clarity }}
            tags={{ number: (text) => <span class="number">{text}</span> }}
          />
        )}
      </Row>
      <figcaption>{say("method.afarNote")}</figcaption>
    </figure>
  );
}

/** Its colours as cloth. */
export function ClothFigure({
  worked: { cloth, name },
  limits,
}: Worked & { limits: readonly number[] }): JSX.Element {
  const say = useSay();
  return (
    <table class="tracks">
      <caption>{say("method.cloth", { name })}</caption>
      <tbody>
        {cloth.map((row) => (
          <tr key={row.hex}>
            <th scope="row">
              <SwatchChip hex={row.hex} /> {row.name}
            </th>
            <td class="number end">{row.luminance}</td>
            <td class="number end">{row.reflectance}</td>
            <td class="track-cell">
              <Track dot={row.x} marks={limits} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Clarity as the filled part of an area. */
export function SumFigure({ worked: { sum, name } }: Worked): JSX.Element {
  const say = useSay();
  return (
    <figure class="worked">
      <svg
        class="sum"
        viewBox="0 0 100 30"
        width="100"
        height="30"
        role="img"
        aria-labelledby="sum-title sum-desc"
      >
        <title id="sum-title">{say("method.sumTitle", { name, clarity: sum.clarity })}</title>
        <desc id="sum-desc">{sum.description}</desc>
        {sum.bars.map((bar) => (
          <g key={bar.place}>
            <rect class="sum-whole" x={bar.x} y="5" width={bar.width} height="25" />
            <rect
              class="sum-part"
              x={bar.x}
              y={30 - bar.height / 4}
              width={bar.width}
              height={bar.height / 4}
            />
            {bar.width > leastNumbered && (
              <text class="sum-number number" x={bar.x + bar.width / 2} y="3.6">
                {bar.place}
              </text>
            )}
          </g>
        ))}
      </svg>
      <ol class="sum-list">
        {sum.bars.map((bar) => (
          <li key={bar.place}>
            <Named name={bar.names} value={bar.counts} />
          </li>
        ))}
      </ol>
      <figcaption>{say("method.sumNote", sum)}</figcaption>
    </figure>
  );
}

/** What the change does to each edge. */
export function OutcomeFigure({ worked: { edges, address, name } }: Worked): JSX.Element {
  return (
    <table class="tracks">
      <caption>
        <Message
          id="method.changeTo"
          values={{ name }}
          tags={{ a: (text) => <a href={address}>{text}</a> }}
        />
      </caption>
      <tbody>
        {edges.map((edge) => (
          <tr key={edge.names}>
            <th scope="row">
              {edge.details && (
                <>
                  <DetailChip detail={edge.details[0]} /> <DetailChip detail={edge.details[1]} />
                </>
              )}
              <span class="renamed">{edge.names}</span>
            </th>
            <td>
              {edge.outcome}
              <span class="renamed number">
                <Move before={edge.before} after={edge.after} />
              </span>
            </td>
            <td class="track-cell">
              <Track ring={edge.x[0]} dot={edge.x[1]} marks={steps} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The original as four kinds of vision have it. */
export function VisionFigure({ worked: { seen } }: Worked): JSX.Element {
  const say = useSay();
  return (
    <figure class="worked">
      <Row plates={seen}>{({ label, value }) => <Named name={label} value={value} />}</Row>
      <figcaption>{say("method.visionNote")}</figcaption>
    </figure>
  );
}

/** A redesign and what it looks like. */
export function LikenessFigure({ worked: { likeness } }: Worked): JSX.Element | null {
  if (likeness === undefined) return null;
  const near = likeness.nearest.flatMap(({ shown, figures }) => (shown ? [{ ...shown.plate, figures }] : []));
  if (near.length === 0) return null;
  return (
    <figure class="worked">
      <Row plates={[{ ...likeness.own, figures: "" }, ...near]}>
        {({ label, figures }) => (
          <>
            {label}
            {figures !== "" && <span class="renamed">{figures}</span>}
          </>
        )}
      </Row>
      <figcaption>{likeness.sentence}</figcaption>
    </figure>
  );
}

/** What the page of its study says. */
export function SaidFigure({ worked: { said, address, name } }: Worked): JSX.Element {
  return (
    <figure class="worked">
      <p class="worked-said">{said}</p>
      <figcaption>
        <Message
          id="method.saidNote"
          values={{ name }}
          tags={{ a: (text) => <a href={address}>{text}</a> }}
        />
      </figcaption>
    </figure>
  );
}

/** The best change of each of its colours. */
export function OptionFigure({ worked: { options } }: Worked): JSX.Element | null {
  const say = useSay();
  if (options.length === 0) return null;
  return (
    <figure class="worked">
      <ul class={`worked-row of-${options.length}`}>
        {options.map((option) => (
          <li key={option.box}>
            <svg class="worked-option" viewBox={option.box} aria-hidden="true" focusable="false">
              <image href={option.src} width={option.width} height={option.height} />
            </svg>
            <p>
              <Message
                id="method.figureOfChange"
                values={{ value: option.clarity }}
                tags={{
                  change: () => (
                    <a href={option.address}>
                      <Move before={option.names[0]} after={option.names[1]} />
                    </a>
                  ),
                  number: (text) => <span class="number">{text}</span>,
                }}
              />
            </p>
          </li>
        ))}
      </ul>
      <figcaption>{say("method.optionNote")}</figcaption>
    </figure>
  );
}

/** Where it stands in the survey. */
export function PlacedFigure({ worked: { placed, name } }: Worked): JSX.Element | null {
  const say = useSay();
  if (placed.length === 0) return null;
  return (
    <figure class="worked">
      <Row plates={placed}>{({ label, clarity }) => <Named name={label} value={clarity} />}</Row>
      <figcaption>{say("method.placedNote", { name })}</figcaption>
    </figure>
  );
}

/** A figure behind what it is of. */
function Named({ name, value }: { name: string; value: string }): JSX.Element {
  return (
    <Message
      id="method.figure"
      values={{ name, value }}
      tags={{ number: (text) => <span class="number">{text}</span> }}
    />
  );
}

function Row<P extends Plate>({
  plates,
  children,
}: {
  plates: readonly P[];
  children: (plate: P) => ComponentChildren;
}): JSX.Element {
  return (
    <ul class={`worked-row of-${plates.length}`}>
      {plates.map((plate) => (
        <li key={plate.src}>
          <Mat plate={plate} />
          <p>{children(plate)}</p>
        </li>
      ))}
    </ul>
  );
}
