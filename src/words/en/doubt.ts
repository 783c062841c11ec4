// Floor 7. English: what makes the figures of a drawing less certain.

export const doubt = {
  /** `name`: what the remaining colours of a drawing are called together. */
  "doubt.joined":
    "The drawing has more colours than are measured each: {count, plural, one {the # that show least are} other {the # that show least are}} measured with one near them that shows more, or together, as “{name}”.",
  "doubt.faint":
    "{count, plural, one {One shape shows at less than half and is left out of the measurement.} other {# shapes show at less than half and are left out of the measurement.}}",
  "doubt.inexact": "Only {share} of the drawing could be told apart exactly; its figures are less certain.",
  "doubt.nearLimit": "Near the limit of sight: parts in {names}.",
  "doubt.effect": "The author’s drawing has what is not shown here and not measured: {looks}.",
  /** What a drawing has beside plain shapes. `mode`: how colours are mixed, as CSS calls it, never translated: multiply. */
  "doubt.look":
    "{kind, select, shadow {a shadow} blur {a blur} colours {a change of colours} blend {colours mixed with what is below them ({mode})} other {an effect}}",
} as const;
