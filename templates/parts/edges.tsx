// Part. The edge table: every pair of paints that meet, before and after.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { DetailView } from "../../src/site/present/crop.ts";
import type { EdgeRow, Reading } from "../../src/site/present/edge.ts";
import { MeetingChip } from "./swatch.tsx";

/** The table of a study's edges: those of the focus first, in a group of their own. */
export function EdgeTable({ edges }: { edges: readonly EdgeRow[] }): JSX.Element {
  const focused = edges.filter((edge) => edge.focus);
  const others = edges.filter((edge) => !edge.focus);
  return (
    <table class="edges edge-list">
      <caption>
        {focused.length > 0 ? "Edges of the focus first." : "Longest first."} Length in flag heights, contrast
        in percent.
      </caption>
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
      {focused.length > 0 && <Group heading="Edges of the focus" edges={focused} />}
      {focused.length > 0 && others.length > 0 && <Group heading="Other edges" edges={others} />}
      {focused.length === 0 && <Group edges={others} />}
    </table>
  );
}

function Group({ heading, edges }: { heading?: string; edges: readonly EdgeRow[] }): JSX.Element {
  return (
    <tbody>
      {heading && (
        <tr class="group">
          <th scope="rowgroup" colSpan={5}>
            {heading}
          </th>
        </tr>
      )}
      {edges.map((edge) => (
        <Row key={edge.key} edge={edge} />
      ))}
    </tbody>
  );
}

function Row({ edge }: { edge: EdgeRow }): JSX.Element {
  return (
    <tr>
      <th scope="row">
        {edge.address ? <a href={edge.address}>{edge.names}</a> : edge.names}
        {edge.renamed && <span class="renamed">becomes {edge.renamed}</span>}
        {edge.focus && <span class="renamed">{edge.focus}</span>}
      </th>
      <td class="number end">{edge.length}</td>
      <td>
        <ReadingCell reading={edge.before} />
      </td>
      <td>
        <ReadingCell reading={edge.after} />
      </td>
      <td>{edge.outcome}</td>
    </tr>
  );
}

/** Two colours with their contrast and grade, or that there is no edge. */
export function ReadingCell({
  reading,
  detail,
}: {
  reading: Reading | undefined;
  detail?: DetailView | undefined;
}): JSX.Element {
  if (reading === undefined) return <span class="quiet">no edge</span>;
  return (
    <span class="reading">
      <MeetingChip hexes={reading.hexes} detail={detail} />
      <span class="number">{reading.contrast}</span> <span class="grade">{reading.grade}</span>
      {reading.near && <span class="near-line">{reading.near}</span>}
    </span>
  );
}
