// Floor 5. A charge that runs into a stripe or field of its own paint: no region of its own, so no focus was found.

import type { Problem } from "../problem/problem.ts";
import { quoteText } from "../problem/quote.ts";
import { findRegions } from "../regions/component.ts";
import { findRuns } from "../regions/runs.ts";
import type { Instance } from "../svg/instance.ts";
import { findPaints } from "../svg/paint.ts";
import { renderMap } from "./map.ts";
import type { OpenedDrawing } from "./open.ts";
import type { Study } from "./study.ts";

/** Shares of the flag between which a shape may be a charge; the upper is that of found ones (our own judgement). */
const [smallest, largest] = [0.004, 0.35] as const;

/** Most shapes that are looked at, topmost first: each is a rendering. */
const mostShapes = 24;

/**
 * Where no focus was found, looks for a shape that lies inside the flag and shows against another paint, and that meets
 * an area of its own paint which reaches the border. Returns the topmost of them, or undefined.
 */
export async function findHiddenCharge({
  resolved,
  viewing,
  inspection,
}: OpenedDrawing): Promise<Instance | undefined> {
  if (inspection.table.focus.source !== "none") return undefined;
  const { scene } = inspection.ground;
  const { uses } = scene.shapes;
  const isShared = (key: string): boolean => uses.filter((use) => use.key === key).length > 1;
  const shared = uses.filter(({ key, property }) => property === "fill" && isShared(key));
  for (const { instance } of shared.slice(-mostShapes).reverse()) {
    const shapes = findPaints(resolved, { instances: new Set([instance]), replace: "any" });
    const map = await renderMap(shapes, scene.map, viewing.render);
    const { regions } = findRegions(findRuns(map));
    const labelOf = (key: string): number => shapes.paints.findIndex((paint) => paint.key === key) + 1;
    const own = shapes.paints.find(({ selected }) => selected)?.key ?? "";
    const [part, whole] = [labelOf(own), labelOf(own.replace(/ s$/, ""))];
    const parts = regions.filter(({ label }) => label === part);
    const pixels = parts.reduce((sum, region) => sum + region.pixels, 0) / scene.areas.flagPixels;
    if (parts.length === 0 || pixels < smallest || pixels > largest) continue;
    if (parts.some(({ touchesOutside }) => touchesOutside)) continue;
    const around = parts.flatMap(({ neighbours }) =>
      [...neighbours].flatMap((index) => regions[index] ?? []),
    );
    const runsInto = around.some(({ label, touchesOutside }) => label === whole && touchesOutside);
    if (runsInto && around.some(({ label }) => label !== whole && label !== part)) return instance;
  }
  return undefined;
}

/** Returns what names a charge in a study: `focus: { select: "#anchor" }`, or its colour where it has no id. */
export function proposeFocus({ element, fill }: Instance): string {
  const id = element.attributes["id"];
  const colour = fill.kind === "colour" ? fill.hex : "#7a1020";
  return id === undefined ? `focus: { colour: "${colour}" }` : `focus: { select: "#${id}" }`;
}

/** Returns the warning that the focus of `study` has to be named, with what to type. */
export function askForFocus(charge: Instance, study: Study): Problem {
  const { element } = charge;
  const id = element.attributes["id"];
  const which = id === undefined ? `A ${element.name}` : `The charge ${quoteText(`#${id}`)}`;
  const own = id === undefined ? "\nBetter, give the charge an id in the drawing and select that." : "";
  return {
    rule: "study/focus-hidden",
    severity: "warning",
    file: study.file,
    ...study.places.get("original"),
    reason: `${which} runs into an area of its own colour, so no charge was found and nothing counts as the focus.`,
    hint: `Name it: ${proposeFocus(charge)}${own}`,
  };
}
