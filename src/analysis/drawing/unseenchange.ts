// Floor 6. A change of a colour that the drawing has and nobody sees: its shapes have no area, or others cover them.
import type { Hex } from "../../colour/colour.ts";
import { keyed } from "../../content/study/colourword.ts";
import { type Problem, report } from "../../problem/problem.ts";
import type { Inspection } from "./inspect.ts";

/**
 * Whether no pixel shows the colour `replace`, of the selected part alone where the change has one. A drawing with a
 * gradient or a pattern may show it there: nothing is said of it.
 */
export function isUnseen({ ground }: Inspection, replace: Hex, isLimited: boolean): boolean {
  const { shapes, areas } = ground.scene;
  if (shapes.paints.some(({ declared }) => declared === null)) return false;
  const found = shapes.paints.flatMap(({ declared, selected }, paint) =>
    declared === replace && (selected || !isLimited) ? [areas.pixels[paint] ?? 0] : [],
  );
  return found.length > 0 && found.every((pixels) => pixels === 0);
}

/** Returns the warning `study/colour-unseen`, placed at the change. */
export function tellUnseen(replace: Hex): Problem {
  return report(
    "study/colour-unseen",
    keyed("change.replace"),
    {
      reason: `${replace} is in the drawing, but nothing of it can be seen, so the change changes nothing.`,
      hint: "Look in the drawing at the shapes of this colour: they have no area, or others cover them.",
    },
    "warning",
  );
}
