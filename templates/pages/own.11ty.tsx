// Pages of the gallery's own: what their authors wrote, studies among it, and the ways between them.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { OwnPage, PageFigure } from "../../src/views/page/ownpage.ts";
import type { SiteView } from "../../src/views/siteview.ts";
import { Document } from "../parts/document.tsx";
import { Entry } from "../parts/entry.tsx";
import { CaptionedPlate } from "../parts/plate.tsx";
import { Message, pageOf, useSay } from "../parts/words.tsx";

export const data = {
  pagination: { data: "site.pages", size: 1, alias: "own" },
  permalink: ({ own }: { own: OwnPage }) => `${own.folder}/index.html`,
};

/** Renders one page. */
export const render = pageOf(Own);

function Own({ own }: { site: SiteView; own: OwnPage }): JSX.Element {
  return (
    <Document frame={own.frame} layout="own">
      <article>
        <header class="opening">
          {own.above.length > 0 && (
            <p class="flag-name">
              {own.above.map(({ title, address }, index) => (
                <>
                  {index > 0 && " · "}
                  <a href={address}>{title}</a>
                </>
              ))}
            </p>
          )}
          <h1>{own.title}</h1>
        </header>
        <div class="own-text">
          <div class="prose">
            {own.blocks.map((block, index) =>
              block.kind === "html" ? (
                // Written by our Markdown renderer, which shows the author's HTML as text.
                <div key={index} class="prose-run" dangerouslySetInnerHTML={{ __html: block.html }} />
              ) : (
                <Figure key={index} figure={block.figure} eager={index === 0} />
              ),
            )}
          </div>
          {own.beside.length > 0 && <Beside own={own} />}
        </div>
        {own.below.length > 0 && (
          <div class="own-below">
            {own.below.map((below) => (
              <Below key={below.group} below={below} />
            ))}
          </div>
        )}
        {own.next && (
          <p class="own-next">
            <Message
              id="ownPage.next"
              values={{ title: own.next.title }}
              tags={{ a: (text) => <a href={own.next?.address ?? ""}>{text}</a> }}
            />
          </p>
        )}
      </article>
    </Document>
  );
}

/** All pages that lie beside this one, and among them the sections of this one. */
function Beside({ own: { beside, sections } }: { own: OwnPage }): JSX.Element {
  const say = useSay();
  return (
    <nav class="own-beside" aria-label={say("ownPage.beside")}>
      {beside.map(({ group, ways }) => (
        <div key={group}>
          {group && <p class="quiet">{group}</p>}
          <ul>
            {ways.map(({ title, address, isHere }) => (
              <li key={address}>
                <a href={address} aria-current={isHere ? "page" : undefined}>
                  {title}
                </a>
                {isHere && sections.length > 0 && <Sections sections={sections} />}
              </li>
            ))}
          </ul>
        </div>
      ))}
    </nav>
  );
}

function Sections({ sections }: Pick<OwnPage, "sections">): JSX.Element {
  return (
    <ul>
      {sections.map(({ title, address }) => (
        <li key={address}>
          <a href={address}>{title}</a>
        </li>
      ))}
    </ul>
  );
}

/** The pages of one group under its heading; those of none are headings themselves. */
function Below({ below: { group, ways } }: { below: OwnPage["below"][number] }): JSX.Element {
  const Heading = group === undefined ? "h2" : "h3";
  return (
    <section>
      {group && <h2>{group}</h2>}
      <ul>
        {ways.map(({ title, address, summary }) => (
          <li key={address}>
            <Heading>
              <a href={address}>{title}</a>
            </Heading>
            <p>{summary}</p>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Figure({ figure, eager }: { figure: PageFigure; eager: boolean }): JSX.Element {
  if (figure.kind === "study") return <Entry card={figure.card} eager={eager} />;
  const { plate, page } = figure;
  return (
    <CaptionedPlate plate={plate} eager={eager}>
      {page === undefined ? plate.label : <a href={page}>{plate.label}</a>}
    </CaptionedPlate>
  );
}
