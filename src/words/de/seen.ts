// Floor 7. German: both flags as four kinds of sight have them.
import type { In } from "../en/all.ts";
import type { seen as english } from "../en/seen.ts";

export const seen: In<typeof english> = {
  "seen.title": "Mit anderen Augen",
  "seen.caption":
    "Zuerst das Original, dann der Neuentwurf: Näherungen dessen, was Farbenfehlsichtige und ein Graudruck aus beiden Flaggen machen. Sie sind keine Prüfung des Sehens. Grautöne unterscheiden sich um einen Farbabstand, ΔE00: je größer, desto leichter zu unterscheiden.",
  "seen.greys": "Abstand der beiden nächsten Grautöne",
  "seen.clarity": "Klarheit der ganzen Flagge",
  "seen.looks": "{name} erscheint als {seen}",
  "seen.kept": "{names} {count, plural, one {behält den Namen} other {behalten ihre Namen}}",
  "seen.inGrey": "{name} in Grau",
  "seen.byProtan": "{name}, protan gesehen",
  "seen.byDeutan": "{name}, deutan gesehen",
  "seen.byTritan": "{name}, tritan gesehen",
};
