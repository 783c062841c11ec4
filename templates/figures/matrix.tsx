// Figure. The matrix: a table of small flags, one for every single change. All are windows on one picture.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { CellView, MatrixView } from "../../src/views/study/matrixview.ts";
import { SwatchChip } from "../parts/swatch.tsx";
import { useSay } from "../parts/words.tsx";

/** The figure with its caption. `isAgain`: shown on another page than its own, to whose cells it refers. */
export function MatrixFigure({
  matrix,
  id,
  isAgain = false,
}: {
  matrix: MatrixView;
  id: string;
  isAgain?: boolean;
}): JSX.Element {
  const say = useSay();
  const [lead, ...rest] = matrix.captionOfBlocks;
  return (
    <figure class={matrix.isFew ? "matrix matrix-few" : "matrix"} id={id}>
      <div class="matrix-box">
        <table>
          <thead>
            <tr>
              <th scope="col">
                <span class="unseen">{say("options.changed")}</span>
              </th>
              {matrix.columns.map((column) => (
                <th key={column.hex ?? ""} scope="col">
                  {column.hex && <SwatchChip hex={column.hex} />}
                  <span class="matrix-name">
                    {column.name}
                    {column.code && <code>{column.code}</code>}
                  </span>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {matrix.rows.map((row) => (
              <tr key={row.id}>
                <th scope="row">
                  <SwatchChip hex={row.hex} /> <span class="matrix-name">{row.name}</span>{" "}
                  <span class="matrix-becomes">{say("colours.becomes")}</span>
                </th>
                {row.cells.map((cell, index) =>
                  cell === null ? (
                    <td key={index} class="no-cell">
                      <span aria-hidden="true">–</span>
                      <span class="unseen">{say("matrix.notTried")}</span>
                    </td>
                  ) : (
                    <Cell
                      key={index}
                      cell={cell}
                      column={matrix.columns[index]}
                      matrix={matrix}
                      isAgain={isAgain}
                    />
                  ),
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p class="measured matrix-rest">{rest.join(" ")}</p>
      <figcaption>
        <strong>
          <a href={`#${id}`}>{matrix.title}</a>
        </strong>
        . <span class="matrix-columns">{matrix.caption.join(" ")}</span>
        <span class="matrix-blocks">{lead}</span>
      </figcaption>
    </figure>
  );
}

/** The name of its `column` is shown where there is no room for columns. */
function Cell({
  cell,
  column,
  matrix: { src, width, height, page },
  isAgain,
}: {
  cell: CellView;
  column: MatrixView["columns"][number] | undefined;
  matrix: MatrixView;
  isAgain: boolean;
}): JSX.Element {
  const say = useSay();
  return (
    <td id={isAgain ? undefined : cell.id} class={cell.isOwn ? "own" : undefined}>
      <a href={`${page}#${cell.id}`}>
        <svg viewBox={cell.box} aria-hidden="true" focusable="false">
          <image href={src} width={width} height={height} />
        </svg>
        <span class="cell-name" aria-hidden="true">
          {column?.name}
          {column?.code && <code>{column.code}</code>}
        </span>
        <Clarity cell={cell} />
      </a>
      {cell.isOwn && <span class="own-word">{say("matrix.own")}</span>}
      {cell.notes.map(({ number, id }) => (
        <a key={id} class="note-mark" href={`${page}#${id}`}>
          {say("matrix.note", { number })}
        </a>
      ))}
    </td>
  );
}

function Clarity({ cell: { clarity, isBest, merges, unranked } }: { cell: CellView }): JSX.Element {
  const say = useSay();
  if (unranked !== undefined)
    return (
      <>
        <span class="merges">
          {clarity} <span aria-hidden="true">{say("matrix.notRanked")}</span>
        </span>
        <span class="unseen">
          {say("list.comma")}
          {unranked}
        </span>
      </>
    );
  if (merges)
    return (
      <span class="merges ranked">
        {clarity} <span>{say("matrix.merges")}</span>
      </span>
    );
  if (!isBest) return <span>{clarity}</span>;
  return (
    <>
      <strong>{clarity}</strong>
      <span class="unseen">
        {say("list.comma")}
        {say("matrix.clearest")}
      </span>
    </>
  );
}
