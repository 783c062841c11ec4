// Part. A few numbers, original against redesign.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SummaryRow } from "../../src/views/study/studypage.ts";
import { useSay } from "./words.tsx";

/** What no colour changes stands once, under both. */
function sides({ before, after, isShared }: SummaryRow): readonly string[] {
  return isShared && before === after ? [after] : [before, after];
}

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
  const say = useSay();
  const isOne = rows.every((row) => sides(row).length === 1);
  return (
    <table class="summary" id={id}>
      <caption class="unseen">{caption}</caption>
      <thead>
        <tr>
          <th scope="col">
            <span class="unseen">{say("summary.measure")}</span>
          </th>
          {isOne ? (
            <th scope="colgroup" colSpan={2} class="end">
              {say("summary.both")}
            </th>
          ) : (
            <>
              <th scope="col" class="end">
                {say("plate.original")}
              </th>
              <th scope="col" class="end">
                {say("plate.redesign")}
              </th>
            </>
          )}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.name}>
            <th scope="row">
              {row.name} {row.means && <span class="quiet">{row.means}</span>}
            </th>
            {sides(row).map((value, index, { length }) => (
              <td key={index} class="number end" colSpan={3 - length}>
                <bdi>{value}</bdi>{" "}
                {row.of && (
                  <span class="quiet">
                    <bdi>{row.of[index]}</bdi>
                  </span>
                )}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
