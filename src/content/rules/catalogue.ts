// Floor 5, the catalogue of rules: all of them in chapters, as a page tells them.
import { addressRules } from "./addressrule.ts";
import { changeRules } from "./changerule.ts";
import { drawingRules } from "./drawingrule.ts";
import { folderRules, galleryRules, templateRules } from "./folderrule.ts";
import { pageRules } from "./pagerule.ts";
import type { Rule } from "./rule.ts";
import { seriesRules } from "./seriesrule.ts";
import { textRules } from "./textrule.ts";
import { valueRules } from "./valuerule.ts";
import { nominationRules, voteRules } from "./voterule.ts";
import { wordRules } from "./wordrule.ts";

/** Rules that belong together. `id` is good for an anchor. */
export interface RuleChapter {
  readonly id: string;
  readonly heading: string;
  readonly rules: readonly Rule[];
}

/** Every rule that a study, a drawing or a gallery can break, each once. */
export const ruleChapters: readonly RuleChapter[] = [
  { id: "text", heading: "How a study is written", rules: textRules },
  { id: "keys", heading: "Keys and values", rules: valueRules },
  { id: "change", heading: "The change and the drawing", rules: changeRules },
  { id: "drawings", heading: "What a drawing may hold", rules: drawingRules },
  { id: "files", heading: "Files and folders", rules: folderRules },
  { id: "series", heading: "Series", rules: seriesRules },
  { id: "pages", heading: "Pages of the gallery’s own", rules: pageRules },
  { id: "votes", heading: "Votes and nominations", rules: [...voteRules, ...nominationRules] },
  { id: "addresses", heading: "addresses.txt", rules: addressRules },
  { id: "settings", heading: "gallery.yaml", rules: galleryRules },
  { id: "words", heading: "words.yaml", rules: wordRules },
  { id: "templates", heading: "Templates", rules: templateRules },
];

/** Returns the anchor of a rule on its page: `study-unknown-key`. */
export function anchorOf(id: string): string {
  return id.replace("/", "-");
}
