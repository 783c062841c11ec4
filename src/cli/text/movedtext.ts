// Floor 11. What publishing would move, as lines for a terminal and for a reply in Markdown.
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

/** The same as a list; addresses are code, so that no site makes links of them. */
export function formatMovedMarkdown({ studies, gone }: Moved): string {
  const lines = [
    ...studies.map((one) => `- \`${one.study}\`: ${describeMove(one)}`),
    ...gone.map(({ address, to }) =>
      to === null ? `- \`${address}\` goes and will say so` : `- \`${address}\` goes and leads to \`${to}\``,
    ),
  ];
  return lines.length === 0 ? "" : `What moves against the site that stands:\n\n${lines.join("\n")}`;
}

function describeMove({ was, is, isLeftOut, pictures }: MovedStudy): string {
  if (is === null) return isLeftOut ? "cannot be built" : "is not shown any more";
  if (was === null) return `is new, ${describeMarks(is)}`;
  const marks =
    describeMarks(is) === describeMarks(was) ? [] : [`${describeMarks(is)}; was ${describeMarks(was)}`];
  const drawn = pictures.length === 0 ? [] : [`another picture of the ${pictures.join(" and of the ")}`];
  return [...marks, ...drawn].join("; ");
}

function describeMarks({ verdict, clarity }: Marks): string {
  const [before, after] = clarity.map((mark) => (mark === null ? "no edges" : `${mark} %`));
  return `clarity ${before} → ${after}, ${verdict}`;
}
