// Floor 11. What publishing would move, as lines for a terminal, and how a study stood before.
import type { Marks, Moved, MovedStudy } from "../../publish/comparesite.ts";

/** Returns the heading and a line for each thing that moves; none where nothing does. */
export function formatMoved({ studies, gone }: Moved, against: string): readonly string[] {
  if (studies.length + gone.length === 0) return [];
  return [
    `What moves against ${against}:`,
    ...studies.map((one) => `  ${one.study}: ${describeMove(one)}`),
    ...gone.map(({ address, to }) =>
      to === null ? `  ${address} goes and will say so` : `  ${address} goes and leads to ${to}`,
    ),
  ];
}

function describeMove(one: MovedStudy): string {
  const { was, is, isLeftOut } = one;
  if (is === null) return isLeftOut ? "cannot be built" : "is not shown any more";
  if (was === null) return `is new, ${describeMarks(is)}`;
  return [...(isAlike(is, was) ? [] : [describeMarks(is)]), describeFormer(one)].join("; ");
}

/** Says how a study that is shown stood before: `is new`, `was clarity 42 % → 50 %, mixed; another picture of the redesign`. */
export function describeFormer({ was, is, pictures }: MovedStudy): string {
  if (was === null) return "is new";
  const marks = is === null || isAlike(is, was) ? [] : [`was ${describeMarks(was)}`];
  const drawn = pictures.length === 0 ? [] : [`another picture of the ${pictures.join(" and of the ")}`];
  return [...marks, ...drawn].join("; ");
}

function isAlike(one: Marks, other: Marks): boolean {
  return describeMarks(one) === describeMarks(other);
}

function describeMarks({ verdict, clarity }: Marks): string {
  const [before, after] = clarity.map((mark) => (mark === null ? "no edges" : `${mark} %`));
  return `clarity ${before} → ${after}, ${verdict}`;
}
