// Floor 7. German: what a line of a third colour does for the two colours that it keeps apart.
import type { In } from "../en/all.ts";
import type { fimbriation as english } from "../en/fimbriation.ts";

export const fimbriation: In<typeof english> = {
  "fimbriation.parts": "Die Linie ({line}) trennt {one} und {other}",
  "fimbriation.doesNotPart": "Die Linie ({line}) trennt {one} und {other} nicht",
  "fimbriation.didAlready": "Im Original tat {line} das schon: {across} statt {direct}.",
  "fimbriation.didNotEither": "Im Original tat {line} das auch nicht: {across} statt {direct}.",
  "fimbriation.did": "Im Original tat {line} das: {across} statt {direct}.",
  "fimbriation.didNot": "Im Original tat {line} das nicht: {across} statt {direct}.",
  "fimbriation.it": "sie",
  "fimbriation.theLine": "die Linie ({colour})",
  "fimbriation.partLine": "die Linie ({part})",
};
