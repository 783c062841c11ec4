// Floor 7. German: other single changes of a flag.
import type { In } from "../en/all.ts";
import type { options as english } from "../en/options.ts";

export const options: In<typeof english> = {
  "options.caption": "Der beste Ersatz für jede Farbe",
  "options.byColour": "Der beste Ersatz je Farbe",
  "options.all": "Alle auf einmal",
  "options.how":
    "Jede Farbe der Flagge wird mit der Palette erprobt, mit den anderen Farben der Flagge und mit dem nächsten klaren Ton ihres eigenen Farbtons. Zahlen ordnen sie; das Aussehen ist Sache der Autoren. <how>Wie die Rangfolge entsteht</how>",
  "options.tried": "Auch von den Autoren erprobt",
  "options.changed": "Geänderte Farbe",
  "options.best": "Bester Ersatz",
  "options.ofFocus": "Dessen, was gesehen werden muss",
  "options.worse": "Was schlechter wird",
  "options.share": "{share} der Flagge",
  "options.none": "Keiner, der jeder Figur ihren Umriss lässt.",
  "options.bestLabel": "Bester Ersatz:",
  "options.worseLabel": "Schlechter wird:",
  "options.nothing": "Nichts.",
  "options.beside": "neben <study>{title}</study>",
  "options.title": "Andere einzelne Änderungen",
  "options.description": "Jede andere Änderung einer Farbe neben {title}, gemessen.",
  "options.standing": "Diese Studie: {standing}",
  "options.whole": "Das Original hat eine Klarheit von {clarity}: Keine Änderung kann sie heben.",
  "options.clearest": "Am klarsten ist {is} statt {was}: {clarity}.",
  "options.clearestTried": "Am klarsten ist, was die Autoren erprobt haben, {is} statt {was}: {clarity}.",
  "options.clearestTriedInPart":
    "Am klarsten ist, was die Autoren erprobt haben, {is} statt {was}, nur {part}: {clarity}.",
  "options.clearerTried": "Noch klarer ist, was die Autoren erprobt haben: {is} statt {was}, {clarity}.",
  "options.clearerTriedInPart":
    "Noch klarer ist, was die Autoren erprobt haben: {is} statt {was}, nur {part}, {clarity}.",
  "options.onePart": "ein Teil",
  "options.noneLevel": "Keine Änderung hilft; gleichauf:",
  "options.noneNearest": "Keine Änderung hilft; am nächsten:",
  "options.triedHas": "{name}, von den Autoren erprobt, hat {clarity}",
  "options.option": "Variante",
  "options.triedAlt": "Die Flagge: {is} statt {was}",
  "options.triedAltInPart": "Die Flagge: {is} statt {was}, nur {part}",
  "options.changeInPart": "{after} statt {before}, nur {part}.",
  "options.figure": "Klarheit {clarity}",
  "options.figureAndFocus": "Klarheit {clarity}; Klarheit dessen, was gesehen werden muss, {focus}",
  "options.strengthRises":
    "die Klarheit bleibt, und die Stärke, um die Kanten über klar hinausgehen, steigt von {was} auf {is}",
  "options.strengthFalls":
    "die Klarheit bleibt, und die Stärke, um die Kanten über klar hinausgehen, sinkt von {was} auf {is}",
  "options.verdict": "{verdict}.",
  "options.verdictWhy": "{verdict}: {why}.",
};
