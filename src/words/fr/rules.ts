// Floor 7. French: what stands around the rules for studies and drawings, which are English in every language.
import type { In } from "../en/all.ts";
import type { rules as english } from "../en/rules.ts";

export const rules: In<typeof english> = {
  "rules.title": "Règles des études et des dessins",
  "rules.description":
    "Ce que signifie chaque message sur une étude ou un dessin, avec un exemple fautif et un exemple juste.",
  "rules.lede":
    "Chaque message sur une étude finit par le nom de sa règle. Voici {count, plural, one {la # règle} other {les # règles}} : ce que chacune signifie, pourquoi elle existe, et un exemple fautif à côté d’un juste. Elles sont en anglais, comme les messages.",
  "rules.note":
    "Chacune est une erreur, qui tient l’étude hors de la galerie jusqu’à correction, sauf si elle est marquée comme avertissement, qui l’y laisse. Les exemples encadrés sont ce qu’on tape, et ont été essayés : le fautif enfreint sa règle et aucune autre, le juste aucune.",
  "rules.find": "Chercher des règles par ces mots",
  "rules.count": "{count, plural, one {# règle} other {# règles}}",
  "rules.found": "{found} sur {count, plural, one {# règle} other {# règles}}",
  "rules.warning": "Avertissement",
  "rules.link": "Lien vers cette règle",
  "rules.wrong": "Fautif",
  "rules.wrongIn": "Fautif, dans {file}",
  "rules.wrongInFolder": "Fautif, dans le dossier de contenu",
  "rules.right": "Juste",
  "rules.rightIn": "Juste, dans {file}",
  "rules.rightInFolder": "Juste, dans le dossier de contenu",
  "rules.leaveOut": "L’omettre.",
};
