// Floor 7. German: how to cite a study, and the stamp of its state.
import type { In } from "../en/all.ts";
import type { refer as english } from "../en/refer.ts";

export const refer: In<typeof english> = {
  "refer.heading": "Zitierweise",
  "refer.copyText": "Text kopieren",
  "refer.copyBibtex": "BibTeX kopieren",
  "refer.copied": "Kopiert.",
  "refer.notCopied": "Der Browser hat es nicht erlaubt.",
  "refer.bibtexAndStamp": "BibTeX und wozu der Stempel dient",
  "refer.stamp":
    "Stempel <stamp></stamp>: ein kurzes Kennzeichen der Zeichnung, der Änderung und des Maßes. Über <link>eine Adresse mit dem Stempel</link> erfahren spätere Leser, ob sich seither geändert hat, was gemessen wird. Die Worte einer Studie können sich ohne ihn ändern.",
  "refer.changed":
    "<strong>Diese Studie hat sich seither geändert.</strong> Der Verweis, dem Sie gefolgt sind, galt einem früheren Stand mit dem Stempel <came></came>. Was jetzt hier steht, hat den Stempel <now></now>.",
  "refer.study": "inoffizielle Neuentwurfsstudie einer Flagge",
  "refer.edge": "eine Kante einer inoffiziellen Neuentwurfsstudie einer Flagge",
  "refer.series": "Reihe inoffizieller Neuentwurfsstudien von Flaggen",
  "refer.title": "„{title}“",
};
