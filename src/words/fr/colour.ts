// Floor 7. French: names of colours, and a flag told by them.
import type { In } from "../en/all.ts";
import type { colour as english } from "../en/colour.ts";

export const colour: In<typeof english> = {
  "colour.black": "noir",
  "colour.white": "blanc",
  "colour.grey": "gris",
  "colour.red": "rouge",
  "colour.orange": "orange",
  "colour.yellow": "jaune",
  "colour.green": "vert",
  "colour.blue": "bleu",
  "colour.purple": "violet",
  "colour.pink": "rose",
  "colour.brown": "brun",
  "colour.dark":
    "{word, select, other {{degree, select, very {{colour} très foncé} less {{colour} moins foncé} slightlyLess {{colour} un peu moins foncé} muchLess {{colour} bien moins foncé} other {{colour} foncé}}}}",
  "colour.light":
    "{word, select, other {{degree, select, very {{colour} très clair} less {{colour} moins clair} slightlyLess {{colour} un peu moins clair} muchLess {{colour} bien moins clair} other {{colour} clair}}}}",
  "colour.darkest": "{colour} le plus foncé",
  "colour.lightest": "{colour} le plus clair",
  "colour.darker":
    "{degree, select, slightly {{colour} un peu plus foncé} much {{colour} bien plus foncé} other {{colour} plus foncé}}",
  "colour.lighter":
    "{degree, select, slightly {{colour} un peu plus clair} much {{colour} bien plus clair} other {{colour} plus clair}}",
  "colour.deeper":
    "{degree, select, slightly {{colour} un peu plus profond} much {{colour} bien plus profond} other {{colour} plus profond}}",
  "colour.greyer":
    "{degree, select, slightly {{colour} un peu plus gris} much {{colour} bien plus gris} other {{colour} plus gris}}",
  "colour.warmer":
    "{degree, select, slightly {{colour} un peu plus chaud} much {{colour} bien plus chaud} other {{colour} plus chaud}}",
  "colour.bluer":
    "{degree, select, slightly {{colour} un peu plus bleu} much {{colour} bien plus bleu} other {{colour} plus bleu}}",
  "colour.yellower":
    "{degree, select, slightly {{colour} un peu plus jaune} much {{colour} bien plus jaune} other {{colour} plus jaune}}",
  "colour.redder":
    "{degree, select, slightly {{colour} un peu plus rouge} much {{colour} bien plus rouge} other {{colour} plus rouge}}",
  "colour.greener":
    "{degree, select, slightly {{colour} un peu plus vert} much {{colour} bien plus vert} other {{colour} plus vert}}",
  "colour.purpler":
    "{degree, select, slightly {{colour} un peu plus violet} much {{colour} bien plus violet} other {{colour} plus violet}}",
  "colour.reddish":
    "{degree, select, slightly {{colour} un peu rougeâtre} much {{colour} bien rougeâtre} very {{colour} très rougeâtre} other {{colour} rougeâtre}}",
  "colour.brownish":
    "{degree, select, slightly {{colour} un peu brunâtre} much {{colour} bien brunâtre} very {{colour} très brunâtre} other {{colour} brunâtre}}",
  "colour.yellowish":
    "{degree, select, slightly {{colour} un peu jaunâtre} much {{colour} bien jaunâtre} very {{colour} très jaunâtre} other {{colour} jaunâtre}}",
  "colour.greenish":
    "{degree, select, slightly {{colour} un peu verdâtre} much {{colour} bien verdâtre} very {{colour} très verdâtre} other {{colour} verdâtre}}",
  "colour.bluish":
    "{degree, select, slightly {{colour} un peu bleuâtre} much {{colour} bien bleuâtre} very {{colour} très bleuâtre} other {{colour} bleuâtre}}",
  "colour.purplish":
    "{degree, select, slightly {{colour} un peu violacé} much {{colour} bien violacé} very {{colour} très violacé} other {{colour} violacé}}",
  "colour.greyish":
    "{degree, select, slightly {{colour} un peu grisâtre} much {{colour} bien grisâtre} very {{colour} très grisâtre} other {{colour} grisâtre}}",
  "colour.warm":
    "{degree, select, slightly {{colour} un peu chaud} much {{colour} bien chaud} very {{colour} très chaud} other {{colour} chaud}}",
  "colour.neutral":
    "{degree, select, slightly {{colour} un peu neutre} much {{colour} bien neutre} very {{colour} très neutre} other {{colour} neutre}}",
  "colour.deep": "{word, select, other {{colour} profond}}",
  "colour.mid": "{colour} moyen",
  "colour.off": "{word, select, white {blanc cassé} other {presque {colour}}}",
  "colour.charcoal": "{colour} charbon",
  "colour.dull": "{colour} terne",
  "colour.jet": "{colour} de jais",
  "colour.bright": "{colour} éclatant",
  "colour.pure": "{colour} pur",
  "colour.nth":
    "{place, select, second {deuxième {colour}} third {troisième {colour}} fourth {quatrième {colour}} fifth {cinquième {colour}} sixth {sixième {colour}} seventh {septième {colour}} eighth {huitième {colour}} ninth {neuvième {colour}} other {dixième {colour}}}",
  "colour.numbered": "{colour} {number}",
  "colour.others": "autres couleurs",
  "colour.selectedPart": "{colour}, partie choisie",
  "colour.selected": "le {colour} choisi",
  "colour.empty": "un dessin vide",
  "colour.allOver": "{colour} uni",
  "colour.mostly": "surtout {colour}, avec {others}",
};
