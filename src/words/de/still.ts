// Floor 7. German: words in pictures that are taken away, what is offered of them, and the speaker’s script.
import type { In } from "../en/all.ts";
import type { still as english } from "../en/still.ts";

export const still: In<typeof english> = {
  "still.mark": "Inoffizielle Studie, zur Diskussion",
  "still.unofficial": "Inoffizielle Studie: ein Vorschlag zur Diskussion, keine Flagge in Gebrauch.",
  "still.split": "Das Original und sein Neuentwurf als inoffizielle Studie",
  "still.original": "Original",
  "still.redesign": "Neuentwurf",
  "still.figure": "{what}: {title}",
  "still.move": "von {before} auf {after}",
  "still.seen": "{heading}: {measure} von {before} auf {after}",
  "still.merges": "verschmilzt",
  "still.swap": "Der Wechsel, WebP",
  "still.thumbnail": "Vorschaubild",
  "still.map": "Kantenkarte, SVG",
  "still.ruler": "Lineal, SVG",
  "still.matrix": "Matrix, SVG",
  "still.script": "Was zu sagen ist, Markdown",
  "still.scriptStep": "{number}. {heading}",
  "still.scriptPicture": "Bild: {file}",
  "still.scriptOn": "Darauf: {text}",
  "still.scriptSay": "Zu sagen: {text}",
  "still.scriptNote": "Notiz: {text}",
};
