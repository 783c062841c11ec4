// Page `/studies/<slug>/maker/`: proportions, construction and colours of an adopted redesign, on one page of paper.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MakerPage } from "../../src/views/sheet/makerpage.ts";
import type { SiteView } from "../../src/views/siteview.ts";
import { Document } from "../parts/document.tsx";
import { BuiltTable, DyeTable, MeasuredOutline } from "../parts/maker.tsx";
import { SheetFoot } from "../parts/sheets.tsx";

export const data = {
  pagination: { data: "site.makers", size: 1, alias: "maker" },
  permalink: ({ maker }: { maker: MakerPage }) => `${maker.folder}/index.html`,
};

/** Renders the sheet for makers of one study. */
export function render({ maker }: { site: SiteView; maker: MakerPage }): JSX.Element {
  const { words, drawing } = maker;
  return (
    <Document frame={maker.frame} layout="sheets">
      <article>
        <header class="opening">
          <p class="flag-name">Sheet for makers</p>
          <h1>{maker.title}</h1>
          <p class="measured">
            {words.print} <a href={maker.back}>The study</a>
          </p>
        </header>
        <section id="maker" class="sheets-page sheets-maker">
          <h2>
            {maker.name} <span class="sheets-kind">For makers</span>
          </h2>
          <p>
            {maker.decision} <span class="quiet">{maker.unofficial}</span>
          </p>
          <MeasuredOutline maker={maker} />
          <h3>{words.built}</h3>
          {maker.built.length > 0 && <BuiltTable rows={maker.built} />}
          <p class="quiet">{maker.builtHow.join(" ")}</p>
          <h3>{words.colours}</h3>
          <DyeTable rows={maker.colours} />
          <p class="quiet">
            {maker.others} {words.coloursHow} {words.source}
          </p>
          <h3>{words.cautions}</h3>
          <ul class="maker-cautions">
            <li>{words.law}</li>
            <li>{words.cloth}</li>
            <li>
              {words.file} <a href={drawing.address}>{drawing.file}</a>
            </li>
          </ul>
          <SheetFoot foot={maker.foot} page="1 / 1" />
        </section>
      </article>
    </Document>
  );
}
