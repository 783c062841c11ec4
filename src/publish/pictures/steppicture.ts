// Floor 9. The picture of a step, in the box that its still has for it.
import type { DrawnPlate, Plate } from "../../views/plate.ts";
import type { ShowStep } from "../../views/show/step.ts";
import type { Format } from "../../words/format.ts";
import type { Say } from "../../words/say.ts";
import { arrangeLocator, arrangeMap, arrangeRuler, label } from "./chartscene.ts";
import type { FindSource } from "./drawnsource.ts";
import { arrangeMatrix } from "./matrixscene.ts";
import { ink } from "./paper.ts";
import { type Box, drawBox, type SceneItem } from "./picturescene.ts";

/** Up to so many rows there is room for larger type. */
const fewRows = 4;

/** Arranges what a step shows in `box`; `unit` is a fortieth of the picture's height. */
export function arrangePicture(
  picture: ShowStep["picture"],
  box: Box,
  unit: number,
  find: FindSource,
  { say }: Format,
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
      return arrangeAfar(picture.steps, box, unit, flag);
    case "matrix":
      return arrangeMatrix(picture.matrix, picture.picture, box, unit, say);
    case "ruler":
      return arrangeRuler(picture.ruler, box, picture.ruler.rows.length <= fewRows ? 1.3 * unit : unit, say);
    case "seen":
      return arrangeSeen(picture.seen, box, unit, find, say);
  }
}

function arrangeAfar(
  steps: Extract<ShowStep["picture"], { readonly kind: "afar" }>["steps"],
  box: Box,
  unit: number,
  flag: (plate: DrawnPlate, place: Box) => SceneItem,
): readonly SceneItem[] {
  const cells = divide({ ...box, height: box.height - 2 * unit }, steps.length, unit);
  return steps.flatMap(({ says, plate }, at) => {
    const cell = cells[at] ?? box;
    return [
      drawBox(cell, ink.mat),
      flag(plate, shrink(cell, unit)),
      label(says, cell.x, cell.y + cell.height + 0.6 * unit, unit, cell.width),
    ];
  });
}

function shrink({ x, y, width, height }: Box, by: number): Box {
  return { x: x + by, y: y + by, width: width - 2 * by, height: height - 2 * by };
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
  seen: Extract<ShowStep["picture"], { readonly kind: "seen" }>["seen"],
  box: Box,
  unit: number,
  find: FindSource,
  say: Say,
): readonly SceneItem[] {
  return divide(box, seen.length, 1.2 * unit).flatMap((cell, at) => {
    const one = seen[at];
    if (one === undefined) return [];
    const mat = { ...cell, height: cell.height - 2 * unit };
    const [was, is] = divide(shrink(mat, 0.5 * unit), 2, 0.5 * unit);
    const { heading, measure, before, after } = one;
    const says = say("still.seen", { heading, measure, before, after });
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
