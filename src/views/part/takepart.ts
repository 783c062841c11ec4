// Floor 8. The page by which readers propose a study: the files, the letter, and what its script needs to know.
import { parseColour } from "../../colour/colourtext.ts";
import type { Answer } from "../../content/gallery/answerlink.ts";
import type { Gallery } from "../../content/study/study.ts";
import type { Format } from "../../words/format.ts";
import { letterWords, partWords } from "../../words/partwords.ts";
import { formatCanonical } from "../address.ts";
import { type Frame, partPath, presentFrame } from "../pageframe.ts";
import { type AnswerView, presentAnswer } from "../study/answerview.ts";

export interface TakePartPage {
  readonly frame: Frame;
  readonly words: typeof partWords;
  /** A study to be filled in by hand. */
  readonly sample: string;
  /** The way to send it: the study's text stands for {@link studyMark} in the address. */
  readonly send: AnswerView;
  readonly mark: string;
  readonly cloth: Gallery["cloth"];
  readonly palette: readonly { readonly name: string; readonly hex: string }[];
}

/** Stands in the address that sends a study for its text. */
export const studyMark = "study-text";

/** The page, or none where the gallery takes no answers. */
export function presentTakePart(gallery: Gallery, format: Format): readonly TakePartPage[] {
  const { answer } = gallery;
  const about = {
    title: letterWords.title(gallery.title),
    edge: undefined,
    stamped: formatCanonical(gallery.address, partPath) ?? gallery.title,
    numbers: [studyMark],
  };
  const send = presentAnswer(answer, about, format);
  if (answer === undefined || send === undefined) return [];
  const { title, description } = partWords;
  return [
    {
      frame: presentFrame({ path: partPath, title, description, section: undefined }, gallery, format),
      words: partWords,
      sample: formatSample(),
      send: { ...send, words: describeWay(answer) },
      mark: studyMark,
      cloth: gallery.cloth,
      palette: [...gallery.palette].flatMap(([name, colour]) => {
        const hex = parseColour(colour)?.hex;
        return hex === undefined ? [] : [{ name, hex }];
      }),
    },
  ];
}

function describeWay(answer: Answer): string {
  if (answer.way === "mail") return letterWords.byMail(answer.address);
  return letterWords.atForm(new URL(answer.template).host, answer.template.includes("{numbers}"));
}

/** The keys that `studySchema` asks for, and those that nobody should forget. */
function formatSample(): string {
  const { title, flag, before, after, why } = partWords.sample;
  const keys = [
    `title: ${title}`,
    `flag: ${flag}`,
    "original: original.svg",
    `change: { replace: "${before}", with: "${after}" }`,
  ];
  return ["---", ...keys, "---", why, ""].join("\n");
}
