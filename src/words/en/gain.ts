// Floor 7. English: the chart of what each change does to clarity.

export const gain = {
  "gain.title": "What each change does to clarity",
  "gain.order": "Most gained first.",
  "gain.key": "A ring for the original, a dot for the redesign; a hollow line where clarity falls.",
  "gain.othersListed":
    "{count, plural, one {The other study is in the list of all} other {The other # studies are in the list of all}}",
  "gain.othersOnFront":
    "{count, plural, one {The other study is on the front page} other {The other # studies are on the front page}}",
  /** The chart for those who do not see it. `ways` is a list of the three below it. */
  "gain.told": "{count, plural, one {# study} other {# studies}}: clarity {ways}.",
  "gain.rises": "rises in {count}",
  "gain.falls": "falls in {count}",
  "gain.stays": "stays in {count}",
  /** Both are percentages. */
  "gain.most": "It rises most in “{title}”, from {before} to {after}.",
  "gain.here": "In this study it goes from {before} to {after}.",
} as const;
