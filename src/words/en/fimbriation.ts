// Floor 7. English: what a line of a third colour does for the two colours that it keeps apart.

/** `line`, `one`, `other`: names of colours, such as “dark red”. */
export const fimbriation = {
  /** These two stand before numbers, behind a colon. */
  "fimbriation.parts": "The {line} line parts {one} from {other}",
  "fimbriation.doesNotPart": "The {line} line between {one} and {other} does not part them",
  /** One of the two before, and from one contrast to another. */
  "fimbriation.line": "{lead}: <move></move>.",
  /** How it was before the change: a contrast `across` the line in place of one `direct`. `line`: one of the three below. */
  "fimbriation.didAlready": "In the original {line} did so already: {across} in place of {direct}.",
  "fimbriation.didNotEither": "In the original {line} did not either: {across} in place of {direct}.",
  "fimbriation.did": "In the original {line} did: {across} in place of {direct}.",
  "fimbriation.didNot": "In the original {line} did not: {across} in place of {direct}.",
  "fimbriation.it": "it",
  "fimbriation.theLine": "the {colour} line",
  /** `part`: what the author calls a part of the flag, or “the selected brown”. */
  "fimbriation.partLine": "{part} line",
} as const;
