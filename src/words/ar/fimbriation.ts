// Floor 7. Arabic: what a line of a third colour does for the two colours that it keeps apart.
import type { In } from "../en/all.ts";
import type { fimbriation as english } from "../en/fimbriation.ts";

export const fimbriation: In<typeof english> = {
  "fimbriation.parts": "الخط بلون {line} يفصل بين {one} و{other}",
  "fimbriation.doesNotPart": "الخط بلون {line} لا يفصل بين {one} و{other}",
  "fimbriation.didAlready": "في الأصل كان {line} يفعل ذلك من قبل: {across} بدل {direct}.",
  "fimbriation.didNotEither": "في الأصل لم يكن {line} يفعل ذلك أيضًا: {across} بدل {direct}.",
  "fimbriation.did": "في الأصل كان {line} يفعل ذلك: {across} بدل {direct}.",
  "fimbriation.didNot": "في الأصل لم يكن {line} يفعل ذلك: {across} بدل {direct}.",
  "fimbriation.it": "هو",
  "fimbriation.theLine": "الخط بلون {colour}",
  "fimbriation.partLine": "خط {part}",
};
