// Floor 8. The steps about the flag as it is: what has to be seen on it, its weakest edge, and what is left from afar.

import { clearFrom, gradeOf } from "../../colour/contrast.ts";
import { sayLasting } from "../../words/fromafar.ts";
import { gradeIds } from "../../words/gradeword.ts";
import { capitalise, formatNames } from "../../words/phrase.ts";
import { sayPercent } from "../../words/spokennumber.ts";
import { linkFrom } from "../address.ts";
import { cropFiles, placeEdges } from "../edge/edgeaddress.ts";
import { type Plate, presentPlate } from "../plate.ts";
import { formatStudyPath } from "../status.ts";
import { findPlace } from "../study/edgedetail.ts";
import { presentLocator } from "../study/edgemap.ts";
import { type Ground, type ShowStep, type Told, tellStep } from "./step.ts";

/** What has to be seen, its weakest edge, and what is left from afar. */
export function tellLook(ground: Ground): readonly Told[] {
  const { result, format, figures } = ground;
  const { say } = format;
  const { before, edges } = result.comparison;
  const afar = figures.strip.steps.map(({ distance, plates: [plate] }) => ({
    from: distance,
    says: say("show.fromStill", { from: distance }),
    plate,
  }));
  const map: ShowStep["picture"] = { kind: "map", map: figures.edgeMap };
  const hasFocus = before.focus.source !== "none";
  const area = say("show.focusSaid", { share: sayPercent(100 * before.focus.share, format) });
  const lasting = hasFocus ? sayLasting(before.focus, format) : say("show.afarSaid");
  return [
    ...(hasFocus
      ? [tellStep("what-has-to-be-seen", say("show.focus"), map, say("show.focusKey"), area)]
      : []),
    ...tellWeakest(ground),
    ...(edges.length > 0
      ? [
          tellStep(
            "from-afar",
            say("show.afar"),
            { kind: "afar", steps: afar },
            say("show.original"),
            lasting,
          ),
        ]
      : []),
  ];
}

/** The weakest edge of the original, on the flag and close by; nothing where it has none, or no page with that picture. */
function tellWeakest({ result, format, path }: Ground): readonly Told[] {
  const { say } = format;
  const { study, comparison } = result;
  const { weakestEdge } = comparison.before;
  const edge = weakestEdge && comparison.edges.find(({ a, b }) => a === weakestEdge.a && b === weakestEdge.b);
  const frame = edge ? findPlace(result, edge) : undefined;
  if (!edge || frame === undefined) return [];
  const folder = placeEdges(study.slug, comparison)(edge);
  if (!folder.endsWith("/")) return [];
  const link = linkFrom(path);
  const [first, second] = edge.names[0];
  const names = formatNames(edge.names[0], format);
  const plate: Plate = {
    ...presentPlate(
      say("show.ofOriginal"),
      link(`${folder}${cropFiles.original}`),
      comparison.before,
      format,
    ),
    width: 900,
    height: 600,
    alt: say("show.weakestShown", { names }),
    fit: "wide",
  };
  const locator = presentLocator(
    result,
    edge,
    frame,
    link(`${formatStudyPath(study.slug)}original.svg`),
    format,
  );
  const weakest = weakestEdge?.contrast ?? 0;
  const contrast = format.contrast(weakest);
  return [
    tellStep(
      "the-weakest-edge",
      say("show.weakest"),
      { kind: "edge", names, locator, plate },
      capitalise(say("show.weakestKey", { names, contrast })),
      say("show.weakestSaid", {
        first,
        second,
        grade: say(gradeIds[gradeOf(weakest)]),
        contrast,
        clear: format.percent(clearFrom),
      }),
    ),
  ];
}
