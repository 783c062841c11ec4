// Part. The edge table: every pair of paints that meet, before and after.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { EdgeRow, Reading } from "../../src/site/present/edge.ts";
import { SwatchPair } from "./swatch.tsx";

/** The table of a study's edges. */
export function EdgeTable({ edges }: { edges: readonly EdgeRow[] }): JSX.Element {
  return (
    <table class="edges">
      <caption>Edges, longest first. Length in flag heights, contrast in percent.</caption>
      <thead>
        <tr>
          <th scope="col">Edge</th>
          <th scope="col" class="end">
            Length
          </th>
          <th scope="col">Original</th>
          <th scope="col">Redesign</th>
          <th scope="col">Outcome</th>
        </tr>
      </thead>
      <tbody>
        {edges.map((edge) => (
          <tr key={edge.key}>
            <th scope="row">
              {edge.names}
              {edge.renamed && <span class="renamed">becomes {edge.renamed}</span>}
            </th>
            <td class="number end">{edge.length}</td>
            <td>
              {edge.before ? <ReadingCell reading={edge.before} /> : <span class="quiet">no edge</span>}
            </td>
            <td>
              <ReadingCell reading={edge.after} />
            </td>
            <td>{edge.outcome}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function ReadingCell({ reading }: { reading: Reading }): JSX.Element {
  return (
    <span class="reading">
      <SwatchPair hexes={reading.hexes} />
      <span class="number">{reading.contrast}</span> <span class="grade">{reading.grade}</span>
    </span>
  );
}
