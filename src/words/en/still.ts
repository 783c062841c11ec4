// Floor 7. English: words in pictures that are taken away, what is offered of them, and the speaker’s script.

export const still = {
  /** At the edge of a picture. */
  "still.mark": "Unofficial study, for discussion",
  /** What every picture and file of a redesign says of itself. */
  "still.unofficial": "Unofficial study: a proposal for discussion, not a flag in use.",
  "still.split": "The original, and its redesign as an unofficial study",
  /** Under two maps. */
  "still.original": "Original",
  "still.redesign": "Redesign",
  /** The title of a figure and that of its study. */
  "still.figure": "{what}: {title}",
  /** Two percentages, or two colours. */
  "still.move": "{before} to {after}",
  /** Under two flags as others see them: “Protan: clarity of the whole flag 74% to 100%”. */
  "still.seen": "{heading}: {measure} {before} to {after}",
  /** In the table of changes: the new colour would run into its neighbour. */
  "still.merges": "merges",
  /** What is taken away, then the kind of file. */
  "still.swap": "The swap, WebP",
  "still.thumbnail": "Thumbnail",
  "still.map": "Edge map, SVG",
  "still.ruler": "Ruler, SVG",
  "still.matrix": "Matrix, SVG",
  "still.script": "What to say, Markdown",
  /** In the script, of one step: the file of its picture, what is written on it, what to say, what the author notes. */
  "still.scriptStep": "{number}. {heading}",
  "still.scriptPicture": "Picture: {file}",
  "still.scriptOn": "On it: {text}",
  "still.scriptSay": "Say: {text}",
  "still.scriptNote": "Note: {text}",
} as const;
