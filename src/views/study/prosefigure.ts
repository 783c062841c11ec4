// Floor 8. The figures that an author asks for in prose, each with an anchor of its own, and in words where none can be shown.

import { type AskedFigure, canShow, type FigureKind } from "../../content/study/figurekind.ts";
import { findNamedEdge } from "../../content/study/prosecheck.ts";
import type { ComparedEdge, Comparison } from "../../measure/comparison.ts";
import type { Format } from "../../words/format.ts";
import type { LastingView } from "../../words/fromafar.ts";
import { capitalise } from "../../words/phrase.ts";
import type { PlaceEdge } from "../edge/edgeaddress.ts";
import { type EdgeRow, presentEdge, type Reading } from "../edge/edgerow.ts";
import type { GainView } from "../front/gainchart.ts";
import type { Plate } from "../plate.ts";
import { describeRuler, type RulerView } from "./contrastruler.ts";
import type { StripView } from "./distancestrip.ts";
import type { Details } from "./edgedetail.ts";
import type { EdgeMapView } from "./edgemap.ts";
import type { MatrixView } from "./matrixview.ts";
import type { SeenView } from "./seenotherwise.ts";
import type { SizeRow } from "./truesize.ts";

/** A figure in the prose. `id` is its anchor, which no other figure of the page has; `says` is what it shows, as text. */
export type ProseFigure = { readonly id: string; readonly says: string } & (
  | { readonly kind: "edge"; readonly edge: EdgeRow; readonly details: Details }
  | { readonly kind: "gain chart"; readonly gain: GainView }
  | { readonly kind: OwnKind }
);

/** All but the chart of the gallery. */
type OwnKind = Exclude<FigureKind, "gain chart">;

/** What a figure of the prose has beside the figures of its page. */
export interface Around {
  readonly address?: PlaceEdge;
  readonly details?: (edge: ComparedEdge) => Details;
  /** The gain chart of the gallery, made only where the prose asks for it. */
  readonly gain?: () => GainView | undefined;
}

/** What the page shows: a figure in the prose is one of these again. */
export interface Shown {
  readonly plates: readonly [Plate, Plate];
  readonly sizes: readonly [SizeRow, SizeRow];
  readonly edgeMap: EdgeMapView;
  /** Absent where there is no edge. */
  readonly ruler: RulerView | undefined;
  readonly strip: StripView;
  readonly lasting: LastingView | undefined;
  readonly seen: readonly SeenView[];
  /** Absent where the options could not be ranked. */
  readonly matrix?: MatrixView | undefined;
}

/**
 * Returns a function that gives each figure asked for, in the order of the prose, or undefined where the study has
 * nothing to show for it. An edge is named as in the original, its colours in either order.
 */
export function createFigures(
  shown: Shown,
  comparison: Comparison,
  format: Format,
  { address, details, gain: makeGain }: Around = {},
): (asked: AskedFigure) => ProseFigure | undefined {
  const counts = new Map<string, number>();
  const name = (text: string): string => {
    const count = (counts.get(text) ?? 0) + 1;
    counts.set(text, count);
    return `figure-${text.replaceAll(" ", "-")}${count === 1 ? "" : `-${count}`}`;
  };
  const has = {
    edges: comparison.edges.length > 0,
    focus: comparison.before.focus.source !== "none",
  };
  return (asked) => {
    if (asked.kind !== "edge") {
      const { kind } = asked;
      if (!canShow(kind, has) || (kind === "matrix" && shown.matrix === undefined)) return undefined;
      if (kind !== "gain chart") return { id: name(kind), kind, says: describe(kind, shown, format) };
      const gain = makeGain?.();
      return gain && { id: name(kind), kind, gain, says: `${gain.title}. ${gain.description}` };
    }
    const found = findNamedEdge(asked.edge, comparison.edges);
    if (found === undefined) return undefined;
    const edge = presentEdge(found, comparison, format, address);
    return {
      id: name(`edge ${edge.key}`),
      kind: "edge",
      edge,
      details: details?.(found),
      says: describeEdge(edge, format),
    };
  };
}

/** `White / black: contrast 84 (strong) before, 27 (weak) after; lost.` */
function describeEdge({ names, before, after, outcome }: EdgeRow, { say }: Format): string {
  const tell = ({ contrast, grade, near }: Reading) =>
    say("price.graded", {
      contrast,
      grade: near === undefined ? grade : [grade, near].join(say("list.comma")),
    });
  const values = { edge: capitalise(names), after: tell(after), outcome };
  return before === undefined
    ? say("edgefigure.saysAfter", values)
    : say("edgefigure.says", { ...values, before: tell(before) });
}

function describe(kind: OwnKind, shown: Shown, format: Format): string {
  const { plates, sizes, edgeMap, ruler, strip, lasting, seen, matrix } = shown;
  const said: Readonly<Record<OwnKind, () => string>> = {
    original: () => `${plates[0].alt}.`,
    redesign: () => `${plates[1].alt}.`,
    "true size": () =>
      format.say("sizes.says", { distances: format.list(sizes[0].pictures.map(({ distance }) => distance)) }),
    "edge map": () =>
      [
        `${edgeMap.title}.`,
        ...edgeMap.panels.map(({ heading, description }) =>
          format.say("list.colon", { name: heading, said: description }),
        ),
      ].join(" "),
    "contrast ruler": () => (ruler === undefined ? "" : describeRuler(ruler, format)),
    "distance strip": () => `${strip.title}. ${strip.description}`,
    "lasts to": () => (lasting === undefined ? "" : `${lasting.title}. ${lasting.description}`),
    "seen otherwise": () =>
      seen
        .map(({ heading, measure, before, after }) =>
          format.say("seen.figure", { heading, measure, before, after }),
        )
        .join(" "),
    matrix: () => (matrix === undefined ? "" : `${matrix.title}. ${matrix.caption.join(" ")}`),
  };
  return said[kind]();
}
