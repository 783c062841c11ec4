// Part. The sections of an edge's page.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { DetailView } from "../../src/views/edge/edgecrop.ts";
import type { EdgePage } from "../../src/views/edge/edgepage.ts";
import type { SeenReading } from "../../src/views/edge/edgevision.ts";
import type { LocatorView } from "../../src/views/study/edgemap.ts";
import { RulerOfOne, RulerTable } from "../figures/ruler.tsx";
import { Argue } from "./refer.tsx";
import { Summary } from "./summary.tsx";
import { DetailChip, MeetingChip } from "./swatch.tsx";

/** Where on the flag the two colours meet, that place before and after, what became of the edge, and all its numbers. */
export function Meeting({ edge }: { edge: EdgePage }): JSX.Element {
  return (
    <section class="comparison" aria-labelledby="outcome">
      {edge.place && (
        <div class="places" id="crops">
          <figure class="plate">
            <Locator locator={edge.place.locator} names={edge.row.names} />
            <figcaption>Where it is on the flag; the frame is shown large</figcaption>
          </figure>
          {edge.place.crops.map((crop, index) => (
            <figure key={crop.label} class="plate">
              <div class="detail">
                <img
                  class="crop"
                  src={crop.src}
                  alt={crop.alt}
                  width={crop.width}
                  height={crop.height}
                  decoding="async"
                />
              </div>
              <figcaption>
                {crop.label}: contrast <Contrast edge={edge} side={index} />
              </figcaption>
            </figure>
          ))}
        </div>
      )}
      <div class="verdict">
        <h2 id="outcome">{edge.outcome.word}</h2>
        <p class="verdict-sentence">{edge.outcome.sentence}</p>
        <RulerOfOne ruler={edge.ruler} />
        <p class="unofficial">{edge.unofficial}</p>
        {edge.answer && <Argue answer={edge.answer} />}
        <p class="measured">
          {edge.measuredHow} How <a href={edge.links.contrast}>contrast</a> is made, and{" "}
          <a href={edge.links.beside}>what stands beside it</a>.
          {edge.hasNearLine && (
            <>
              {" "}
              A grade <a href={edge.links.nearLine}>near the line</a> would be another on other cloth.
            </>
          )}
        </p>
      </div>
      <Summary rows={edge.numbers} caption="The edge in numbers" id="numbers" />
    </section>
  );
}

function Locator({ locator, names }: { locator: LocatorView; names: string }): JSX.Element {
  const { width, height, ground, path, frame } = locator;
  return (
    <div class="mat">
      <svg
        class={`flag flag-${locator.fit}`}
        viewBox={`0 0 ${width} ${height}`}
        width={width}
        height={height}
        role="img"
        aria-labelledby="locator-title locator-desc"
      >
        <title id="locator-title">Where the edge is</title>
        <desc id="locator-desc">{`The original flag in pale, with the lines traced where ${names.replace(" / ", " and ")} meet.`}</desc>
        <rect class="locator-paper" width={width} height={height} />
        <image
          class="locator-ground"
          href={ground}
          width={width}
          height={height}
          preserveAspectRatio="none"
        />
        <path class="locator-halo" d={path} fill="none" />
        <path class="locator-line" d={path} fill="none" />
        <rect class="locator-frame" {...frame} fill="none" />
      </svg>
    </div>
  );
}

function Contrast({ edge, side }: { edge: EdgePage; side: number }): JSX.Element {
  const reading = side === 0 ? edge.row.before : edge.row.after;
  if (reading === undefined) return <>no edge</>;
  return (
    <>
      <span class="number">{reading.contrast}</span>, {reading.grade}
      {reading.near && `, ${reading.near}`}
    </>
  );
}

/** The two colours under every kind of vision. */
export function Seen({ edge }: { edge: EdgePage }): JSX.Element {
  return (
    <section class="evidence" aria-labelledby="seen">
      <h2 id="seen">To colour-blind readers, and in grey</h2>
      <div class="main">
        <table class="edges">
          <caption>
            Contrast, and difference in ΔE00, under each kind of vision. In grey the contrast stays what it
            is.
          </caption>
          <thead>
            <tr>
              <th scope="col">Vision</th>
              <th scope="col">Original</th>
              <th scope="col">Redesign</th>
            </tr>
          </thead>
          <tbody>
            {edge.visions.map((row) => (
              <tr key={row.vision}>
                <th scope="row">{row.heading}</th>
                <td>
                  <SeenCell reading={row.before} detail={row.details?.[0]} />
                </td>
                <td>
                  <SeenCell reading={row.after} detail={row.details?.[1]} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <div class="margin source">
        <p>
          Approximations of the strongest form of each deficiency, and no test of anyone’s sight.{" "}
          <a href={edge.links.vision}>How they are made</a>
        </p>
      </div>
    </section>
  );
}

function SeenCell({
  reading,
  detail,
}: {
  reading: SeenReading | undefined;
  detail: DetailView | undefined;
}): JSX.Element {
  if (reading === undefined) return <span class="quiet">no edge</span>;
  return (
    <span class="reading">
      <MeetingChip hexes={reading.hexes} detail={detail} />
      <span class="reading-figures">
        <span class="number">{reading.contrast}</span> <span class="grade">{reading.grade}</span>{" "}
        <span class="grade">
          ΔE00 <span class="number">{reading.difference}</span>
        </span>
      </span>
    </span>
  );
}

/** The same two names in other studies, where there are any. */
export function Elsewhere({ edge: { elsewhere } }: { edge: EdgePage }): JSX.Element | null {
  if (elsewhere === undefined) return null;
  return (
    <section class="evidence" aria-labelledby="elsewhere">
      <h2 id="elsewhere">The same two colours in other studies</h2>
      <div class="main ruler">
        <div class="ruler-list">
          <RulerTable ruler={elsewhere} rows={elsewhere.rows} heading="Study" />
        </div>
        <p class="measured">Colours of one name need not be one colour: compare the cloth, not the word.</p>
      </div>
    </section>
  );
}

/** All edges of the study, this one marked, where there are others. */
export function Siblings({ edge }: { edge: EdgePage }): JSX.Element | null {
  if (edge.siblings.length === 1) return null;
  return (
    <nav class="evidence" aria-labelledby="siblings">
      <h2 id="siblings">All edges of this study</h2>
      <ul class="siblings">
        {edge.siblings.map((sibling) => (
          <li key={sibling.address}>
            {sibling.details?.map((detail) => (
              <DetailChip key={detail.src} detail={detail} />
            ))}
            <p>
              <a href={sibling.address} aria-current={sibling.isHere ? "page" : undefined}>
                {sibling.names}
              </a>{" "}
              <span class="quiet">{sibling.outcome}</span>
            </p>
          </li>
        ))}
      </ul>
      <p class="measured">
        <a href={edge.study.table}>Back to the ruler of the study</a>
      </p>
    </nav>
  );
}
