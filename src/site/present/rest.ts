// Floor 6. The edges that a change leaves as they were, in words: what stays weak first.
import { type Grade, isClear } from "../../colour/contrast.ts";
import { decidingShare } from "../../measure/clarity.ts";
import type { Account, Moved } from "./account.ts";
import type { Format } from "./format.ts";
import { capitalise } from "./phrase.ts";

const grades: readonly Grade[] = ["weak", "soft", "clear", "strong"];

/** How many edges of one grade are named; the table has the others. */
const mostNamed = 3;

/** Says what stays, weakest grade first, and whether anything is left below clear. */
export function describeRest({ edges, short }: Account, format: Format): readonly string[] {
  const same = edges.filter(({ outcome }) => outcome === "same");
  const moves = same.length < edges.length || short.length > 0;
  const opening = moves ? [] : ["No edge becomes easier or harder to see."];
  const parted = edges.filter(({ outcome, after }) => outcome === "parted" && !isClear(after.grade));
  return [
    ...opening,
    ...parted.map((edge) => sayPartedWeakly(edge, format)),
    ...grades.flatMap((grade) =>
      sayStaying(
        same.filter((edge) => keeps(edge, grade)),
        grade,
        format,
      ),
    ),
    ...same
      .filter((edge) => edge.before?.grade !== edge.after.grade)
      .map((edge) => sayCrossing(edge, format)),
    ...sayWhole(edges, short, format),
  ];
}

function keeps({ before, after }: Moved, grade: Grade): boolean {
  return before?.grade === grade && after.grade === grade;
}

function sayStaying(edges: readonly Moved[], grade: Grade, format: Format): readonly string[] {
  if (edges.length === 0) return [];
  const named = edges
    .slice(0, mostNamed)
    .map((edge) => `${namePair(edge)} (${format.contrast(edge.after.contrast)})`);
  const left = edges.length - named.length;
  const others = left === 0 ? [] : [`${format.number(left, 0)} more`];
  const verb = edges.length === 1 ? "stays" : "stay";
  return [`${capitalise(format.list([...named, ...others]))} ${verb} ${grade}.`];
}

function sayCrossing(edge: Moved, format: Format): string {
  const { before, after } = edge;
  const from = before === undefined ? "" : `from ${format.contrast(before.contrast)}, ${before.grade}, `;
  return `${capitalise(namePair(edge))} hardly moves: ${from}to ${format.contrast(after.contrast)}, ${after.grade}.`;
}

function sayPartedWeakly(edge: Moved, format: Format): string {
  const pair = edge.neighbour === undefined ? edge.is : `${edge.is} and ${edge.neighbour}`;
  return `${capitalise(pair)} were one colour and are now two, but the edge between them is ${edge.after.grade}: contrast ${format.contrast(edge.after.contrast)}.`;
}

function sayWhole(edges: readonly Moved[], short: readonly Moved[], format: Format): readonly string[] {
  const all = [...edges, ...short];
  const isAllClear =
    all.length > 1 && all.every(({ after, outcome }) => outcome !== "merged" && isClear(after.grade));
  const tiny =
    short.length === 0
      ? []
      : [`Edges under ${format.share(decidingShare)} of all edge length are left to the table.`];
  return isAllClear ? ["Every edge of the redesign is clear or strong.", ...tiny] : tiny;
}

function namePair({ is, neighbour }: Moved): string {
  return neighbour === undefined ? is.replace(" and ", " against ") : `${is} against ${neighbour}`;
}
