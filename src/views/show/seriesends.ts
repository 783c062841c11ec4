// Floor 8. The first and the last step of a series: its title over its flags as they are, and its question over its redesigns.
import type { Series } from "../../content/series/series.ts";
import type { Gallery } from "../../content/study/study.ts";
import type { Format } from "../../words/format.ts";
import { firstSentences, readProse } from "../renderprose.ts";
import { type SeriesItem, shorten } from "../series/seriespage.ts";
import type { ShowStep } from "./step.ts";

/** Most characters of an opening on a projector (our own judgement: some two lines). */
const mostOpening = 200;

/** All its flags as they are, under its title, with who made it and how they begin. */
export function tellOpening(
  { title, authors, body, show }: Series,
  items: readonly SeriesItem[],
  { language }: Gallery,
  format: Format,
): ShowStep {
  const by = authors.length === 0 ? undefined : format.list(authors);
  const opening = firstSentences(body, language, mostOpening) || undefined;
  return {
    anchor: "the-opening",
    name: "the-opening",
    heading: title,
    says:
      by !== undefined && opening !== undefined
        ? format.say("show.opening", { authors: by, opening })
        : (by ?? opening),
    picture: { kind: "strip", plates: items.map((item) => shorten(item, 0).plate) },
    speech: `${title}. ${readProse(body)}`.trim(),
    note: show?.notes?.["the-opening"],
  };
}

/** Its redesigns under its question. */
export function tellClosing(
  { closing, show }: Series,
  items: readonly SeriesItem[],
  { say }: Format,
): ShowStep {
  const heading = closing ?? say("show.closing");
  return {
    anchor: "the-closing",
    name: "the-closing",
    heading,
    says: say("show.redesigns"),
    picture: { kind: "strip", plates: items.map((item) => shorten(item).plate) },
    speech: heading,
    note: show?.notes?.["the-closing"],
  };
}
