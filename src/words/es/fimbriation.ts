// Floor 7. Spanish: what a line of a third colour does for the two colours that it keeps apart.
import type { In } from "../en/all.ts";
import type { fimbriation as english } from "../en/fimbriation.ts";

export const fimbriation: In<typeof english> = {
  "fimbriation.parts": "La línea en {line} separa {one} de {other}",
  "fimbriation.doesNotPart": "La línea en {line} entre {one} y {other} no los separa",
  "fimbriation.didAlready": "En el original {line} ya lo hacía: {across} en lugar de {direct}.",
  "fimbriation.didNotEither": "En el original {line} tampoco lo hacía: {across} en lugar de {direct}.",
  "fimbriation.did": "En el original {line} lo hacía: {across} en lugar de {direct}.",
  "fimbriation.didNot": "En el original {line} no lo hacía: {across} en lugar de {direct}.",
  "fimbriation.it": "ella",
  "fimbriation.theLine": "la línea en {colour}",
  "fimbriation.partLine": "línea de {part}",
};
