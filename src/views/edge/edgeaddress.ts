// Floor 8. Where an edge lives on the site: by its two original colours, so that a better table of names breaks no link.
import type { ComparedEdge, Comparison } from "../../measure/comparison.ts";
import { findPaint } from "../../words/paintname.ts";
import { formatStudyPath } from "../status.ts";

/** Most edges of a study with pages of their own (our own judgement: real flags have up to some thirty). */
export const mostEdgePages = 48;

/** Returns the site path of an edge of one study; of one without a page, that of the table on the study's page. */
export type PlaceEdge = (edge: Pick<ComparedEdge, "a" | "b">) => string;

/** The files of an edge's folder: the place where its two paints meet, before and after. */
export const cropFiles = { original: "original.svg", redesign: "redesign.svg" } as const;

/**
 * Returns the key of each edge, in the order of `comparison.edges`: both colours of the original, lower first, with an
 * `s` behind the part that `only` selects. Two edges of the same colours, as of a gradient and a flat paint, are told
 * apart by a number.
 *
 * Example: dark red on white is `7a1020-ffffff`.
 */
export function keyEdges(comparison: Comparison): readonly string[] {
  const counts = new Map<string, number>();
  return comparison.edges.map((edge) => {
    const key = [edge.a, edge.b]
      .map((id) => keyPaint(comparison, id))
      .sort()
      .join("-");
    const count = (counts.get(key) ?? 0) + 1;
    counts.set(key, count);
    return count === 1 ? key : `${key}-${count}`;
  });
}

/** The paths of all edges of a study. The returned function throws RangeError for an edge that it does not have. */
export function placeEdges(slug: string, comparison: Comparison): PlaceEdge {
  const keys = keyEdges(comparison);
  return ({ a, b }) => {
    const at = comparison.edges.findIndex((edge) => edge.a === a && edge.b === b);
    const key = keys[at];
    if (key === undefined) throw new RangeError(`${slug} has no edge ${a} ${b}`);
    return at < mostEdgePages ? `${formatStudyPath(slug)}edges/${key}/` : `${formatStudyPath(slug)}#edges`;
  };
}

/** The edges of a study that have pages, the longest, each with the path of its page. */
export function listPlacedEdges(
  slug: string,
  comparison: Comparison,
): readonly { readonly edge: ComparedEdge; readonly path: string }[] {
  const place = placeEdges(slug, comparison);
  return comparison.edges.slice(0, mostEdgePages).map((edge) => ({ edge, path: place(edge) }));
}

function keyPaint({ before, after }: Comparison, id: string): string {
  const paint = findPaint(before, id) ?? findPaint(after, id);
  if (paint === undefined) throw new RangeError(`no paint ${id} in ${before.file}`);
  const { hex, part } = paint;
  // A part that is all there is of its colour stands for the whole.
  const isPart = part !== undefined && before.colours.some((other) => other.hex === hex && other.id !== id);
  return `${hex.slice(1)}${isPart ? "s" : ""}`;
}
