// Page `/studies/<slug>/maker/`: proportions, construction and colours of an adopted redesign, on one page of paper.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MakerPage } from "../../src/views/sheet/makerpage.ts";
import type { SiteView } from "../../src/views/siteview.ts";
import { Document } from "../parts/document.tsx";
import { BuiltTable, DyeTable, MeasuredFlag } from "../parts/maker.tsx";
import { SheetFoot } from "../parts/sheets.tsx";
import { useSay } from "../parts/words.tsx";

export const data = {
  pagination: { data: "site.makers", size: 1, alias: "maker" },
  permalink: ({ maker }: { maker: MakerPage }) => `${maker.folder}/index.html`,
};

/** Renders the sheet for makers of one study. */
export function render({ maker }: { site: SiteView; maker: MakerPage }): JSX.Element {
  return (
    <Document frame={maker.frame} layout="sheets">
      <article>
        <Sheet maker={maker} />
      </article>
    </Document>
  );
}

function Sheet({ maker }: { maker: MakerPage }): JSX.Element {
  const { drawing } = maker;
  const say = useSay();
  return (
    <>
      <header class="opening">
        <p class="flag-name">{say("maker.kind")}</p>
        <h1>{maker.title}</h1>
        <p class="measured">
          {say("maker.print")} <a href={maker.back}>{say("maker.toStudy")}</a>
        </p>
      </header>
      <section id="maker" class="sheets-page sheets-maker">
        <h2>
          {maker.name} <span class="sheets-kind">{say("maker.for")}</span>
        </h2>
        <MeasuredFlag maker={maker} />
        <p>{maker.decision}</p>
        <p class="quiet">{maker.unofficial}</p>
        <h3>{say("maker.built")}</h3>
        {maker.built.length > 0 && <BuiltTable rows={maker.built} />}
        <p class="quiet">{maker.builtHow.join(" ")}</p>
        <h3>{say("maker.colours")}</h3>
        <DyeTable rows={maker.colours} />
        <p class="quiet">
          {maker.others} {say("maker.coloursHow")} {say("maker.source")}
        </p>
        <h3>{say("maker.cautions")}</h3>
        <ul class="maker-cautions">
          <li>{say("maker.law")}</li>
          <li>{say("maker.cloth")}</li>
          <li>
            {say("maker.file")} <a href={drawing.address}>{drawing.file}</a>
          </li>
        </ul>
        <SheetFoot foot={maker.foot} page="1 / 1" />
      </section>
    </>
  );
}
