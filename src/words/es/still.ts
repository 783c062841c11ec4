// Floor 7. Spanish: words in pictures that are taken away, what is offered of them, and the speaker’s script.
import type { In } from "../en/all.ts";
import type { still as english } from "../en/still.ts";

export const still: In<typeof english> = {
  "still.mark": "Estudio no oficial, para discutir",
  "still.unofficial": "Estudio no oficial: una propuesta para discutir, no una bandera en uso.",
  "still.split": "El original, y su rediseño como estudio no oficial",
  "still.original": "Original",
  "still.redesign": "Rediseño",
  "still.figure": "{what}: {title}",
  "still.move": "de {before} a {after}",
  "still.seen": "{heading}: {measure} de {before} a {after}",
  "still.merges": "se funde",
  "still.swap": "La alternancia, WebP",
  "still.thumbnail": "Miniatura",
  "still.map": "Mapa de límites, SVG",
  "still.ruler": "Regla, SVG",
  "still.matrix": "Tabla, SVG",
  "still.script": "Qué decir, Markdown",
  "still.scriptStep": "{number}. {heading}",
  "still.scriptPicture": "Imagen: {file}",
  "still.scriptOn": "En ella: {text}",
  "still.scriptSay": "Decir: {text}",
  "still.scriptNote": "Nota: {text}",
};
