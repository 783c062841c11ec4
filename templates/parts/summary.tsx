// Part. A few numbers, original against redesign.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SummaryRow } from "../../src/views/study/studypage.ts";

/** The table beside the verdict. */
export function Summary({
  rows,
  caption,
  id,
}: {
  rows: readonly SummaryRow[];
  caption: string;
  id?: string;
}): JSX.Element {
  return (
    <table class="summary" id={id}>
      <caption class="unseen">{caption}</caption>
      <thead>
        <tr>
          <th scope="col">
            <span class="unseen">Measure</span>
          </th>
          <th scope="col" class="end">
            Original
          </th>
          <th scope="col" class="end">
            Redesign
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.name}>
            <th scope="row">{row.name}</th>
            <td class="number end">
              <bdi>{row.before}</bdi>
            </td>
            <td class="number end">
              <bdi>{row.after}</bdi>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
