// Floor 7. What a page says at an address whose own page has gone.
import type { WordId } from "./en/all.ts";
import type { Format } from "./format.ts";

/**
 * What became of a page. `moved`: it is elsewhere. `near`: another one is nearest to it. `edge`: the edge is not in the study any
 * more, and another is nearest to it. `withdrawn`: the study was taken out. `absent`: it is there, and is not shown now. `claimed`: several say that they were there;
 * `claimedHidden`: and one of those is not shown now.
 */
export type Fate = "moved" | "near" | "edge" | "withdrawn" | "absent" | "claimed" | "claimedHidden";

/** A heading and what stands below it. */
export interface FateWords {
  readonly heading: string;
  readonly text: string;
}

const ids = {
  moved: ["moved.moved", "moved.movedTo"],
  near: ["moved.near", "moved.nearTo"],
  edge: ["moved.edge", "moved.edgeTo"],
  withdrawn: ["moved.withdrawn", "moved.withdrawnHow"],
  absent: ["moved.absent", "moved.absentHow"],
  claimed: ["moved.claimed", "moved.claimedBy"],
  claimedHidden: ["moved.claimed", "moved.claimedByHidden"],
} as const satisfies Record<Fate, readonly [heading: WordId, text: WordId]>;

/** Returns the words for `fate`; `why` are those of the society, when and why something was withdrawn. */
export function describeFate(fate: Fate, { say }: Format, why = ""): FateWords {
  const [heading, text] = ids[fate];
  return {
    heading: say(heading),
    text: fate === "withdrawn" && why !== "" ? `${say(text)} ${why}` : say(text),
  };
}
