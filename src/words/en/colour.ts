// Floor 7. English: names of colours, and a flag told by them.

export const colour = {
  /** A part of a flag that has no name, in the text of a sentence. */
  "colour.selected": "the selected {colour}",
  /** Of which colours a flag is made; read to screen readers behind what the flag is called. */
  "colour.empty": "an empty drawing",
  "colour.allOver": "{colour} all over",
  "colour.mostly": "mostly {colour}, with {others}",
} as const;
