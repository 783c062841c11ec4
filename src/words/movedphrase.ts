// Floor 7. What a page says at an address whose own page has gone.

/**
 * What became of a page. `moved`: it is elsewhere. `near`: another one is nearest to it. `edge`: the edge is not in the study any
 * more, and another is nearest to it. `withdrawn`: the study was taken out. `absent`: it is there, and is not shown now.
 */
export type Fate = "moved" | "near" | "edge" | "withdrawn" | "absent";

/** A heading and what stands below it. */
export interface FateWords {
  readonly heading: string;
  readonly text: string;
}

const words: Readonly<Record<Fate, FateWords>> = {
  moved: { heading: "This page has moved", text: "It is now at another address." },
  near: { heading: "This page is no longer here", text: "What is nearest to it:" },
  edge: {
    heading: "This edge is no longer in the study",
    text: "Colours of the drawing have changed since. The edge whose colours are nearest:",
  },
  withdrawn: { heading: "This was withdrawn", text: "What stood at this address is no longer published." },
  absent: {
    heading: "This study is not shown at present",
    text: "It stands in the gallery's folder, and will be back at this address.",
  },
};

/** Returns the words for `fate`; `why` are those of the society, when and why something was withdrawn. */
export function describeFate(fate: Fate, why = ""): FateWords {
  const { heading, text } = words[fate];
  return { heading, text: fate === "withdrawn" && why !== "" ? `${text} ${why}` : text };
}

/** What stands over the page of a study that was published before and cannot be built now. */
export const lastGoodNote =
  "This study could not be built from what its folder holds now. This is the page that it last had.";
