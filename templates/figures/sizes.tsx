// Figure. Both flags at true size in pixels, as icons and in lists.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SizeRow } from "../../src/site/present/size.ts";

/** The figure with its caption. `id` is its anchor. */
export function SizesFigure({ rows, id }: { rows: readonly [SizeRow, SizeRow]; id: string }): JSX.Element {
  return (
    <figure class="sizes" id={id}>
      {rows.map((row) => (
        <div key={row.label} class="size-row">
          <p>{row.label}</p>
          <ul>
            {row.pictures.map((picture) => (
              <li key={picture.height}>
                <img
                  src={picture.src}
                  alt={picture.alt}
                  width={picture.width}
                  height={picture.height}
                  loading="lazy"
                  decoding="async"
                />
              </li>
            ))}
          </ul>
        </div>
      ))}
      <figcaption>
        <strong>
          <a href={`#${id}`}>At true size</a>.
        </strong>{" "}
        {rows[0].pictures.map(({ height }) => height).join(", ")} pixels high, as flags stand in lists and
        headings.
      </figcaption>
    </figure>
  );
}
