// Floor 7. English: other single changes of a flag, which colour to change first, and what was not tried.

/** `name`, `names`, `colour`: names of colours, such as “dark red”; `names` is a list with “and” or with commas. */
export const otherChange = {
  /** One of the colours that do as well as the best, called as that is. */
  "otherChange.another": "another {name}",
  "otherChange.equal": "{count, plural, one {{names} does as well} other {{names} do as well}}",
  /** The same in a table, without a verb. */
  "otherChange.equalShort": "{names} as well",
  /** The end of a list of names. */
  "otherChange.others": "{count, plural, one {# others} other {# others}}",
  "otherChange.lost": "Harder to see beside {names}.",
  "otherChange.worse": "Less clear beside {names}.",
  "otherChange.merged": "One colour with {names}.",
  "otherChange.outlineMerges": "{share} of the outline merges.",
  "otherChange.confusable": "Can be taken for the flag’s {names}.",
  /** `sights`: a list of `otherChange.protan` and so on. The first letter is made a capital. It: the colour of the option. */
  "otherChange.confused": "{sights} eyes take it for {name}.",
  /** Kinds of colour vision, as adjectives of eyes: protan ones see little red, deutan ones little green, tritan ones little blue. */
  "otherChange.protan": "protan",
  "otherChange.deutan": "deutan",
  "otherChange.tritan": "tritan",
  /** One change in a list. */
  "otherChange.fromTo": "{before} to {after}",
  /** `changes`: a list of `otherChange.fromTo`. */
  "otherChange.unranked":
    "{count, plural, one {Not ranked: {changes}; it would merge a third of a charge’s outline or more.} other {Not ranked: {changes}; each would merge a third of a charge’s outline or more.}}",
  /** `clearer`: how many; those that come to the same are not among them. */
  "otherChange.place":
    "{clearer, plural, =0 {None of {total} changes of one colour is clearer.} one {# of {total} changes of one colour is clearer.} other {# of {total} changes of one colour are clearer.}}",
  "otherChange.noneTried": "None of the colours could be tried.",
  "otherChange.allMerge": "Every change that was tried merges a third of a charge’s outline or more.",
  "otherChange.clear": "The flag is clear as it is, at a clarity of {clarity}.",
  "otherChange.clearAndNone":
    "The flag is clear as it is, at a clarity of {clarity}: no change of one colour brings five points more.",
  "otherChange.none":
    "The flag has a clarity of {clarity}, and no change of one colour brings five points more.",
  "otherChange.detail": "The flag as a whole is clear, at {clarity}; only a detail gains.",
  /** `best`: the colour that takes its place; `share` of the flag’s area. */
  "otherChange.first":
    "Change {colour} first ({share} of the flag): with {best} in its place clarity rises from {from} to {to}.",
  /**
   * `colours`: `otherChange.shareFirst` and `otherChange.share`, with commas, the last one apart as `last`. The first letter is made a
   * capital.
   */
  "otherChange.firstAlike": "{best} for {colours}, or for {last}, lifts clarity from {from} to {to}.",
  /** `moves`: `otherChange.moveFirst` and `otherChange.move`, with commas. */
  "otherChange.firstOfSeveral": "Change {colours} or {last} first: {moves}.",
  "otherChange.shareFirst": "{colour} ({share} of the flag)",
  "otherChange.share": "{colour} ({share})",
  "otherChange.moveFirst": "with {best} for {colour} clarity rises from {from} to {to}",
  "otherChange.move": "with {best} for {colour} to {to}",
  "otherChange.mostGained": "Most is gained where {colour} meets {other} (contrast {contrast} today).",
  /** What was left out, `names` of colours. */
  "otherChange.uneven": "No flat colour, so not tried: {names}.",
  "otherChange.unseen":
    "{distance, plural, one {Not seen from # flag heights away, so not tried: {names}.} other {Not seen from # flag heights away, so not tried: {names}.}}",
  "otherChange.shared":
    "Also shown translucent or in a gradient or pattern, which the figures leave as it is: {names}.",
  "otherChange.largest":
    "{all, plural, one {# colours} other {# colours}}: only the {tried, plural, one {# largest were} other {# largest were}} tried, with each other’s colours.",
  "otherChange.palette":
    "{all, plural, one {The palette has # colours} other {The palette has # colours}}: {tried, plural, one {the first # were tried.} other {the first # were tried.}}",
} as const;
