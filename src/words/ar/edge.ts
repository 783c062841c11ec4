// Floor 7. Arabic: what an edge is called.
import type { In } from "../en/all.ts";
import type { edge as english } from "../en/edge.ts";

export const edge: In<typeof english> = {
  "edge.on": "{part} على {field}",
};
