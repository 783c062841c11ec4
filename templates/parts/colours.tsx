// Part. The colours of the original, and what the replaced one becomes: in a line, and as a table.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { ColourRow } from "../../src/views/study/colours.ts";
import { Arrow } from "./move.tsx";
import { SwatchChip } from "./swatch.tsx";

/** The colours in a line, largest first. */
export function ColourLine({ colours }: { colours: readonly ColourRow[] }): JSX.Element {
  return (
    <ul class="colour-line">
      {colours.map((colour) => (
        <li key={colour.id}>
          <SwatchChip hex={colour.hex} /> {colour.name} <span class="number">{colour.share}</span>
          {colour.becomes && (
            <>
              {" "}
              <Arrow /> <SwatchChip hex={colour.becomes.hex} /> {colour.becomes.name}
            </>
          )}
        </li>
      ))}
    </ul>
  );
}

/** The table of a study's colours. */
export function ColourTable({
  colours,
  hasTincture,
}: {
  colours: readonly ColourRow[];
  hasTincture: boolean;
}): JSX.Element {
  return (
    <table class="colours">
      <caption>
        Colours of the original, largest first. Share of the full drawing; reflectance of the cloth.
      </caption>
      <thead>
        <tr>
          <th scope="col">Colour</th>
          <th scope="col" class="end">
            Share
          </th>
          <th scope="col" class="end">
            Reflectance
          </th>
          {hasTincture && <th scope="col">Tincture</th>}
        </tr>
      </thead>
      <tbody>
        {colours.map((colour) => (
          <tr key={colour.id}>
            <th scope="row">
              <NamedColour hex={colour.hex} name={colour.name} />
              {colour.becomes && (
                <span class="becomes">
                  becomes <NamedColour hex={colour.becomes.hex} name={colour.becomes.name} />
                </span>
              )}
              {colour.vanishesAt && (
                <span class="becomes">not told apart from {colour.vanishesAt} flag heights</span>
              )}
              {colour.uneven && (
                <span class="becomes">
                  uneven, from <SwatchChip hex={colour.uneven[0]} /> to <SwatchChip hex={colour.uneven[1]} />
                </span>
              )}
            </th>
            <td class="number end">{colour.share}</td>
            <td class="number end">{colour.reflectance}</td>
            {hasTincture && <td>{colour.tincture}</td>}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function NamedColour({ hex, name }: Pick<ColourRow, "hex" | "name">): JSX.Element {
  return (
    <span class="named">
      <SwatchChip hex={hex} /> {name} <code>{hex}</code>
    </span>
  );
}
