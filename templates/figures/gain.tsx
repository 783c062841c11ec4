// Figure. The gain chart: one line a study, from its clarity before to after.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { CardSearch } from "../../src/views/front/card.ts";
import type { GainRow, GainView } from "../../src/views/front/gainchart.ts";
import { Move } from "../parts/move.tsx";
import { useSay } from "../parts/words.tsx";

/** The chart with its caption. `id` is its anchor; `eager` where it is to be printed as it is. */
export function GainFigure({
  gain,
  id,
  eager = false,
}: {
  gain: GainView;
  id: string;
  eager?: boolean;
}): JSX.Element {
  const say = useSay();
  return (
    <figure class="gain" id={id}>
      <figcaption>
        <strong>
          <a href={`#${id}`}>{gain.title}</a>.
        </strong>{" "}
        {gain.rows.length > 1 && `${say("gain.order")} `}
        {say("gain.key")}
      </figcaption>
      <div class="gain-scale">
        <p class="gain-ticks" aria-hidden="true">
          {gain.ticks.map((tick) => (
            <span key={tick.text}>{tick.text}</span>
          ))}
        </p>
        <svg {...frameOf(gain)} role="img" aria-labelledby={`${id}-title ${id}-desc`}>
          <title id={`${id}-title`}>{gain.title}</title>
          <desc id={`${id}-desc`}>{gain.description}</desc>
          <Track gain={gain} />
        </svg>
      </div>
      <ol class="gain-rows" data-list>
        {gain.rows.map((row) => (
          <Row key={row.slug} row={row} gain={gain} eager={eager} />
        ))}
      </ol>
      {gain.rest.length > 0 && (
        <details>
          <summary>
            <bdi>{gain.restLabel}</bdi>
          </summary>
          <ol class="gain-rows" data-list>
            {gain.rest.map((row) => (
              <Row key={row.slug} row={row} gain={gain} eager={eager} />
            ))}
          </ol>
        </details>
      )}
      {gain.others && (
        <p class="measured">
          <a href={gain.others.address}>{gain.others.text}</a>.
        </p>
      )}
    </figure>
  );
}

function Row({ row, gain, eager }: { row: GainRow; gain: GainView; eager: boolean }): JSX.Element {
  const [before, after] = row.x;
  return (
    <li {...(row.search && nameData(row.search))}>
      <span class="gain-flags">
        {row.plates.map(({ label, src, width, height }) => (
          <img
            key={label}
            src={src}
            alt=""
            width={width}
            height={height}
            loading={eager ? undefined : "lazy"}
            decoding="async"
          />
        ))}
      </span>
      <span class="gain-name">
        {row.address === undefined ? (
          <strong aria-current="page">{row.title}</strong>
        ) : (
          <a class="gain-link" href={row.address}>
            {row.title}
          </a>
        )}
        {row.flag && <span class="gain-beside">{row.flag}</span>}
        {row.flag && row.authors && <span class="gain-beside gain-author"> · </span>}
        {row.authors && (
          <span class={row.flag ? "gain-beside gain-author" : "gain-beside"}>{row.authors}</span>
        )}
      </span>
      <svg {...frameOf(gain)} aria-hidden="true" focusable="false">
        <Track gain={gain} />
        <path class={`gain-line ${row.way}`} d={`M${before} 5H${after}`} fill="none" />
        {row.way === "down" && <path class="gain-hollow" d={`M${before} 5H${after}`} fill="none" />}
        <path class="gain-ring" d={`M${before} 5h0`} fill="none" />
        <path class="gain-hole" d={`M${before} 5h0`} fill="none" />
        <path class={`gain-dot ${row.way}`} d={`M${after} 5h0`} fill="none" />
      </svg>
      <span class="gain-said">
        <span class="number">
          <Move before={row.before} after={row.after} />
        </span>
        <span class="gain-verdict">{row.verdict}</span>
      </span>
    </li>
  );
}

/** What a script finds and sorts the row by. */
function nameData({ slug, status, verdict, authors, tags, date, after, gain }: CardSearch) {
  return {
    "data-slug": slug,
    "data-status": status,
    "data-verdict": verdict,
    "data-author": authors,
    "data-tag": tags,
    "data-date": date,
    "data-after": after,
    "data-gain": gain,
  };
}

/** A drawing as wide as its place: what is drawn keeps its height and its strokes. */
function frameOf({ width }: GainView) {
  return {
    class: "gain-drawing",
    viewBox: `0 0 ${width} 10`,
    width,
    height: 10,
    preserveAspectRatio: "none",
  };
}

function Track({ gain }: { gain: GainView }): JSX.Element {
  return (
    <>
      <path class="gain-track" d={`M0 5H${gain.width}`} />
      {gain.ticks.map((tick) => (
        <path key={tick.text} class="gain-track" d={`M${tick.x} 2V8`} />
      ))}
    </>
  );
}
