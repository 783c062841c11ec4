// Page `/rules/`: every rule for studies and drawings, with an anchor of its own.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SiteView } from "../../src/views/siteview.ts";
import { Document } from "../parts/document.tsx";
import { RuleItem } from "../parts/rule.tsx";
import { pageOf, useSay } from "../parts/words.tsx";

export const data = { permalink: "rules/index.html" };

/** Renders the page of the rules. */
export const render = pageOf(Rules);

function Rules({ site: { rules } }: { site: SiteView }): JSX.Element {
  const say = useSay();
  return (
    <Document
      frame={rules.frame}
      layout="rules"
      scripts={[rules.frame.links.findScript, rules.frame.links.rulesScript]}
    >
      <header class="opening">
        <h1>{say("rules.title")}</h1>
        <p class="lede">{rules.lede}</p>
        <p class="rules-note">{say("rules.note")}</p>
      </header>
      <search class="finder rules-finder" hidden>
        <p class="field wide">
          <label for="rules-words">{say("rules.find")}</label>
          <input type="search" id="rules-words" autocomplete="off" />
        </p>
        <p class="found" role="status" data-found={rules.found} data-all={rules.count}>
          {rules.count}
        </p>
      </search>
      {rules.chapters.map((chapter) => (
        <details key={chapter.id} class="rules-chapter">
          <summary>
            <h2 id={chapter.id} {...rules.english}>
              {/\.\w+$/.test(chapter.heading) ? <code>{chapter.heading}</code> : chapter.heading}
            </h2>
            <span class="quiet">{chapter.count}</span>
          </summary>
          {chapter.rules.map((rule) => (
            <RuleItem key={rule.id} rule={rule} english={rules.english} />
          ))}
        </details>
      ))}
    </Document>
  );
}
