// Floor 7. German: the contrast ruler.
import type { In } from "../en/all.ts";
import type { ruler as english } from "../en/ruler.ts";

export const ruler: In<typeof english> = {
  "ruler.caption":
    "Der Kontrast zweier Farben, die aneinanderstoßen: ein Ring für das Original, ein Punkt für den Neuentwurf; dick bei einer langen Kante.",
  "ruler.fallsNote": "Gestrichelt, wo der Kontrast sinkt.",
  "ruler.mergedNote": "Ein Kreuz, wo zwei Farben eine werden.",
  "ruler.outlineNote": "Der Umriss ist der dessen, was gesehen werden muss; er zählt doppelt.",
  "ruler.nearNote": "An der Schwelle: Auf anderem Tuch wäre die Stufe eine andere.",
  "ruler.hueNote":
    "Nur im Farbton: Die beiden unterscheiden sich im Farbton und kaum in der Helligkeit, vergehen also in der Dämmerung und in Grau.",
  "ruler.ladderNote":
    "Daneben, wie viel Licht das Tuch jeder Farbe zurückwirft: Zwei auf gleicher Höhe sind schwer zu unterscheiden.",
  "ruler.edge": "Kante",
  "ruler.contrast": "Kontrast, vom Original zum Neuentwurf",
  "ruler.outcome": "Ergebnis",
  "ruler.guess": "Ihre Schätzung",
  "ruler.title": "Kontrastlineal",
  "ruler.same":
    "{count, plural, one {# Kante, die bleibt, wie sie war} other {# Kanten, die bleiben, wie sie waren}}",
  "ruler.moreMoved":
    "{count, plural, one {# weitere Kante, die sich ändert} other {# weitere Kanten, die sich ändern}}",
  "ruler.moreMovedAndSame": "{moved}, und {same}",
  "ruler.row": "{edge}, {extent}: Kontrast {contrast}, {grades}",
};
