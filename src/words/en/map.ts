// Floor 7. English: the edge map.

export const map = {
  "map.caption":
    "Where two colours meet, as traced from the viewing distance. Solid lines are clear or strong, broken lines are not.",
  "map.bandNote": "The band lies around what has to be seen.",
  /** Head of a caption. */
  "map.title": "Edge map",
  "map.focusFound": "what has to be seen, found: {share} of the flag",
  "map.focusNamed": "what has to be seen, named by the author: {share} of the flag",
  "map.none": "No edges.",
  /** Read to screen readers; pairs of colours in a list. */
  "map.firstGrade": "{grade}, {share} of all edge length: {names}.",
  /** Goes on from the one before. */
  "map.grade": "{grade}, {share}: {names}.",
} as const;
