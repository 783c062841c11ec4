// Floor 9. A step of a show → what lies where on its still. Type is a fortieth of the height and more, and stays clear of the outer
// twentieth, where a screen or a recording may cut. Source: SMPTE ST 2046-1, 2009: the safe title area is 90 % of each side.

import type { ShowStep } from "../../views/show/step.ts";
import type { Format } from "../../words/format.ts";
import type { FindSource } from "./drawnsource.ts";
import { ink, type Size } from "./paper.ts";
import {
  type Box,
  drawBox,
  type PictureScene,
  type SceneItem,
  type SceneText,
  type Source,
} from "./picturescene.ts";
import { arrangePicture } from "./steppicture.ts";

/** What is said around a picture. */
export type Words = Pick<ShowStep, "heading" | "says">;

const safe = 0.05;
/** Letters from which a heading has a second line. */
const longHeading = 55;

/** The still of a step. */
export function arrangeStep(
  step: Pick<ShowStep, "heading" | "says" | "picture">,
  size: Size,
  format: Format,
  find: FindSource,
): PictureScene {
  return frame(step, size, format, (box, unit) => arrangePicture(step.picture, box, unit, find, format));
}

/** Both flags of a pair as one, divided per pale, under a heading. */
export function arrangeSplit(
  words: Words,
  sources: readonly [Source, Source],
  size: Size,
  format: Format,
): PictureScene {
  return frame(words, size, format, (box) => [{ kind: "split", sources, ...box }]);
}

/** Paper, the mat from side to side, and words above and below it. `unit` is a fortieth of the height. */
function frame(
  { heading, says = "" }: Words,
  { width, height }: Size,
  { direction, say }: Format,
  arrange: (box: Box, unit: number) => readonly SceneItem[],
): PictureScene {
  const unit = Math.min(height, (width * 3) / 4) / 40;
  const left = safe * width;
  const room = width - 2 * left;
  const top = safe * height;
  const head = (heading.length > longHeading ? 6.2 : 4.2) * unit;
  const mat = { x: 0, y: top + head, width, height: height - 2 * top - head - 6.8 * unit };
  const box = { x: left, y: mat.y + 0.8 * unit, width: room, height: mat.height - 1.6 * unit };
  const items = arrange(box, unit);
  const isOnMat = items.every(({ kind }) => kind !== "text");
  const text = (part: Omit<SceneText, "kind" | "x" | "width">): SceneText => ({
    kind: "text",
    width: room,
    ...part,
    ...((part.anchor === "start") === (direction === "ltr")
      ? { x: left, anchor: "start" }
      : { x: width - left, anchor: "end" }),
  });
  return {
    width,
    height,
    direction,
    items: [
      ...(isOnMat ? [drawBox(mat, ink.mat)] : []),
      ...items,
      text({
        text: heading,
        y: top,
        pixels: 2.4 * unit,
        family: "serif",
        anchor: "start",
        most: head - 0.4 * unit,
      }),
      ...(says === ""
        ? []
        : [
            text({
              text: says,
              y: mat.y + mat.height + 1.1 * unit,
              pixels: 1.4 * unit,
              family: "sans",
              anchor: "start",
              most: 3.8 * unit,
            }),
          ]),
      text({
        text: say("still.mark"),
        y: height - top - 1.3 * unit,
        pixels: 1.05 * unit,
        family: "sans",
        isQuiet: true,
        anchor: "end",
        most: 1.5 * unit,
      }),
    ],
  };
}
