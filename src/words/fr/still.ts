// Floor 7. French: words in pictures that are taken away, what is offered of them, and the speaker’s script.
import type { In } from "../en/all.ts";
import type { still as english } from "../en/still.ts";

export const still: In<typeof english> = {
  "still.mark": "Étude non officielle, à discuter",
  "still.unofficial": "Étude non officielle : une proposition à discuter, non un drapeau en usage.",
  "still.split": "L’original, et son nouveau dessin comme étude non officielle",
  "still.original": "Original",
  "still.redesign": "Nouveau dessin",
  "still.figure": "{what} : {title}",
  "still.move": "{before} → {after}",
  "still.seen": "{heading} : {measure} de {before} à {after}",
  "still.merges": "se fond",
  "still.swap": "L’alternance, WebP",
  "still.thumbnail": "Vignette",
  "still.map": "Carte des limites, SVG",
  "still.ruler": "Règle, SVG",
  "still.matrix": "Tableau, SVG",
  "still.script": "Ce qu’il faut dire, Markdown",
  "still.scriptStep": "{number}. {heading}",
  "still.scriptPicture": "Image : {file}",
  "still.scriptOn": "Dessus : {text}",
  "still.scriptSay": "À dire : {text}",
  "still.scriptNote": "Note : {text}",
};
