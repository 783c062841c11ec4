// Floor 7. German: names of colours, and a flag told by them.
import type { In } from "../en/all.ts";
import type { colour as english } from "../en/colour.ts";

export const colour: In<typeof english> = {
  "colour.black": "Schwarz",
  "colour.white": "Weiß",
  "colour.grey": "Grau",
  "colour.red": "Rot",
  "colour.orange": "Orange",
  "colour.yellow": "Gelb",
  "colour.green": "Grün",
  "colour.blue": "Blau",
  "colour.purple": "Violett",
  "colour.pink": "Rosa",
  "colour.brown": "Braun",
  "colour.dark":
    "{word, select, grey {{degree, select, very {sehr dunkles {colour}} less {weniger dunkles {colour}} slightlyLess {etwas weniger dunkles {colour}} muchLess {viel weniger dunkles {colour}} other {Dunkelgrau}}} red {{degree, select, very {sehr dunkles {colour}} less {weniger dunkles {colour}} slightlyLess {etwas weniger dunkles {colour}} muchLess {viel weniger dunkles {colour}} other {Dunkelrot}}} orange {{degree, select, very {sehr dunkles {colour}} less {weniger dunkles {colour}} slightlyLess {etwas weniger dunkles {colour}} muchLess {viel weniger dunkles {colour}} other {Dunkelorange}}} yellow {{degree, select, very {sehr dunkles {colour}} less {weniger dunkles {colour}} slightlyLess {etwas weniger dunkles {colour}} muchLess {viel weniger dunkles {colour}} other {Dunkelgelb}}} green {{degree, select, very {sehr dunkles {colour}} less {weniger dunkles {colour}} slightlyLess {etwas weniger dunkles {colour}} muchLess {viel weniger dunkles {colour}} other {Dunkelgrün}}} blue {{degree, select, very {sehr dunkles {colour}} less {weniger dunkles {colour}} slightlyLess {etwas weniger dunkles {colour}} muchLess {viel weniger dunkles {colour}} other {Dunkelblau}}} purple {{degree, select, very {sehr dunkles {colour}} less {weniger dunkles {colour}} slightlyLess {etwas weniger dunkles {colour}} muchLess {viel weniger dunkles {colour}} other {Dunkelviolett}}} pink {{degree, select, very {sehr dunkles {colour}} less {weniger dunkles {colour}} slightlyLess {etwas weniger dunkles {colour}} muchLess {viel weniger dunkles {colour}} other {Dunkelrosa}}} brown {{degree, select, very {sehr dunkles {colour}} less {weniger dunkles {colour}} slightlyLess {etwas weniger dunkles {colour}} muchLess {viel weniger dunkles {colour}} other {Dunkelbraun}}} other {{degree, select, very {sehr dunkles {colour}} less {weniger dunkles {colour}} slightlyLess {etwas weniger dunkles {colour}} muchLess {viel weniger dunkles {colour}} other {dunkles {colour}}}}}",
  "colour.light":
    "{word, select, grey {{degree, select, very {sehr helles {colour}} less {weniger helles {colour}} slightlyLess {etwas weniger helles {colour}} muchLess {viel weniger helles {colour}} other {Hellgrau}}} red {{degree, select, very {sehr helles {colour}} less {weniger helles {colour}} slightlyLess {etwas weniger helles {colour}} muchLess {viel weniger helles {colour}} other {Hellrot}}} orange {{degree, select, very {sehr helles {colour}} less {weniger helles {colour}} slightlyLess {etwas weniger helles {colour}} muchLess {viel weniger helles {colour}} other {Hellorange}}} yellow {{degree, select, very {sehr helles {colour}} less {weniger helles {colour}} slightlyLess {etwas weniger helles {colour}} muchLess {viel weniger helles {colour}} other {Hellgelb}}} green {{degree, select, very {sehr helles {colour}} less {weniger helles {colour}} slightlyLess {etwas weniger helles {colour}} muchLess {viel weniger helles {colour}} other {Hellgrün}}} blue {{degree, select, very {sehr helles {colour}} less {weniger helles {colour}} slightlyLess {etwas weniger helles {colour}} muchLess {viel weniger helles {colour}} other {Hellblau}}} purple {{degree, select, very {sehr helles {colour}} less {weniger helles {colour}} slightlyLess {etwas weniger helles {colour}} muchLess {viel weniger helles {colour}} other {Hellviolett}}} pink {{degree, select, very {sehr helles {colour}} less {weniger helles {colour}} slightlyLess {etwas weniger helles {colour}} muchLess {viel weniger helles {colour}} other {Hellrosa}}} brown {{degree, select, very {sehr helles {colour}} less {weniger helles {colour}} slightlyLess {etwas weniger helles {colour}} muchLess {viel weniger helles {colour}} other {Hellbraun}}} other {{degree, select, very {sehr helles {colour}} less {weniger helles {colour}} slightlyLess {etwas weniger helles {colour}} muchLess {viel weniger helles {colour}} other {helles {colour}}}}}",
  "colour.darkest": "dunkelstes {colour}",
  "colour.lightest": "hellstes {colour}",
  "colour.darker":
    "{degree, select, slightly {etwas dunkleres {colour}} much {viel dunkleres {colour}} other {dunkleres {colour}}}",
  "colour.lighter":
    "{degree, select, slightly {etwas helleres {colour}} much {viel helleres {colour}} other {helleres {colour}}}",
  "colour.deeper":
    "{degree, select, slightly {etwas satteres {colour}} much {viel satteres {colour}} other {satteres {colour}}}",
  "colour.greyer":
    "{degree, select, slightly {etwas graueres {colour}} much {viel graueres {colour}} other {graueres {colour}}}",
  "colour.warmer":
    "{degree, select, slightly {etwas wärmeres {colour}} much {viel wärmeres {colour}} other {wärmeres {colour}}}",
  "colour.bluer":
    "{degree, select, slightly {etwas blaueres {colour}} much {viel blaueres {colour}} other {blaueres {colour}}}",
  "colour.yellower":
    "{degree, select, slightly {etwas gelberes {colour}} much {viel gelberes {colour}} other {gelberes {colour}}}",
  "colour.redder":
    "{degree, select, slightly {etwas röteres {colour}} much {viel röteres {colour}} other {röteres {colour}}}",
  "colour.greener":
    "{degree, select, slightly {etwas grüneres {colour}} much {viel grüneres {colour}} other {grüneres {colour}}}",
  "colour.purpler":
    "{degree, select, slightly {etwas violetteres {colour}} much {viel violetteres {colour}} other {violetteres {colour}}}",
  "colour.reddish":
    "{degree, select, slightly {etwas rötliches {colour}} much {deutlich rötliches {colour}} very {sehr rötliches {colour}} other {rötliches {colour}}}",
  "colour.brownish":
    "{degree, select, slightly {etwas bräunliches {colour}} much {deutlich bräunliches {colour}} very {sehr bräunliches {colour}} other {bräunliches {colour}}}",
  "colour.yellowish":
    "{degree, select, slightly {etwas gelbliches {colour}} much {deutlich gelbliches {colour}} very {sehr gelbliches {colour}} other {gelbliches {colour}}}",
  "colour.greenish":
    "{degree, select, slightly {etwas grünliches {colour}} much {deutlich grünliches {colour}} very {sehr grünliches {colour}} other {grünliches {colour}}}",
  "colour.bluish":
    "{degree, select, slightly {etwas bläuliches {colour}} much {deutlich bläuliches {colour}} very {sehr bläuliches {colour}} other {bläuliches {colour}}}",
  "colour.purplish":
    "{degree, select, slightly {etwas violettstichiges {colour}} much {deutlich violettstichiges {colour}} very {sehr violettstichiges {colour}} other {violettstichiges {colour}}}",
  "colour.greyish":
    "{degree, select, slightly {etwas gräuliches {colour}} much {deutlich gräuliches {colour}} very {sehr gräuliches {colour}} other {gräuliches {colour}}}",
  "colour.warm":
    "{degree, select, slightly {etwas warmes {colour}} much {deutlich warmes {colour}} very {sehr warmes {colour}} other {warmes {colour}}}",
  "colour.neutral":
    "{degree, select, slightly {fast neutrales {colour}} much {ganz neutrales {colour}} very {ganz neutrales {colour}} other {neutrales {colour}}}",
  "colour.deep": "{word, select, black {Tiefschwarz} other {tiefes {colour}}}",
  "colour.mid": "mittleres {colour}",
  "colour.off":
    "{word, select, white {gebrochenes Weiß} black {gebrochenes Schwarz} other {gebrochenes {colour}}}",
  "colour.charcoal": "kohlefarbenes {colour}",
  "colour.dull": "stumpfes {colour}",
  "colour.jet": "pechfarbenes {colour}",
  "colour.bright": "strahlendes {colour}",
  "colour.pure": "reines {colour}",
  "colour.nth":
    "{place, select, second {zweites {colour}} third {drittes {colour}} fourth {viertes {colour}} fifth {fünftes {colour}} sixth {sechstes {colour}} seventh {siebtes {colour}} eighth {achtes {colour}} ninth {neuntes {colour}} other {zehntes {colour}}}",
  "colour.numbered": "{colour} {number}",
  "colour.others": "weitere Farben",
  "colour.selectedPart": "{colour}, ausgewählter Teil",
  "colour.selected": "das ausgewählte {colour}",
  "colour.empty": "eine leere Zeichnung",
  "colour.allOver": "nur {colour}",
  "colour.mostly": "vor allem {colour}, dazu {others}",
};
