// Floor 8. The page of the rules: the catalogue of the floors below, with every example as it is shown.

import { anchorOf, ruleChapters } from "../../content/rules/catalogue.ts";
import type { Rule, RuleExample } from "../../content/rules/rule.ts";
import type { Gallery } from "../../content/study/study.ts";
import { showText } from "../../problem/quote.ts";
import type { Format } from "../../words/format.ts";
import { type Frame, presentFrame } from "../pageframe.ts";

export interface RulesPage {
  readonly frame: Frame;
  readonly lede: string;
  readonly count: string;
  /** What is said of a narrowed list, `#` standing for its length. */
  readonly found: string;
  readonly chapters: readonly ChapterView[];
}

export interface ChapterView {
  readonly id: string;
  readonly heading: string;
  readonly count: string;
  readonly rules: readonly RuleView[];
}

export interface RuleView {
  readonly id: string;
  readonly anchor: string;
  readonly means: string;
  readonly why: string;
  /** Whether it leaves the study out; else it warns. */
  readonly isError: boolean;
  readonly wrong: SampleView;
  readonly right: SampleView;
}

/** One side of an example. `isCode`: its lines are typed, and shown as they are; else it is told in words. */
export interface SampleView {
  readonly label: string;
  readonly isCode: boolean;
  readonly lines: readonly string[];
}

/** Presents every rule. Its address with a rule's anchor is a promise: `check --markdown` leads there. */
export function presentRules(gallery: Gallery, format: Format): RulesPage {
  const count = (rules: readonly unknown[]) =>
    `${format.number(rules.length, 0)} ${rules.length === 1 ? "rule" : "rules"}`;
  const all = count(ruleChapters.flatMap(({ rules }) => rules));
  return {
    frame: presentFrame(
      {
        path: "/rules/",
        title: "Rules for studies and drawings",
        description:
          "What each message about a study or a drawing means, with an example that is wrong and one that is right.",
        section: undefined,
      },
      gallery,
      format,
    ),
    count: all,
    found: `# of ${all}`,
    lede: `Every message about a study ends with the name of its rule. Here are all ${all}: what each means, why it is there, and an example that is wrong beside one that is right.`,
    chapters: ruleChapters.map(({ id, heading, rules }) => ({
      id,
      heading,
      count: count(rules),
      rules: rules.map(presentRule),
    })),
  };
}

function presentRule({ id, severity, means, why, example }: Rule): RuleView {
  return {
    id,
    anchor: anchorOf(id),
    means,
    why,
    isError: severity === "error",
    wrong: presentSample("Wrong", example, example.wrong),
    right: presentSample("Right", example, example.right),
  };
}

function presentSample(side: string, { file }: RuleExample, text: string | undefined): SampleView {
  const where = file === "told" ? "" : file === "folder" ? ", in the content folder" : `, in ${file}`;
  const label = `${side}${where}`;
  if (text === undefined) return { label, isCode: false, lines: ["Leave it out."] };
  // What cannot be seen in the file is seen here.
  const lines = text.split("\n").map((line) => showText(line.replace(/^\t/, "⇥ ")));
  return { label, isCode: file !== "told", lines };
}
