// Floor 6, a check on the label map: a field that was forgotten, or does not fill its canvas.
import { formatShare } from "../../measure/percenttext.ts";
import type { Problem } from "../../problem/problem.ts";
import type { Scene } from "./scene.ts";

/** Share of the drawing up to which it is passed over: borders that miss the viewBox by a little. */
const mostUnpainted = 0.02;

/**
 * Returns the warning `study/unpainted` for a drawing that leaves part of the canvas as it is, or paints it at less than half
 * opacity, which is not measured; unless what is painted reaches all four sides, as a swallow tail or a triangle does. Which
 * shape is missing cannot be told: the file is its place.
 */
export function findUnpainted(file: string, { map, areas }: Pick<Scene, "map" | "areas">): Problem[] {
  const share = 1 - areas.flagPixels / (map.width * map.height);
  if (!(share > mostUnpainted) || reachesAllSides(map)) return [];
  return [
    {
      rule: "study/unpainted",
      severity: "warning",
      file,
      reason: `${formatShare(share)} of the drawing is left unpainted: it counts as no part of the flag, and where paint ends there is no edge.`,
      hint: 'Draw its field first: <rect width="100%" height="100%" fill="#ffffff"/>\nOr make its viewBox as large as the flag.',
    },
  ];
}

/** Whether paint, any label but 0, comes within a hundredth of each side: a pointed end may miss its last pixel. */
function reachesAllSides({ width, height, labels }: Scene["map"]): boolean {
  let [left, right, top, bottom] = [width, 0, height, 0];
  for (let at = 0; at < labels.length; at += 1) {
    if (labels[at] === 0) continue;
    const [x, y] = [at % width, Math.floor(at / width)];
    [left, right] = [Math.min(left, x), Math.max(right, x)];
    [top, bottom] = [Math.min(top, y), Math.max(bottom, y)];
  }
  const [wide, high] = [width / 100, height / 100];
  return left <= wide && top <= high && right >= width - 1 - wide && bottom >= height - 1 - high;
}
