// Floor 8. The steps of one study for a projector: one idea each, as its author wants them, with what a speaker says to each.
import type { StudyResult } from "../../analysis/result.ts";
import { clearFrom, gradeOf } from "../../colour/contrast.ts";
import { showSteps } from "../../content/study/showstep.ts";
import type { Gallery } from "../../content/study/study.ts";
import type { Format } from "../../words/format.ts";
import { sayLasting } from "../../words/fromafar.ts";
import { sayEdges, sayPercent, sayPrice } from "../../words/spokennumber.ts";
import { describeChange, describeVerdict } from "../../words/verdict.ts";
import { linkFrom } from "../address.ts";
import { cropFiles, placeEdges } from "../edge/edgeaddress.ts";
import { formatNames } from "../edge/edgerow.ts";
import { type DrawnPlate, type Plate, presentPlate } from "../plate.ts";
import { firstSentence } from "../renderprose.ts";
import { formatStudyPath } from "../status.ts";
import type { RulerView } from "../study/contrastruler.ts";
import { findPlace } from "../study/edgedetail.ts";
import { type EdgeMapView, type LocatorView, presentLocator } from "../study/edgemap.ts";
import { type ColourView, type NotedView, presentOptions } from "../study/optionsview.ts";
import { presentFigures, type StudyPage } from "../study/studypage.ts";

/** One step. `anchor` is its address on the page, `name` what `show` in a study calls it; `says` stands under the picture. */
export interface ShowStep {
  readonly anchor: string;
  readonly name: string;
  readonly heading: string;
  readonly says: string | undefined;
  readonly picture: ShowPicture;
  /** What a speaker may say, with numbers in words; and what the author reminds them of. Neither is shown on a projector. */
  readonly speech: string;
  readonly note: string | undefined;
}

export type ShowPicture =
  | { readonly kind: "flag"; readonly plate: Plate }
  | { readonly kind: "edge"; readonly locator: LocatorView; readonly plate: Plate }
  | { readonly kind: "pair"; readonly plates: readonly [Plate, Plate] }
  | { readonly kind: "strip"; readonly plates: readonly Plate[] }
  | { readonly kind: "map"; readonly map: EdgeMapView }
  | {
      readonly kind: "afar";
      readonly steps: readonly { readonly from: string; readonly plate: DrawnPlate }[];
    }
  | { readonly kind: "colours"; readonly colours: readonly ColourView[] }
  | { readonly kind: "ruler"; readonly ruler: RulerView }
  | { readonly kind: "seen"; readonly seen: StudyPage["seen"] };

const original = "The original";
const redesign = "The redesign, an unofficial study";
const bothNamed = `${original}, and ${redesign.toLowerCase()}`;
const mapKey =
  "Solid lines are clear, dotted lines are hard to see. The band marks what has to be seen before the rest.";
const rulerKey = "Ring: the original. Dot: the redesign.";
/** Said to the step before, where the flag stands there already. */
const stillShown = "Keep it in mind as it is.";
/** Colours of which a step tells; of more, those that gain most (our own judgement, as they have to be read from afar). */
const mostColours = 5;

/** Edges of which it tells; the study's page has all. */
const mostEdges = 6;

type Told = Pick<ShowStep, "name" | "heading" | "picture" | "says" | "speech">;

/** All that is looked up once for the steps of a study. */
interface Ground {
  readonly result: StudyResult;
  readonly format: Format;
  readonly figures: ReturnType<typeof presentFigures>;
  readonly options: ReturnType<typeof presentOptions>;
  readonly path: string;
  /** How its author begins. */
  readonly own: string | undefined;
}

/**
 * The steps of a study on the page at `path`, those that its author leaves, in the author's order. A step that the study has
 * nothing for is left out. `prefix` begins each address.
 */
export function listSteps(
  result: StudyResult,
  gallery: Gallery,
  path: string,
  format: Format,
  prefix = "",
): readonly ShowStep[] {
  const { steps: wanted = showSteps, without = [], notes = {} } = result.study.show ?? {};
  const link = linkFrom(path);
  const told = tellAll({
    result,
    format,
    path,
    own: firstSentence(result.study.body, gallery.language),
    figures: presentFigures(result, gallery, link, format),
    options: presentOptions(result, link, format),
  });
  const isCalled = (step: Told, name: string) => step.name === name || (name === "tried" && isTried(step));
  const chosen = wanted.flatMap((name) => told.filter((step) => isCalled(step, name)));
  return [...new Set(chosen)]
    .filter((step) => !without.some((name) => isCalled(step, name)))
    .map((step, at, all) => ({
      ...step,
      speech: step.name === "before" && all[at - 1]?.name === "the-flag" ? stillShown : step.speech,
      anchor: `${prefix}${step.name}`,
      note: notes[step.name] ?? (step.name === "tried-1" ? notes["tried"] : undefined),
    }));
}

