// Part. A page for a projector, whole: its steps, and what moves from one to the next. Without script the steps stand one below
// the other. The speaker's notes are in the page and shown in a second window alone.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { ShowPage } from "../../src/views/show/showpage.ts";
import type { ShowStep } from "../../src/views/show/step.ts";
import type { MatrixView } from "../../src/views/study/matrixview.ts";
import { MapPanel } from "../figures/map.tsx";
import { RulerTable } from "../figures/ruler.tsx";
import { SeenFigure } from "../figures/seen.tsx";
import { Document } from "./document.tsx";
import { Locator } from "./edgepage.tsx";
import { DrawnMat, Mat } from "./plate.tsx";
import { SwatchChip } from "./swatch.tsx";
import { Message, useSay } from "./words.tsx";

/** The document. */
export function Show({ show }: { show: ShowPage }): JSX.Element {
  return (
    <Document frame={show.frame} layout="show" scripts={[show.frame.links.showScript]}>
      <h1 class="unseen">{show.frame.title}</h1>
      {show.steps.map(({ anchor, heading, says, picture, note }) => (
        <article key={anchor} id={anchor} class="show-step" aria-labelledby={`${anchor}-heading`}>
          <h2 id={`${anchor}-heading`}>{heading}</h2>
          <div class={`show-picture show-${picture.kind}`}>
            <Picture picture={picture} anchor={anchor} />
          </div>
          <p class="show-caption">{says}</p>
          {note && (
            <p class="show-note" hidden>
              {note}
            </p>
          )}
        </article>
      ))}
      <Ways show={show} />
    </Document>
  );
}

/** The way back, and the buttons of the script, with what it says where a step has no note. */
function Ways({ show }: { show: ShowPage }): JSX.Element {
  const say = useSay();
  return (
    <nav class="show-ways" aria-label={say("show.steps")}>
      <a href={show.back.address}>{show.back.text}</a>
      <span class="show-move" data-no-note={say("show.noNote")} hidden>
        <button type="button" data-move="notes">
          {say("show.notes")}
        </button>
        <button type="button" data-move="back">
          {say("show.back")}
        </button>
        <span class="number" role="status">
          {`1 / ${show.steps.length}`}
        </span>
        <button type="button" data-move="next">
          {say("show.next")}
        </button>
      </span>
    </nav>
  );
}

function Picture({ picture, anchor }: { picture: ShowStep["picture"]; anchor: string }): JSX.Element {
  const say = useSay();
  const labels = [say("show.ofOriginal"), say("show.ofRedesign")];
  switch (picture.kind) {
    case "flag":
      return <Mat plate={picture.plate} eager />;
    case "map":
      return (
        <div class="mat">
          <MapPanel map={picture.map} panel={picture.map.panels[0]} id={`${anchor}-map`} shapes />
        </div>
      );
    case "edge":
      return (
        <>
          <Locator locator={picture.locator} id={`${anchor}-locator`} />
          <Mat plate={picture.plate} eager />
        </>
      );
    case "pair":
      return (
        <>
          {picture.plates.map((plate, index) => (
            <figure key={plate.label}>
              <Mat plate={plate} eager />
              <figcaption>{labels[index]}</figcaption>
            </figure>
          ))}
        </>
      );
    case "strip":
      return (
        <>
          {picture.plates.map((plate) => (
            <Mat key={plate.src} plate={plate} eager />
          ))}
        </>
      );
    case "afar":
      return (
        <>
          {picture.steps.map(({ from, plate }, at) => (
            <figure key={from}>
              <DrawnMat plate={plate} id={`${anchor}-${at}`} />
              <figcaption>
                <Message
                  id="show.from"
                  values={{ from }}
                  tags={{ number: (text) => <span class="number">{text}</span> }}
                />
              </figcaption>
            </figure>
          ))}
        </>
      );
    case "matrix":
      return <MatrixTable matrix={picture.matrix} />;
    case "ruler":
      return <RulerTable ruler={picture.ruler} rows={picture.ruler.rows} />;
    case "seen":
      return <SeenFigure seen={picture.seen} id={`${anchor}-seen`} labels={labels} />;
  }
}

/** The matrix without its addresses: what is pressed here goes to the next step. */
function MatrixTable({ matrix: { src, width, height, columns, rows } }: { matrix: MatrixView }): JSX.Element {
  const say = useSay();
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">
            <span class="unseen">{say("show.colourChanged")}</span>
          </th>
          {columns.map(({ hex, name }) => (
            <th key={hex ?? ""} scope="col">
              {hex && <SwatchChip hex={hex} />} <span>{name}</span>
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ id, hex, name, cells }) => (
          <tr key={id}>
            <th scope="row">
              <SwatchChip hex={hex} /> <span>{name}</span>
            </th>
            {cells.map((cell, at) =>
              cell === null ? (
                <td key={at} class="no-cell">
                  <span aria-hidden="true">–</span>
                  <span class="unseen">{say("show.notTried")}</span>
                </td>
              ) : (
                <td key={at} class={cell.isOwn ? "own" : undefined}>
                  <Window box={cell.box}>
                    <image href={src} width={width} height={height} />
                  </Window>
                  {cell.isOwn && <span class="unseen">{say("show.thisStudy")} </span>}
                  {cell.isBest ? (
                    <strong>{cell.clarity}</strong>
                  ) : (
                    <span class={cell.unranked && "merges"}>
                      {cell.unranked ? say("show.merges") : cell.clarity}
                    </span>
                  )}
                </td>
              ),
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** A part of a picture, of which nothing around it is seen whatever room there is. */
function Window({ box, children }: { box: string; children: JSX.Element }): JSX.Element {
  const [, , width, height] = box.split(" ");
  return (
    <svg viewBox={`0 0 ${width} ${height}`} aria-hidden="true" focusable="false">
      <svg width={width} height={height} viewBox={box} aria-hidden="true" focusable="false">
        {children}
      </svg>
    </svg>
  );
}
