// Floor 8. One edge under every kind of vision: its two colours as they are seen, with contrast and difference.

import { hexOf, linearOf } from "../../colour/colourtext.ts";
import { gradeOf } from "../../colour/contrast.ts";
import { simulate, type Vision, visions } from "../../colour/vision.ts";
import type { ComparedEdge, Comparison } from "../../measure/comparison.ts";
import type { Measure } from "../../measure/measurement.ts";
import { findMeasured } from "../../words/edgemove.ts";
import type { Format } from "../../words/format.ts";
import { gradeIds } from "../../words/gradeword.ts";
import { visionIds } from "../study/seenotherwise.ts";
import type { EdgeRow, Reading } from "./edgerow.ts";

export interface VisionRow {
  readonly vision: Vision;
  readonly heading: string;
  readonly before: SeenReading | undefined;
  readonly after: SeenReading | undefined;
}

/** The two colours as one kind of vision has them. Grey keeps the contrast, which is not said again. */
export interface SeenReading {
  readonly hexes: Reading["hexes"];
  readonly contrast: string | undefined;
  readonly grade: string | undefined;
  readonly difference: string;
}

/** The rows of one edge, in the order protan, deutan, tritan, grey. `row` is the edge as it is seen by most. */
export function presentVisions(
  edge: ComparedEdge,
  row: EdgeRow,
  comparison: Comparison,
  format: Format,
): readonly VisionRow[] {
  return visions.map((vision) => presentVision(vision, edge, row, comparison, format));
}

function presentVision(
  vision: Vision,
  edge: ComparedEdge,
  row: EdgeRow,
  comparison: Comparison,
  format: Format,
): VisionRow {
  const read = (measure: Measure, reading: Reading | undefined): SeenReading | undefined => {
    const measured = findMeasured(measure.edges, edge);
    if (measured === undefined || reading === undefined) return undefined;
    const [one, other] = reading.hexes.map((hex) => hexOf(simulate(linearOf(hex), vision)));
    if (one === undefined || other === undefined) throw new RangeError("an edge has two colours");
    const contrast = vision === "grey" ? undefined : measured.vision[vision].contrast;
    return {
      hexes: [one, other],
      contrast: contrast === undefined ? undefined : format.contrast(contrast),
      grade: contrast === undefined ? undefined : format.say(gradeIds[gradeOf(contrast)]),
      difference: format.number(measured.vision[vision].deltaE00, 0),
    };
  };
  return {
    vision,
    heading: format.say(visionIds[vision]),
    before: read(comparison.before, row.before),
    after: read(comparison.after, row.after),
  };
}
