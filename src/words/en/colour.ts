// Floor 7. English: names of colours, and a flag told by them.

/**
 * A name is a noun with what is said of it, one inside the other: “slightly darker bluish green” is `colour.darker` of
 * `colour.bluish` of `colour.green`. `colour`: the name inside, a noun without an article, in the form that stands in lists. It
 * may be a name that an author gave (“darker gold”). `degree`, to choose by: slightly, much, very, or none. `word`, to choose by: the
 * basic word inside, black, white, grey, red, orange, yellow, green, blue, purple, pink or brown, or none; where a language has a word
 * of its own for both together (“dark red” as one word), there is a branch for it.
 */
export const colour = {
  "colour.black": "black",
  "colour.white": "white",
  "colour.grey": "grey",
  "colour.red": "red",
  "colour.orange": "orange",
  "colour.yellow": "yellow",
  "colour.green": "green",
  "colour.blue": "blue",
  "colour.purple": "purple",
  "colour.pink": "pink",
  "colour.brown": "brown",
  /** `degree`: very, less, slightlyLess, muchLess, or none. */
  "colour.dark":
    "{word, select, other {{degree, select, very {very dark {colour}} less {less dark {colour}} slightlyLess {slightly less dark {colour}} muchLess {much less dark {colour}} other {dark {colour}}}}}",
  "colour.light":
    "{word, select, other {{degree, select, very {very light {colour}} less {less light {colour}} slightlyLess {slightly less light {colour}} muchLess {much less light {colour}} other {light {colour}}}}}",
  "colour.darkest": "darkest {colour}",
  "colour.lightest": "lightest {colour}",
  /** Compared with another colour of the flag. Deeper: of fuller, stronger colour; greyer: of duller. */
  "colour.darker":
    "{degree, select, slightly {slightly darker {colour}} much {much darker {colour}} other {darker {colour}}}",
  "colour.lighter":
    "{degree, select, slightly {slightly lighter {colour}} much {much lighter {colour}} other {lighter {colour}}}",
  "colour.deeper":
    "{degree, select, slightly {slightly deeper {colour}} much {much deeper {colour}} other {deeper {colour}}}",
  "colour.greyer":
    "{degree, select, slightly {slightly greyer {colour}} much {much greyer {colour}} other {greyer {colour}}}",
  "colour.warmer":
    "{degree, select, slightly {slightly warmer {colour}} much {much warmer {colour}} other {warmer {colour}}}",
  "colour.bluer":
    "{degree, select, slightly {slightly bluer {colour}} much {much bluer {colour}} other {bluer {colour}}}",
  "colour.yellower":
    "{degree, select, slightly {slightly yellower {colour}} much {much yellower {colour}} other {yellower {colour}}}",
  "colour.redder":
    "{degree, select, slightly {slightly redder {colour}} much {much redder {colour}} other {redder {colour}}}",
  "colour.greener":
    "{degree, select, slightly {slightly greener {colour}} much {much greener {colour}} other {greener {colour}}}",
  "colour.purpler":
    "{degree, select, slightly {slightly purpler {colour}} much {much purpler {colour}} other {purpler {colour}}}",
  /** With a tint. */
  "colour.reddish":
    "{degree, select, slightly {slightly reddish {colour}} much {much reddish {colour}} very {very reddish {colour}} other {reddish {colour}}}",
  "colour.brownish":
    "{degree, select, slightly {slightly brownish {colour}} much {much brownish {colour}} very {very brownish {colour}} other {brownish {colour}}}",
  "colour.yellowish":
    "{degree, select, slightly {slightly yellowish {colour}} much {much yellowish {colour}} very {very yellowish {colour}} other {yellowish {colour}}}",
  "colour.greenish":
    "{degree, select, slightly {slightly greenish {colour}} much {much greenish {colour}} very {very greenish {colour}} other {greenish {colour}}}",
  "colour.bluish":
    "{degree, select, slightly {slightly bluish {colour}} much {much bluish {colour}} very {very bluish {colour}} other {bluish {colour}}}",
  "colour.purplish":
    "{degree, select, slightly {slightly purplish {colour}} much {much purplish {colour}} very {very purplish {colour}} other {purplish {colour}}}",
  "colour.greyish":
    "{degree, select, slightly {slightly greyish {colour}} much {much greyish {colour}} very {very greyish {colour}} other {greyish {colour}}}",
  "colour.warm":
    "{degree, select, slightly {slightly warm {colour}} much {much warm {colour}} very {very warm {colour}} other {warm {colour}}}",
  "colour.neutral":
    "{degree, select, slightly {slightly neutral {colour}} much {much neutral {colour}} very {very neutral {colour}} other {neutral {colour}}}",
  /** Of full, strong colour; of black: as black as can be. */
  "colour.deep": "{word, select, other {deep {colour}}}",
  /** Between two others in lightness. */
  "colour.mid": "mid {colour}",
  /** Black and white that are not quite so. */
  "colour.off": "{word, select, other {off-{colour}}}",
  "colour.charcoal": "charcoal {colour}",
  "colour.dull": "dull {colour}",
  /** Black and white that are more so than others. */
  "colour.jet": "jet {colour}",
  "colour.bright": "bright {colour}",
  "colour.pure": "pure {colour}",
  /** The second and following colours of one name. */
  "colour.nth":
    "{place, select, second {second {colour}} third {third {colour}} fourth {fourth {colour}} fifth {fifth {colour}} sixth {sixth {colour}} seventh {seventh {colour}} eighth {eighth {colour}} ninth {ninth {colour}} other {tenth {colour}}}",
  /** Where more than ten have it; `number` begins with 11. */
  "colour.numbered": "{colour} {number}",
  /** All colours of a drawing together that are not measured each. */
  "colour.others": "other colours",
  /** The part of a colour that a change selects: in lists, and in the text of a sentence. */
  "colour.selectedPart": "{colour}, selected part",
  "colour.selected": "the selected {colour}",
  /** Of which colours a flag is made; read to screen readers behind what the flag is called. */
  "colour.empty": "an empty drawing",
  "colour.allOver": "{colour} all over",
  "colour.mostly": "mostly {colour}, with {others}",
} as const;
