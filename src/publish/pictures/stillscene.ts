// Floor 9. A step of a show → what lies where on its still. Type is a fortieth of the height and more, and stays clear of the outer
// twentieth, where a screen or a recording may cut. Source: SMPTE ST 2046-1, 2009: the safe title area is 90 % of each side.

import type { Plate } from "../../views/plate.ts";
import type { ShowPicture, ShowStep } from "../../views/show/showsteps.ts";
import { arrangeColours, arrangeLocator, arrangeMap, arrangeRuler, label } from "./chartscene.ts";
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

/** What is said around a picture. */
export type Words = Pick<ShowStep, "heading" | "says">;

const safe = 0.05;
/** Up to so many rows there is room for larger type. */
const fewRows = 4;
/** Letters from which a heading has a second line. */
const longHeading = 55;
const mark = "Unofficial study, for discussion";

/** The still of a step. */
export function arrangeStep(
  step: Pick<ShowStep, "heading" | "says" | "picture">,
  size: Size,
  direction: PictureScene["direction"],
  find: FindSource,
): PictureScene {
  return frame(step, size, direction, (box, unit) => arrangePicture(step.picture, box, unit, find));
}

/** Both flags of a pair as one, divided per pale, under a heading. */
export function arrangeSplit(
  words: Words,
  sources: readonly [Source, Source],
  size: Size,
  direction: PictureScene["direction"],
): PictureScene {
  return frame(words, size, direction, (box) => [{ kind: "split", sources, ...box }]);
}

/** Paper, the mat from side to side, and words above and below it. `unit` is a fortieth of the height. */
function frame(
  { heading, says = "" }: Words,
  { width, height }: Size,
  direction: PictureScene["direction"],
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
        text: mark,
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

function arrangePicture(
  picture: ShowPicture,
  box: Box,
  unit: number,
  find: FindSource,
): readonly SceneItem[] {
  const flag = (plate: Pick<Plate, "src">, place: Box): SceneItem => ({
    kind: "flag",
    source: find(plate.src),
    ...place,
  });
  switch (picture.kind) {
    case "flag":
      return [flag(picture.plate, box)];
    case "pair":
    case "strip":
      return divide(box, picture.plates.length, unit).map((cell, at) =>
        flag(picture.plates[at] ?? picture.plates[0] ?? { src: "" }, cell),
      );
    case "edge": {
      const [left, right] = divide(box, 2, unit);
      return left && right
        ? [...arrangeLocator(picture.locator, find(picture.locator.ground), left), flag(picture.plate, right)]
        : [];
    }
    case "map":
      return arrangeMap(picture.map, 0, find(picture.map.panels[0].ground), box);
    case "afar":
      return divide({ ...box, height: box.height - 2 * unit }, picture.steps.length, unit).flatMap(
        (cell, at) => {
          const step = picture.steps[at];
          if (step === undefined) return [];
          const inner = {
            x: cell.x + unit,
            y: cell.y + unit,
            width: cell.width - 2 * unit,
            height: cell.height - 2 * unit,
          };
          return [
            drawBox(cell, ink.mat),
            flag(step.plate, inner),
            label(
              `From ${step.from} flag heights, enlarged`,
              cell.x,
              cell.y + cell.height + 0.6 * unit,
              unit,
              cell.width,
            ),
          ];
        },
      );
    case "colours":
      return arrangeColours(picture.colours, box, unit);
    case "ruler":
      return arrangeRuler(picture.ruler, box, picture.ruler.rows.length <= fewRows ? 1.3 * unit : unit);
    case "seen":
      return arrangeSeen(picture.seen, box, unit, find);
  }
}

/** Cells of one size in rows, as few as leave flags large. */
function divide({ x, y, width, height }: Box, count: number, gap: number): readonly Box[] {
  const lines = count <= 3 ? 1 : count <= 8 ? 2 : Math.ceil(count / 5);
  const columns = Math.ceil(count / lines);
  const cell = {
    width: (width - (columns - 1) * gap) / columns,
    height: (height - (lines - 1) * gap) / lines,
  };
  return Array.from({ length: count }, (_, at) => ({
    x: x + (at % columns) * (cell.width + gap),
    y: y + Math.floor(at / columns) * (cell.height + gap),
    ...cell,
  }));
}

function arrangeSeen(
  seen: Extract<ShowPicture, { readonly kind: "seen" }>["seen"],
  box: Box,
  unit: number,
  find: FindSource,
): readonly SceneItem[] {
  return divide(box, seen.length, 1.2 * unit).flatMap((cell, at) => {
    const one = seen[at];
    if (one === undefined) return [];
    const mat = { ...cell, height: cell.height - 2 * unit };
    const inner = {
      x: mat.x + 0.5 * unit,
      y: mat.y + 0.5 * unit,
      width: mat.width - unit,
      height: mat.height - unit,
    };
    const [was, is] = divide(inner, 2, 0.5 * unit);
    const says = `${one.heading}: ${one.measure} ${one.before} to ${one.after}`;
    return [
      drawBox(mat, ink.mat),
      ...(was && is
        ? [
            { kind: "flag", source: find(one.plates[0].src), ...was } as const,
            { kind: "flag", source: find(one.plates[1].src), ...is } as const,
          ]
        : []),
      label(says, cell.x, mat.y + mat.height + 0.4 * unit, unit, cell.width),
    ];
  });
}
