// Floor 7. German: both flags of a study, and what swaps them.
import type { In } from "../en/all.ts";
import type { pair as english } from "../en/pair.ts";

export const pair: In<typeof english> = {
  "pair.swap": "Am Platz wechseln",
  "pair.both": "Beide zeigen",
  "pair.pressFlag": "Auf eine Flagge drücken",
  "pair.orKey": "oder auf eine Pfeiltaste, oder",
  "pair.pressKey": "Eine Pfeiltaste drücken, oder",
  "pair.bothShown": "Beide Flaggen sind zu sehen",
  "pair.shownAlone": "{name} ist allein zu sehen",
  "pair.split": "Halb Original, halb Neuentwurf",
};
