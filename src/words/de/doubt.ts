// Floor 7. German: what makes the figures of a drawing less certain.
import type { In } from "../en/all.ts";
import type { doubt as english } from "../en/doubt.ts";

export const doubt: In<typeof english> = {
  "doubt.joined":
    "Die Zeichnung hat mehr Farben, als einzeln gemessen werden: {count, plural, one {Die am wenigsten sichtbare wird} other {Die # am wenigsten sichtbaren werden}} mit einer ähnlichen gemessen, die mehr zu sehen ist, oder gemeinsam als „{name}“.",
  "doubt.faint":
    "{count, plural, one {Eine Form deckt zu weniger als der Hälfte und wird nicht mitgemessen.} other {# Formen decken zu weniger als der Hälfte und werden nicht mitgemessen.}}",
  "doubt.inexact":
    "Nur {share} der Zeichnung ließen sich genau unterscheiden; ihre Zahlen sind weniger sicher.",
  "doubt.nearLimit": "Nahe der Sehgrenze: Teile in {names}.",
  "doubt.effect": "Die Zeichnung enthält, was hier weder gezeigt noch gemessen wird: {looks}.",
};
