// Floor 6, a check on the label map: a flag that is no rectangle, or whose field was forgotten.
import { formatShare } from "../../measure/percenttext.ts";
import type { Problem } from "../../problem/problem.ts";
import type { Scene } from "./scene.ts";

/** Share of the drawing up to which it is passed over: borders that miss the viewBox by a little. */
const mostUnpainted = 0.02;

/**
 * Returns the warning `study/unpainted` for a drawing that leaves part of the canvas as it is, or paints it at less than half
 * opacity, which is not measured. Which shape is missing cannot be told: the file is its place.
 */
export function findUnpainted(file: string, { map, areas }: Pick<Scene, "map" | "areas">): Problem[] {
  const share = 1 - areas.flagPixels / (map.width * map.height);
  if (!(share > mostUnpainted)) return [];
  return [
    {
      rule: "study/unpainted",
      severity: "warning",
      file,
      reason: `${formatShare(share)} of the drawing is left unpainted: it counts as no part of the flag, and where paint ends there is no edge.`,
      hint: 'If the flag has no such gap, draw its field first: <rect width="100%" height="100%" fill="#ffffff"/>\nIf it is no rectangle, all is well.',
    },
  ];
}
