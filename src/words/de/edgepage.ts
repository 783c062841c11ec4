// Floor 7. German: the page of one edge.
import type { In } from "../en/all.ts";
import type { edgepage as english } from "../en/edgepage.ts";

export const edgepage: In<typeof english> = {
  "edgepage.place": "Auf der Flagge; der Ausschnitt im Rahmen ist groß gezeigt",
  "edgepage.numbers": "Die Kante in Zahlen",
  "edgepage.elsewhere": "Dieselben zwei Farben in anderen Studien",
  "edgepage.study": "Studie",
  "edgepage.elsewhereNote":
    "Farben mit gleichem Namen müssen nicht dieselben sein: Man vergleiche das Tuch, nicht das Wort.",
  "edgepage.siblings": "Kanten dieser Studie",
  "edgepage.nearLine": "{near}: Auf anderem Tuch wäre sie eine andere. <why>Warum</why>",
  "edgepage.how": "Wie der <contrast>Kontrast</contrast> entsteht und <beside>was daneben steht</beside>.",
  "edgepage.locator": "Wo die Kante liegt",
  "edgepage.locatorSays":
    "Die ursprüngliche Flagge blass, mit den Linien, an denen {one} und {other} aneinanderstoßen.",
  "edgepage.contrast": "Kontrast",
  "edgepage.difference": "Farbabstand",
  "edgepage.sides": "Zuerst das Original, dann der Neuentwurf.",
  "edgepage.seenNote":
    "Grau behält den Kontrast. Der Farbabstand ist ΔE00: je größer, desto leichter zu unterscheiden. Es sind Näherungen für die stärkste Form jeder Sehschwäche und keine Prüfung des Sehens. <how>Wie sie entstehen</how>",
  "edgepage.noEdge": "keine Kante",
  "edgepage.all": "Alle auf einem Lineal",
  "edgepage.of": "Eine Kante der Studie <study>{title}</study>",
  "edgepage.becomes": "{was}, jetzt {is}",
  "edgepage.description": "Eine Kante einer inoffiziellen Neuentwurfsstudie, {outcome}.",
  "edgepage.title": "{edge}, in {study}",
  "edgepage.placeAlt": "{label}: die Stelle, an der {one} und {other} aneinanderstoßen",
  "edgepage.unofficial": "Neuentwurf, inoffizielle Studie",
  "edgepage.bothNear": "Beide Stufen liegen an der Schwelle",
  "edgepage.originalNear": "Die Stufe des Originals liegt an der Schwelle",
  "edgepage.redesignNear": "Die Stufe des Neuentwurfs liegt an der Schwelle",
};
