// Part. One rule: what it means, why, and both sides of its example.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { RuleView, SampleView } from "../../src/views/rules/rulespage.ts";

/**
 * One rule of the rules page: a line, and behind it why it is there and its example. A browser opens what is closed
 * round the place that an address names.
 */
export function RuleItem({ rule }: { rule: RuleView }): JSX.Element {
  return (
    <details class="rule">
      <summary>
        <h3>{rule.means}</h3>
        <span class="rule-id">
          {!rule.isError && <strong>Warning </strong>}
          <code>{rule.id}</code>
        </span>
      </summary>
      <div id={rule.anchor} class="rule-entry">
        <p>
          {rule.why} <a href={`#${rule.anchor}`}>Link to this rule</a>
        </p>
        <div class="rule-example">
          <Sample sample={rule.wrong} />
          <Sample sample={rule.right} />
        </div>
      </div>
    </details>
  );
}

function Sample({ sample }: { sample: SampleView }): JSX.Element {
  return (
    <div class="sample">
      <p class="sample-label">{sample.label}</p>
      {sample.isCode ? (
        <pre dir="ltr">
          <code>{sample.lines.join("\n")}</code>
        </pre>
      ) : (
        <p class="sample-told">{sample.lines.join(" ")}</p>
      )}
    </div>
  );
}
