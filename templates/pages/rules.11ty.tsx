// Page `/rules/`: every rule for studies and drawings, with an anchor of its own.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SiteView } from "../../src/views/siteview.ts";
import { Document } from "../parts/document.tsx";
import { RuleItem } from "../parts/rule.tsx";

export const data = { permalink: "rules/index.html" };

/** Renders the page of the rules. */
export function render({ site: { rules } }: { site: SiteView }): JSX.Element {
  return (
    <Document
      frame={rules.frame}
      layout="rules"
      scripts={[rules.frame.links.findScript, rules.frame.links.rulesScript]}
    >
      <header class="opening">
        <h1>Rules for studies and drawings</h1>
        <p class="lede">{rules.lede}</p>
        <p class="rules-note">
          Each is an error, which leaves the study out of the gallery until it is mended, unless it is marked
          a warning, which leaves it in. Examples in a frame are what is typed, and have been tried: the wrong
          one raises its rule and nothing else, the right one raises nothing.
        </p>
      </header>
      <search class="finder rules-finder" hidden>
        <p class="field wide">
          <label for="rules-words">Find rules with these words</label>
          <input type="search" id="rules-words" autocomplete="off" />
        </p>
        <p class="found" role="status" data-found={rules.found} data-all={rules.count}>
          {rules.count}
        </p>
      </search>
      {rules.chapters.map((chapter) => (
        <details key={chapter.id} class="rules-chapter">
          <summary>
            <h2 id={chapter.id}>{chapter.heading}</h2>
            <span class="quiet">{chapter.count}</span>
          </summary>
          {chapter.rules.map((rule) => (
            <RuleItem key={rule.id} rule={rule} />
          ))}
        </details>
      ))}
    </Document>
  );
}
