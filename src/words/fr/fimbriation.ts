// Floor 7. French: what a line of a third colour does for the two colours that it keeps apart.
import type { In } from "../en/all.ts";
import type { fimbriation as english } from "../en/fimbriation.ts";

export const fimbriation: In<typeof english> = {
  "fimbriation.parts": "La ligne ({line}) sépare {one} et {other}",
  "fimbriation.doesNotPart": "La ligne ({line}) entre {one} et {other} ne les sépare pas",
  "fimbriation.didAlready": "Dans l’original, {line} le faisait déjà : {across} au lieu de {direct}.",
  "fimbriation.didNotEither":
    "Dans l’original, {line} ne le faisait pas non plus : {across} au lieu de {direct}.",
  "fimbriation.did": "Dans l’original, {line} le faisait : {across} au lieu de {direct}.",
  "fimbriation.didNot": "Dans l’original, {line} ne le faisait pas : {across} au lieu de {direct}.",
  "fimbriation.it": "elle",
  "fimbriation.theLine": "la ligne ({colour})",
  "fimbriation.partLine": "la ligne ({part})",
};
