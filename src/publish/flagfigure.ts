// Floor 9. Pictures of a study for a page of somebody else's site, as HTML.
import type { Verdict } from "../measure/comparison.ts";
import { quoteText } from "../problem/quote.ts";
import { formatRelative } from "../views/address.ts";
import { lessonFiles } from "../views/show/lessonfile.ts";
import { formatStudyPath } from "../views/status.ts";
import type { WordId } from "../words/en/all.ts";
import type { Format } from "../words/format.ts";
import { formatTitle } from "../words/title.ts";

const captionIds = {
  clearer: "feed.clearer",
  "clearer, at a price": "feed.atAPrice",
  mixed: "feed.mixed",
  "less clear": "feed.lessClear",
  "no gain": "feed.noGain",
} as const satisfies Record<Verdict, WordId>;

type Caption = (typeof captionIds)[Verdict];

/** What is used of a study as `studies.json` has it. */
export interface FlagRecord {
  readonly slug: string;
  readonly title: string;
  /** Absent where the study names no flag. */
  readonly flag?: string;
  readonly verdict: Verdict;
}

/** Of which study, and what of it: `pair`, `ruler`, or `edge` with the two colours as its address has them. */
interface Asked {
  /** The page that shows it, and the gallery, as paths of the site. */
  readonly from: string;
  readonly at: string;
  readonly slug: string;
  readonly what?: string | undefined;
  readonly edge?: string | undefined;
}

/** What was published: the studies, and the paths of all files. */
interface Published {
  readonly format: Format;
  readonly studies: readonly FlagRecord[];
  readonly files: ReadonlySet<string>;
}

/** Returns a figure whose caption leads to the study. Throws where there is no such study, or nothing of that kind. */
export function writeFlagFigure(
  { format, studies, files }: Published,
  { from, at, slug, what = "pair", edge }: Asked,
): string {
  const study = studies.find((each) => each.slug === slug);
  if (study === undefined) {
    const known = studies.map((each) => each.slug).join(", ");
    throw new Error(`flag: no study ${quoteText(slug)} was published; those that were: ${known}.`);
  }
  const page = formatStudyPath(slug).slice(1);
  const pictures = listPictures(page, what, edge);
  const missing = pictures.find((file) => !files.has(file));
  if (pictures.length === 0 || missing !== undefined)
    throw new Error(
      missing === undefined
        ? `flag: ${quoteText(what)} is none of pair, ruler, edge.`
        : `flag: ${quoteText(missing)} was not published${what === "ruler" ? "; a flag without edges has none" : ""}.`,
    );
  const name = formatTitle(study, format);
  const { flag = study.title } = study;
  const names =
    pictures.length === 1
      ? [name]
      : [format.say("feed.flagToday", { flag }), format.say("feed.flagRedesign", { flag })];
  const shown = pictures.map(
    (file, index) =>
      `<img src="${escapeText(formatRelative(from, at + file))}" alt="${escapeText(names[index] ?? name)}">`,
  );
  const link = (inside: readonly unknown[]) => ({
    html: `<a href="${escapeText(formatRelative(from, at + page))}">${escapeText(inside.join(""))}</a>`,
  });
  const caption = format.say
    .parts<Caption, ReturnType<typeof link>>(captionIds[study.verdict], { a: link }, { name })
    .map((part) => (typeof part === "string" ? escapeText(part) : part.html));
  return `<figure class="counterchange-${what}">${shown.join("")}<figcaption>${caption.join("")}</figcaption></figure>`;
}

function listPictures(page: string, what: string, edge: string | undefined): readonly string[] {
  const folder = edge === undefined ? page : `${page}edges/${edge}/`;
  if (what === "ruler") return [`${page}${lessonFiles.ruler}`];
  return what === (edge === undefined ? "pair" : "edge")
    ? [`${folder}original.svg`, `${folder}redesign.svg`]
    : [];
}

function escapeText(text: string): string {
  return text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/"/g, "&quot;");
}
