// Part. One rule: what it means, why, and both sides of its example.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { RuleView, SampleView } from "../../src/site/present/rules.ts";

/** One rule of the rules page. */
export function RuleItem({ rule }: { rule: RuleView }): JSX.Element {
  return (
    <article id={rule.anchor} class="rule" aria-labelledby={`${rule.anchor}-name`}>
      <h3 id={`${rule.anchor}-name`}>
        <a href={`#${rule.anchor}`}>
          <code>{rule.id}</code>
        </a>
      </h3>
      <p class="rule-effect">{rule.effect}</p>
      <p class="rule-means">
        {rule.means} {rule.why}
      </p>
      <div class="rule-example">
        <Sample sample={rule.wrong} />
        <Sample sample={rule.right} />
      </div>
    </article>
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
