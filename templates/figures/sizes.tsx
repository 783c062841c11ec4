// Figure. Both flags small, at sizes that stand for distances.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SizeRow } from "../../src/views/study/truesize.ts";

/** The figure with its caption. `id` is its anchor. */
export function SizesFigure({ rows, id }: { rows: readonly [SizeRow, SizeRow]; id: string }): JSX.Element {
  return (
    <figure class="sizes" id={id}>
      <div class="size-rows">
        {rows.map((row) => (
          <div key={row.label} class="size-row">
            <p>{row.label}</p>
            <ol>
              {row.pictures.map((picture) => (
                <li key={picture.height}>
                  <span class="size-mat">
                    <img
                      src={picture.src}
                      alt={picture.alt}
                      width={picture.width}
                      height={picture.height}
                      decoding="async"
                    />
                  </span>
                  <span class="size-distance">{picture.distance}</span>
                </li>
              ))}
            </ol>
          </div>
        ))}
      </div>
      <figcaption>
        <strong>
          <a href={`#${id}`}>At arm’s length</a>.
        </strong>{" "}
        Seen from 60 cm, each is as large as the flag from the distance under it, on a screen or on paper with
        96 pixels to the inch.
      </figcaption>
    </figure>
  );
}
