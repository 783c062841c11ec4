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
  /** Attributes of what is English in every language: the catalogue itself. */
  readonly english: { readonly lang?: string; readonly dir?: "ltr" };
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
  /** Whether the words are of the page, and not of the catalogue of the rules. */
  readonly isOurs: boolean;
  readonly lines: readonly string[];
}

/** Presents every rule. Its address with a rule's anchor is a promise: `check --markdown` leads there. */
export function presentRules(gallery: Gallery, format: Format): RulesPage {
  const { say } = format;
  const all = { count: ruleChapters.flatMap(({ rules }) => rules).length };
  return {
    frame: presentFrame(
      {
        path: "/rules/",
        title: say("rules.title"),
        description: say("rules.description"),
        section: undefined,
      },
      gallery,
      format,
    ),
    count: say("rules.count", all),
    found: say("rules.found", { found: "#", ...all }),
    lede: say("rules.lede", all),
    english: format.language.split("-")[0] === "en" ? {} : { lang: "en", dir: "ltr" },
    chapters: ruleChapters.map(({ id, heading, rules }) => ({
      id,
      heading,
      count: say("rules.count", { count: rules.length }),
      rules: rules.map((rule) => presentRule(rule, format)),
    })),
  };
}

function presentRule({ id, severity, means, why, example }: Rule, format: Format): RuleView {
  return {
    id,
    anchor: anchorOf(id),
    means,
    why,
    isError: severity === "error",
    wrong: presentSample("wrong", example, format),
    right: presentSample("right", example, format),
  };
}

const sideIds = {
  wrong: { told: "rules.wrong", file: "rules.wrongIn", folder: "rules.wrongInFolder" },
  right: { told: "rules.right", file: "rules.rightIn", folder: "rules.rightInFolder" },
} as const;

function presentSample(side: "wrong" | "right", example: RuleExample, { say }: Format): SampleView {
  const { file, [side]: text } = example;
  const ids = sideIds[side];
  const label =
    file === "told" ? say(ids.told) : file === "folder" ? say(ids.folder) : say(ids.file, { file });
  if (text === undefined) return { label, isCode: false, isOurs: true, lines: [say("rules.leaveOut")] };
  // What cannot be seen in the file is seen here.
  const lines = text.split("\n").map((line) => showText(line.replace(/^\t/, "⇥ ")));
  return { label, isCode: file !== "told", isOurs: false, lines };
}
