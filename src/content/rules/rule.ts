// Floor 5, the catalogue of rules. What is known of a rule, for the page that explains it: data, which no check reads.

/** The files of a study and its gallery that an example stands in. */
export type ExampleFile =
  | "study.md"
  | "study.yaml"
  | "prose.md"
  | "gallery.yaml"
  | "original.svg"
  | "series/quay.md"
  | "pages/about.md"
  | "votes/quay/ballots.csv"
  | "flags/nominations.yaml"
  | "words.yaml"
  | "addresses.txt";

/**
 * A mistake and what is right, both as they are typed. Without `right` the wrong lines are left out and nothing stands in
 * their place. Where `file` is `folder`, paths in the content folder are shown, one a line; what is too long to show, or
 * happens on one machine only, is `told` in words.
 */
export interface RuleExample {
  readonly file: ExampleFile | "folder" | "told";
  readonly wrong: string;
  readonly right?: string;
}

export interface Rule {
  /** As messages carry it: `study/unknown-key`. It never changes. */
  readonly id: string;
  /** An error leaves the study out; a warning leaves it in. */
  readonly severity: "error" | "warning";
  /** What is the matter, in one sentence. */
  readonly means: string;
  /** Why that is a rule, in one sentence. */
  readonly why: string;
  readonly example: RuleExample;
}
