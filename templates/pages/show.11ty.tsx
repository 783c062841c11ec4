// Page `/studies/<slug>/show/`: a study for a projector, one idea a step. Without script the steps stand one below the other.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { ShowPage, ShowPicture } from "../../src/views/show/showpage.ts";
import type { SiteView } from "../../src/views/siteview.ts";
import { MapPanel } from "../figures/map.tsx";
import { RulerTable } from "../figures/ruler.tsx";
import { SeenFigure } from "../figures/seen.tsx";
import { Document } from "../parts/document.tsx";
import { DrawnMat, Mat } from "../parts/plate.tsx";

export const data = {
  pagination: { data: "site.shows", size: 1, alias: "show" },
  permalink: ({ show }: { show: ShowPage }) => `${show.folder}/index.html`,
};

/** Renders the show of one study. */
export function render({ show }: { site: SiteView; show: ShowPage }): JSX.Element {
  return (
    <Document frame={show.frame} layout="show" scripts={[show.frame.links.showScript]}>
      <h1 class="unseen">{show.frame.title}</h1>
      {show.steps.map(({ anchor, heading, says, picture }) => (
        <section key={anchor} id={anchor} class="show-step" aria-labelledby={`${anchor}-heading`}>
          <h2 id={`${anchor}-heading`}>{heading}</h2>
          <div class={`show-picture show-${picture.kind}`}>
            <Picture picture={picture} anchor={anchor} />
          </div>
          <p class="show-caption">{says}</p>
        </section>
      ))}
      <nav class="show-ways" aria-label="Steps">
        <a href={show.back}>The study</a>
        <span class="show-move" hidden>
          <button type="button">Back</button>
          <span class="number" role="status">
            {`1 / ${show.steps.length}`}
          </span>
          <button type="button">Next</button>
        </span>
      </nav>
    </Document>
  );
}

function Picture({ picture, anchor }: { picture: ShowPicture; anchor: string }): JSX.Element {
  switch (picture.kind) {
    case "flag":
      return <Mat plate={picture.plate} eager />;
    case "map":
      return (
        <div class="mat">
          <MapPanel map={picture.map} panel={picture.map.panels[0]} id={`${anchor}-map`} shapes />
        </div>
      );
    case "pair":
      return (
        <div class="pair">
          {picture.plates.map((plate) => (
            <Mat key={plate.label} plate={plate} eager />
          ))}
        </div>
      );
    case "afar":
      return (
        <ol class="show-distances">
          {picture.steps.map(({ from, plate }, at) => (
            <li key={from}>
              <DrawnMat plate={plate} id={`${anchor}-${at}`} />
              From <span class="number">{from}</span> flag heights, enlarged
            </li>
          ))}
        </ol>
      );
    case "ruler":
      return <RulerTable ruler={picture.ruler} rows={picture.ruler.rows} />;
    case "seen":
      return <SeenFigure seen={picture.seen} id={`${anchor}-seen`} />;
  }
}