function step(
  name: string,
  heading: string,
  picture: ShowPicture,
  says: string | undefined,
  speech: string,
): Told {
  return { name, heading, picture, says, speech };
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

function isTried({ name }: Told): boolean {
  return name.startsWith("tried-");
}

function tellAll(ground: Ground): readonly Told[] {
  const { result, figures, options } = ground;
  const flag = (plate: Plate): ShowPicture => ({ kind: "flag", plate });
  const [was, is] = figures.plates;
  const name = result.study.flag ?? result.study.title;
  const change = describeChange(result);
  return [
    step(
      "the-flag",
      name,
      flag(was),
      original,
      [`This is ${name.replace(/^The /, "the ")}.`, ground.own ?? ""].join(" ").trim(),
    ),
    ...tellLook(ground),
    ...tellColours(options?.colours ?? [], options?.first ?? ""),
    ...(options?.noted ?? []).map(tellTried),
    step("before", "Before", flag(was), original, "Here once more is the flag as it is."),
    step("after", change, flag(is), redesign, `And now: ${lowerFirst(change)} This is an unofficial study.`),
    ...tellOutcome(ground),
  ];
}

/** What has to be seen, its weakest edge, and what is left from afar. */
function tellLook(ground: Ground): readonly Told[] {
  const { result, format, figures } = ground;
  const { before, edges } = result.comparison;
  const afar = figures.strip.steps.map(({ distance, plates: [plate] }) => ({ from: distance, plate }));
  const map: ShowPicture = { kind: "map", map: figures.edgeMap };
  const hasFocus = before.focus.source !== "none";
  const area = `What has to be seen first is ${sayPercent(100 * before.focus.share, format)} of the flag.`;
  const lasting = hasFocus ? sayLasting(before.focus, format) : "This is how the flag looks from far away.";
  return [
    ...(hasFocus ? [step("what-has-to-be-seen", "What has to be seen", map, mapKey, area)] : []),
    ...tellWeakest(ground),
    ...(edges.length > 0
      ? [step("from-afar", "From afar", { kind: "afar", steps: afar }, original, lasting)]
      : []),
  ];
}

function tellColours(colours: readonly ColourView[], first: string): readonly Told[] {
  if (colours.every(({ best }) => best === undefined)) return [];
  const picture = { kind: "colours", colours: colours.slice(0, mostColours) } as const;
  const says = "The best that the palette has for each colour, and the clarity of the flag with it.";
  return [step("the-colours", "Which colour could change?", picture, says, first)];
}

function tellTried({ id, change, plate, figures, verdict, note = "" }: NotedView): Told {
  const says = `Tried, an unofficial study. ${figures}. ${note}`.trim();
  const speech = `I also tried this: ${lowerFirst(change)} ${verdict} ${figures}.`;
  return step(id, change, { kind: "flag", plate }, says, speech);
}

/** What became of the edges, the price, how others see both flags, and the question. */
function tellOutcome({
  result: { comparison },
  format,
  figures: { ruler, seen, plates },
}: Ground): readonly Told[] {
  const { word, sentence, cost } = describeVerdict(comparison, format);
  const both: ShowPicture = { kind: "pair", plates };
  const [was, is] = comparison.clarity;
  const clarity =
    was === null || is === null
      ? sentence
      : `${word}. The clarity of the original is ${format.number(was, 0)} of 100 points, and that of the redesign ${format.number(is, 0)}. ${sayPrice(comparison.price, format) || cost}`;
  const visions = seen.map(
    ({ heading, explanation, measure, before, after }) =>
      `${heading}, ${explanation}: ${measure} ${before} to ${after}.`,
  );
  return [
    ...(ruler
      ? [
          step(
            "better-and-worse",
            "What got better and worse",
            { kind: "ruler", ruler: { ...ruler, rows: ruler.rows.slice(0, mostEdges) } },
            rulerKey,
            sayEdges(comparison.edges, format),
          ),
        ]
      : []),
    step("the-price", word, both, sentence, clarity.trim()),
    step(
      "to-other-eyes",
      "To colour-blind readers, and in grey",
      { kind: "seen", seen },
      bothNamed,
      `This is about what readers with a colour-vision deficiency see. ${visions.join(" ")}`,
    ),
    step(
      "the-question",
      "Original or redesign?",
      both,
      bothNamed,
      "The original, or the redesign? And what would you say to somebody who chose the other?",
    ),
  ];
}

/** The weakest edge of the original, on the flag and close by; nothing where it has none, or no page with that picture. */
function tellWeakest({ result, format, path }: Ground): readonly Told[] {
  const { study, comparison } = result;
  const { weakestEdge } = comparison.before;
  const edge = weakestEdge && comparison.edges.find(({ a, b }) => a === weakestEdge.a && b === weakestEdge.b);
  const frame = edge ? findPlace(result, edge) : undefined;
  if (!edge || frame === undefined) return [];
  const folder = placeEdges(study.slug, comparison)(edge);
  if (!folder.endsWith("/")) return [];
  const link = linkFrom(path);
  const names = formatNames(edge.names[0]);
  const plate: Plate = {
    ...presentPlate("Original", link(`${folder}${cropFiles.original}`), comparison.before, format),
    width: 900,
    height: 600,
    alt: `The place where ${names} meet`,
    fit: "wide",
  };
  const locator = presentLocator(result, edge, frame, link(`${formatStudyPath(study.slug)}original.svg`));
  const contrast = weakestEdge?.contrast ?? 0;
  return [
    step(
      "the-weakest-edge",
      "Its weakest edge",
      { kind: "edge", locator, plate },
      `${names}: contrast ${format.contrast(contrast)}`,
      `The weakest edge is where ${names.replace(" / ", " meets ")}. It is ${gradeOf(contrast)} (${format.contrast(contrast)}); from ${format.number(clearFrom, 0)} on, an edge is clear.`,
    ),
  ];
}
