// Floor 11. A comparison as text for a terminal: the verdict with its price, then each edge before and after.
import { gradeOf } from "../../colour/contrast.ts";
import type { ComparedEdge, Comparison } from "../../measure/comparison.ts";
import type { Measure } from "../../measure/measurement.ts";
import { formatContrast, formatPercent } from "../../measure/percenttext.ts";
import { showText } from "../../problem/quote.ts";
import { describeDistance, formatLastsTo } from "./distancetext.ts";
import { formatGrade, listWarnings, noEdges, noFocus } from "./measuretext.ts";
import { type Column, formatTable } from "./texttable.ts";
import { wrapText } from "./wrap.ts";

const left = (head: string): Column => ({ head, align: "left" });
const right = (head: string): Column => ({ head, align: "right" });

/** Most edges that are named as the price. */
const mostNamed = 4;

/** Returns a comparison: clarity and verdict with its price, what has to be seen, and each edge before and after. */
export function describeComparison(comparison: Comparison): string {
  const { change, before, after, clarity, strength } = comparison;
  const only = change.only === undefined ? "" : `, only ${change.only}`;
  return [
    showText(
      `${before.file}: ${change.replace} → ${change.with}${only}, ${describeDistance(before.distance)}`,
    ),
    "",
    ...(comparison.edges.length === 0
      ? [noEdges]
      : [
          `  Clarity ${formatMove(clarity)}, strength ${formatMove(strength)}`,
          ...wrapText(showText(describeVerdict(comparison)), undefined, "  "),
          describeFocus(comparison),
          "",
          listEdges(comparison),
        ]),
    ...listWarnings(after),
  ].join("\n");
}

/**
 * Returns the verdict in one sentence, the price in it.
 *
 * Example: `Clearer, at a price: white / black is lost, from 84.0 % to 27.3 %.`
 */
export function describeVerdict({ verdict, price }: Pick<Comparison, "verdict" | "price">): string {
  const said = `${verdict.charAt(0).toUpperCase()}${verdict.slice(1)}`;
  if (price.length === 0) return `${said}.`;
  const rest = price.length - mostNamed;
  const named = price.slice(0, mostNamed).map(describeLoss);
  return `${said}: ${[...named, ...(rest > 0 ? [`${rest} more`] : [])].join("; ")}.`;
}

const losses: Readonly<Partial<Record<ComparedEdge["outcome"], string>>> = {
  lost: "is lost",
  worse: "gets worse",
};

function describeLoss({ names, contrast: [before, after], outcome }: ComparedEdge): string {
  const name = names[before === null ? 1 : 0].join(" / ");
  if (before === null) return `${name} is parted at ${formatContrast(after)}, ${gradeOf(after)}`;
  if (outcome === "merged") return `${name} merges, from ${formatContrast(before)} to one colour`;
  return `${name} ${losses[outcome] ?? outcome}, from ${formatContrast(before)} to ${formatContrast(after)}`;
}

function listEdges({ before, after, edges }: Comparison): string {
  const focusOf = (edge: ComparedEdge): number => findEdge(after, edge)?.focusLength ?? 0;
  const hasFocus = edges.some((edge) => focusOf(edge) > 0);
  const figures = [right("before"), left("grade"), right("after"), left("grade"), left("outcome")];
  const columns = [left("edge"), right("length"), ...(hasFocus ? [right("focus")] : []), ...figures];
  const ordered = [...edges].sort((x, y) => focusOf(y) - focusOf(x) || y.length - x.length);
  const rows = ordered.map((edge) => {
    const focus = focusOf(edge) > 0 ? focusOf(edge).toFixed(2) : "";
    const lengths = [edge.length.toFixed(2), ...(hasFocus ? [focus] : [])];
    const start = edge.contrast[0] === null ? ["", ""] : describeSide(before, edge);
    const end = edge.outcome === "merged" ? ["one colour", ""] : describeSide(after, edge);
    return [nameEdge(edge), ...lengths, ...start, ...end, edge.outcome];
  });
  return formatTable(columns, rows);
}

function findEdge({ edges }: Measure, { a, b }: ComparedEdge) {
  return edges.find((edge) => edge.a === a && edge.b === b);
}

function describeSide(measure: Measure, edge: ComparedEdge): readonly string[] {
  const found = findEdge(measure, edge);
  return found === undefined ? ["", ""] : [formatContrast(found.contrast), formatGrade(found)];
}

function nameEdge({ names, contrast: [before] }: ComparedEdge): string {
  const [from, to] = [(before === null ? names[1] : names[0]).join(" / "), names[1].join(" / ")];
  return from === to ? from : `${from} → ${to}`;
}

function describeFocus({ before: { focus }, after }: Comparison): string {
  if (focus.source === "none") return noFocus;
  const clarity = formatMove([focus.clarity, after.focus.clarity]);
  return `  Focus (${focus.source}): clarity ${clarity}, lasts to ${formatLastsTo(after.focus.lastsTo)} flag heights`;
}

function formatMove([before, after]: readonly [number | null, number | null]): string {
  return `${formatPercent(before)} → ${formatPercent(after)}`;
}
