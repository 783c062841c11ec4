// Floor 6. A drawing seen once: its label map with runs, areas and colours, from which any number of views are made.
import type { PaintLook } from "../../measure/edgefigure.ts";
import { type Areas, measureAreas } from "../../regions/area.ts";
import type { LabelMap } from "../../regions/labelmap.ts";
import { measuringSize, type Raster } from "../../regions/raster.ts";
import { findRuns, type Runs } from "../../regions/runs.ts";
import type { ResolvedDrawing } from "../../svg/instance.ts";
import { findPaints, type PaintedShapes, type Selection } from "../../svg/paint.ts";
import type { List, PaintIndex } from "../../svg/paintnumber.ts";
import { labelsOf, renderMap } from "./measuregeometry.ts";
import { lookAt, nameLooks, renderTrue } from "./paintlook.ts";
import { joinSmall } from "./smallcolour.ts";
import { findLost, type Lost } from "./unmeasured.ts";
import type { Viewing } from "./viewing.ts";

/** What does not depend on distance, focus, or which colour is changed. `looks` are those of `shapes.paints`. */
export interface Scene {
  readonly resolved: ResolvedDrawing;
  readonly shapes: PaintedShapes;
  readonly map: LabelMap;
  readonly runs: Runs;
  readonly areas: Areas;
  readonly looks: List<PaintIndex, PaintLook>;
  /** The true rendering, kept where a paint is not flat. */
  readonly picture: Raster | undefined;
  /** What shows and is not measured: such a drawing is refused. */
  readonly lost: readonly Lost[];
  /** How many paints are measured as one, because they show least of very many. */
  readonly joined: number;
}

/**
 * Renders a drawing and looks at its colours. The parts of a paint that a limited change selects stand for themselves, so
 * the scene serves every viewing but those that select other parts, or ask for another size or renderer.
 */
export async function renderScene(resolved: ResolvedDrawing, viewing: Viewing): Promise<Scene> {
  const { viewBox } = resolved.drawing;
  const size = measuringSize(viewBox.width, viewBox.height, viewing.heightPixels);
  const found = findPaints(resolved, selectionOf(viewing));
  const { shapes, map, joined } = joinSmall(
    found,
    await renderMap(found, size, viewing.render),
    viewing.change,
  );
  const runs = findRuns(map);
  const areas = measureAreas(runs, shapes.paints.length);
  viewing.lap?.("labels");
  const picture = await renderTrue(resolved.drawing, map);
  const seen = lookAt(picture, map, shapes.paints, labelsOf(shapes));
  const looks = nameLooks(seen, shapes.paints, areas.pixels, viewing);
  viewing.lap?.("colours");
  const hexes = looks.map(({ hex }) => hex);
  const lost = findLost(picture, map, shapes.paints, hexes, areas.flagPixels, runs);
  viewing.lap?.("check");
  const isFlat = shapes.paints.every(({ flat }) => flat);
  return { resolved, shapes, map, runs, areas, looks, lost, joined, picture: isFlat ? undefined : picture };
}

function selectionOf({ change }: Viewing): Selection | undefined {
  return change?.only === undefined ? undefined : { instances: change.only, replace: change.replace };
}
