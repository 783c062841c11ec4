// Floor 7. German: facts beside the numbers of a study.
import type { In } from "../en/all.ts";
import type { facts as english } from "../en/facts.ts";

export const facts: In<typeof english> = {
  "facts.heading": "Tatsachen neben den Zahlen, keine davon eine Wertung",
  "facts.caption": "Tatsachen neben den Zahlen",
  "facts.fact": "Tatsache",
  "facts.clearShareNote":
    "Der Anteil klarer Kanten springt, wo eine Stufe wechselt; er ist eine Angabe und entscheidet nichts. <near>An der Schwelle</near>",
  "facts.hueNote":
    "Nur der Farbton: ein Kontrast unter 30 % bei einem ΔE00 von 20 oder mehr, und unter 10 in Grau. Eine solche Kante vergeht in der Dämmerung, im Graudruck und für viele Farbenfehlsichtige. Die Grenzwerte sind unser eigenes Urteil.",
  "facts.tinctureNote":
    "Tinkturregel: kein Metall auf Metall, keine Farbe auf Farbe; A. C. Fox-Davies, <book>A Complete Guide to Heraldry</book>, 1909, Kapitel VII. Gespaltene und geteilte Felder, Säume und Pelzwerk sind ausgenommen; Pelzwerk wird hier nicht erkannt.",
  "facts.countNote":
    "Farben über einem halben Prozent der Fläche. Das Heft <book>Good Flag, Bad Flag</book>, 2006, rät zu zwei oder drei; die <book>Guiding Principles of Flag Design</book>, 2014, ziehen weniger vor.",
  "facts.more": "Mehr zu diesen Tatsachen",
  "facts.clearShare": "Anteil klarer Kanten: klar oder stark, an der Länge aller Kanten",
  "facts.near": "Stufe an der Schwelle, auf anderem Tuch eine andere",
  "facts.hue": "Nur am Farbton zu unterscheiden",
  "facts.tincture": "Gegen die Tinkturregel",
  "facts.count": "Zahl der Farben; Leitfäden raten zu zwei oder drei",
  "facts.none": "keine",
  "facts.metalOnMetal": "{names}, beides Metall",
  "facts.colourOnColour": "{names}, beides Farbe",
  "facts.ruleKept": "Nichts verstößt dagegen, weder vorher noch nachher.",
  "facts.ruleBroken": "Dagegen verstößt vorher und nachher: {names}.",
  "facts.ruleMoved": "Dagegen verstößt im Original: {was}. Im Neuentwurf: {is}.",
  "facts.exemptFimbriation": "Ausgenommen als Saum: {names}.",
  "facts.exemptField": "Ausgenommen als Teile des Feldes: {names}.",
  "facts.uneven":
    "Eine ungleichmäßige Farbe: {name} reicht von {lightest} bis {darkest}; eine Kante davon ist nur klar, wenn beide Enden es sind.",
};
