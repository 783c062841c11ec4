// Part. Of the sheet for makers: the flag in outlines with its sides, its plain shapes, and its colours.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { BuiltRow, DyeRow, MakerPage } from "../../src/views/sheet/makerpage.ts";
import { CaptionedPlate } from "./plate.tsx";
import { SwatchChip } from "./swatch.tsx";
import { Message, useSay } from "./words.tsx";

/** The redesign in its colours, and in outlines with its height and width along its sides. */
export function MeasuredFlag({ maker }: { maker: MakerPage }): JSX.Element {
  return (
    <div class="maker-flags">
      <CaptionedPlate plate={maker.flag} eager>
        {useSay()("sheet.redesign")}
      </CaptionedPlate>
      <MeasuredOutline maker={maker} />
    </div>
  );
}

function MeasuredOutline({ maker }: { maker: MakerPage }): JSX.Element {
  const { outline, sides, proportions } = maker;
  return (
    <figure class="maker-outline">
      <span class="maker-side maker-height number">{sides.height}</span>
      <img
        class="sheets-picture"
        src={outline.src}
        alt={outline.alt}
        width={outline.width}
        height={outline.height}
        decoding="async"
      />
      <span class="maker-side maker-width number">{sides.width}</span>
      <figcaption>
        <Message
          id="maker.proportions"
          values={{ proportions }}
          tags={{ number: (text) => <span class="number">{text}</span> }}
        />
      </figcaption>
    </figure>
  );
}

/** The plain shapes, in the order in which they are laid. */
export function BuiltTable({ rows }: { rows: readonly BuiltRow[] }): JSX.Element {
  const say = useSay();
  return (
    <table class="maker-table">
      <thead>
        <tr>
          <th scope="col">{say("maker.shape")}</th>
          <Heads
            names={[say("maker.fromHoist"), say("maker.fromTop"), say("maker.width"), say("maker.height")]}
          />
        </tr>
      </thead>
      <tbody>
        {rows.map((row, index) => (
          <tr key={index}>
            <th scope="row">
              <SwatchChip hex={row.hex} /> {row.shape}
              {say("list.comma")}
              {row.colour}
            </th>
            <Cells texts={[row.fromHoist, row.fromTop, row.width, row.height]} />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The colours, largest first. */
export function DyeTable({ rows }: { rows: readonly DyeRow[] }): JSX.Element {
  const say = useSay();
  return (
    <table class="maker-table maker-dyes">
      <thead>
        <tr>
          <th scope="col">{say("maker.colour")}</th>
          <Heads names={[say("maker.hex"), "sRGB", "CIELAB L* / a* / b*", say("maker.reflectance")]} />
        </tr>
      </thead>
      <tbody>
        {rows.map(({ hex, name, rgb, lab, reflectance }) => (
          <tr key={hex}>
            <th scope="row">
              <SwatchChip hex={hex} /> {name}
            </th>
            <Cells texts={[hex, rgb, lab, reflectance]} />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Heads({ names }: { names: readonly string[] }): JSX.Element {
  return (
    <>
      {names.map((name) => (
        <th key={name} scope="col" class="end">
          {name}
        </th>
      ))}
    </>
  );
}

function Cells({ texts }: { texts: readonly string[] }): JSX.Element {
  return (
    <>
      {texts.map((text, index) => (
        <td key={index} class="number end">
          {text}
        </td>
      ))}
    </>
  );
}
