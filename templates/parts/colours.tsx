// Part. The colours table: every paint of the original, and what the replaced one becomes.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { ColourRow } from "../../src/site/present/colours.ts";
import { SwatchChip } from "./swatch.tsx";

/** The table of a study's paints. */
export function ColourTable({ colours }: { colours: readonly ColourRow[] }): JSX.Element {
  return (
    <table class="colours">
      <caption>
        Colours of the original, largest first. Share of the full drawing; reflectance of the cloth in
        percent.
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
          <th scope="col">Tincture</th>
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
            <td>{colour.tincture}</td>
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
