// Part. The colours of the original, and what the replaced one becomes: in a line, and as a table.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { Hex } from "../../src/colour/colour.ts";
import type { ColourRow } from "../../src/views/study/colours.ts";
import { Arrow } from "./move.tsx";
import { SwatchChip } from "./swatch.tsx";
import { Message, useSay } from "./words.tsx";

/** The colours in a line, largest first. */
export function ColourLine({ colours }: { colours: readonly ColourRow[] }): JSX.Element {
  return (
    <ul class="colour-line">
      {colours.map((colour) => (
        <li key={colour.id}>
          <SwatchChip hex={colour.hex} /> <bdi>{colour.name}</bdi> <bdi class="number">{colour.share}</bdi>
          {colour.becomes && (
            <>
              {" "}
              <Arrow /> <SwatchChip hex={colour.becomes.hex} /> <bdi>{colour.becomes.name}</bdi>
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
  const say = useSay();
  return (
    <table class="colours">
      <caption>{say("colours.caption")}</caption>
      <thead>
        <tr>
          <th scope="col">{say("colours.colour")}</th>
          <th scope="col" class="end">
            {say("colours.share")}
          </th>
          <th scope="col" class="end">
            {say("colours.reflectance")}
          </th>
          {hasTincture && <th scope="col">{say("colours.tincture")}</th>}
        </tr>
      </thead>
      <tbody>
        {colours.map((colour) => (
          <tr key={colour.id}>
            <th scope="row">
              <NamedColour hex={colour.hex} name={colour.name} />
              {colour.becomes && (
                <span class="becomes">
                  {say("colours.becomes")} <NamedColour hex={colour.becomes.hex} name={colour.becomes.name} />
                </span>
              )}
              {colour.vanishesAt !== undefined && (
                <span class="becomes">{say("colours.vanishes", { distance: colour.vanishesAt })}</span>
              )}
              {colour.uneven && (
                <span class="becomes">
                  <Uneven ends={colour.uneven} />
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

function Uneven({ ends: [first, last] }: { ends: readonly [Hex, Hex] }): JSX.Element {
  return (
    <Message
      id="colours.uneven"
      tags={{ first: () => <SwatchChip hex={first} />, last: () => <SwatchChip hex={last} /> }}
    />
  );
}

function NamedColour({ hex, name }: Pick<ColourRow, "hex" | "name">): JSX.Element {
  return (
    <span class="named">
      <SwatchChip hex={hex} /> {name} <code>{hex}</code>
    </span>
  );
}
