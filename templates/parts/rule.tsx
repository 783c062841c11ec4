// Part. One rule: what it means, why, and both sides of its example.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { RulesPage, RuleView, SampleView } from "../../src/views/rules/rulespage.ts";
import { useSay } from "./words.tsx";

type English = RulesPage["english"];

/**
 * One rule of the rules page: a line, and behind it why it is there and its example. A browser opens what is closed
 * round the place that an address names.
 */
export function RuleItem({ rule, english }: { rule: RuleView; english: English }): JSX.Element {
  const say = useSay();
  return (
    <details class="rule">
      <summary>
        <h3 {...english}>{rule.means}</h3>
        <span class="rule-id">
          {!rule.isError && <strong>{say("rules.warning")} </strong>}
          <code>{rule.id}</code>
        </span>
      </summary>
      <div id={rule.anchor} class="rule-entry">
        <p>
          {english.lang ? <span {...english}>{rule.why}</span> : rule.why}{" "}
          <a href={`#${rule.anchor}`}>{say("rules.link")}</a>
        </p>
        <div class="rule-example">
          <Sample sample={rule.wrong} english={english} />
          <Sample sample={rule.right} english={english} />
        </div>
      </div>
    </details>
  );
}

function Sample({ sample, english }: { sample: SampleView; english: English }): JSX.Element {
  return (
    <div class="sample">
      <p class="sample-label">{sample.label}</p>
      {sample.isCode ? (
        <pre {...english} dir="ltr">
          <code>{sample.lines.join("\n")}</code>
        </pre>
      ) : (
        <p class="sample-told" {...(sample.isOurs ? {} : english)}>
          {sample.lines.join(" ")}
        </p>
      )}
    </div>
  );
}
