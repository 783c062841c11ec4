// Figure. Both flags small, at sizes that stand for distances.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SizeRow } from "../../src/views/study/truesize.ts";
import { useSay } from "../parts/words.tsx";

/** The figure with its caption. `id` is its anchor. */
export function SizesFigure({ rows, id }: { rows: readonly [SizeRow, SizeRow]; id: string }): JSX.Element {
  const say = useSay();
  return (
    <figure class="sizes" id={id}>
      <div class="size-rows">
        {rows.map((row) => (
          <div key={row.label} class="size-row">
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
            <p>{row.label}</p>
          </div>
        ))}
      </div>
      <figcaption>
        <strong>
          <a href={`#${id}`}>{say("sizes.title")}</a>.
        </strong>{" "}
        {say("sizes.caption")}
      </figcaption>
    </figure>
  );
}
