// Floor 8. The steps about the flag as it is: what has to be seen on it, its weakest edge, and what is left from afar.
import { clearFrom, gradeOf } from "../../colour/contrast.ts";
import { sayLasting } from "../../words/fromafar.ts";
import { sayPercent } from "../../words/spokennumber.ts";
import { linkFrom } from "../address.ts";
import { cropFiles, placeEdges } from "../edge/edgeaddress.ts";
import { formatNames } from "../edge/edgerow.ts";
import { type Plate, presentPlate } from "../plate.ts";
import { formatStudyPath } from "../status.ts";
import { findPlace } from "../study/edgedetail.ts";
import { presentLocator } from "../study/edgemap.ts";
import { type Ground, type ShowStep, sides, type Told, tellStep } from "./step.ts";

const mapKey =
  "Solid lines are clear, dotted lines are hard to see. The band marks what has to be seen before the rest.";

/** What has to be seen, its weakest edge, and what is left from afar. */
export function tellLook(ground: Ground): readonly Told[] {
  const { result, format, figures } = ground;
  const { before, edges } = result.comparison;
  const afar = figures.strip.steps.map(({ distance, plates: [plate] }) => ({ from: distance, plate }));
  const map: ShowStep["picture"] = { kind: "map", map: figures.edgeMap };
  const hasFocus = before.focus.source !== "none";
  const area = `What has to be seen first is ${sayPercent(100 * before.focus.share, format)} of the flag.`;
  const lasting = hasFocus ? sayLasting(before.focus, format) : "This is how the flag looks from far away.";
  return [
    ...(hasFocus ? [tellStep("what-has-to-be-seen", "What has to be seen", map, mapKey, area)] : []),
    ...tellWeakest(ground),
    ...(edges.length > 0
      ? [tellStep("from-afar", "From afar", { kind: "afar", steps: afar }, sides.original, lasting)]
      : []),
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
  const locator = presentLocator(
    result,
    edge,
    frame,
    link(`${formatStudyPath(study.slug)}original.svg`),
    format,
  );
  const contrast = weakestEdge?.contrast ?? 0;
  return [
    tellStep(
      "the-weakest-edge",
      "Its weakest edge",
      { kind: "edge", locator, plate },
      `${names}: contrast ${format.contrast(contrast)}`,
      `The weakest edge is where ${names.replace(" / ", " meets ")}. It is ${gradeOf(contrast)} (${format.contrast(contrast)}); from ${format.number(clearFrom, 0)} on, an edge is clear.`,
    ),
  ];
}
