// Page `/studies/<slug>/show/`: a study for a projector, one idea a step.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { ShowPage } from "../../src/views/show/showpage.ts";
import type { SiteView } from "../../src/views/siteview.ts";
import { Show } from "../parts/show.tsx";

export const data = {
  pagination: { data: "site.shows", size: 1, alias: "show" },
  permalink: ({ show }: { show: ShowPage }) => `${show.folder}/index.html`,
};

/** Renders the show of one study. */
export function render({ show }: { site: SiteView; show: ShowPage }): JSX.Element {
  return <Show show={show} />;
}
