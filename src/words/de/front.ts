// Floor 7. German: the front page.
import type { In } from "../en/all.ts";
import type { front as english } from "../en/front.ts";

export const front: In<typeof english> = {
  "front.nominate": "Eine Flagge, die eine Studie verdient? <name>Nennen und sagen, warum</name>",
  "front.empty":
    "Hier ist noch nichts veröffentlicht. Die erste Studie wird auf dieser Seite stehen; bis dahin sagt <method>die Methode</method>, wie sie gemessen wird.",
  "front.earlier": "Frühere Studien",
  "front.edgeless": "Ohne Kante, die zu messen wäre: <list></list>.",
  "front.more": "{count, plural, one {# weitere} other {# weitere}}",
};
