// Floor 8. The page by which readers propose a study: the files, the letter, and what its script needs to know.
import type { Hex } from "../../colour/colour.ts";
import { parseColour } from "../../colour/colourtext.ts";
import type { Answer } from "../../content/gallery/answerlink.ts";
import type { Gallery } from "../../content/study/study.ts";
import { sayColour } from "../../words/colourphrase.ts";
import type { Format } from "../../words/format.ts";
import { formatCanonical } from "../address.ts";
import { type Frame, partPath, presentFrame } from "../pageframe.ts";
import { type AnswerView, presentAnswer } from "../study/answerview.ts";

export interface TakePartPage {
  readonly frame: Frame;
  /** A study to be filled in by hand. */
  readonly sample: string;
  /** The way to send it: the study's text stands for {@link studyMark} in the address. */
  readonly send: AnswerView;
  readonly mark: string;
  readonly cloth: Gallery["cloth"];
  /** `name` is what a study file takes, `label` what the reader sees. */
  readonly palette: readonly { readonly name: string; readonly label: string; readonly hex: Hex }[];
}

/** Stands in the address that sends a study for its text. */
export const studyMark = "study-text";

/** The page, or none where the gallery takes no answers. */
export function presentTakePart(gallery: Gallery, format: Format): readonly TakePartPage[] {
  const { say } = format;
  const { answer } = gallery;
  const about = {
    title: say("part.subject", { gallery: gallery.title }),
    edge: undefined,
    stamped: formatCanonical(gallery.address, partPath) ?? gallery.title,
    numbers: [studyMark],
  };
  const send = presentAnswer(answer, about, format);
  if (answer === undefined || send === undefined) return [];
  return [
    {
      frame: presentFrame(
        {
          path: partPath,
          title: say("part.title"),
          description: say("part.description"),
          section: undefined,
        },
        gallery,
        format,
      ),
      sample: formatSample(format),
      send: { ...send, words: describeWay(answer, format) },
      mark: studyMark,
      cloth: gallery.cloth,
      palette: [...gallery.palette].flatMap(([name, colour]) => {
        const hex = parseColour(colour)?.hex;
        return hex === undefined ? [] : [{ name, label: sayColour(name, format), hex }];
      }),
    },
  ];
}

function describeWay(answer: Answer, { say }: Format): string {
  if (answer.way === "mail") return say("part.byMail", { address: answer.address });
  const { host } = new URL(answer.template);
  return say(answer.template.includes("{numbers}") ? "part.atForm" : "part.atFormEmpty", { host });
}

/** The keys that `studySchema` asks for, and those that nobody should forget. */
function formatSample({ say }: Format): string {
  const keys = [
    `title: ${say("part.sampleTitle")}`,
    `flag: ${say("part.sampleFlag")}`,
    "original: original.svg",
    'change: { replace: "#7a1020", with: "#f4c430" }',
  ];
  return ["---", ...keys, "---", say("part.sampleWhy"), ""].join("\n");
}
