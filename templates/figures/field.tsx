// Figure. The whole field: every flag at its clarity, a small picture; it shows large while it is pointed at.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { FieldDot, FieldView } from "../../src/views/survey/surveyfield.ts";
import { useSay } from "../parts/words.tsx";

/** The figure with its caption. `id` is its anchor, `after` the one of what follows it. */
export function FieldFigure({
  field,
  id,
  after,
}: {
  field: FieldView;
  id: string;
  after: string;
}): JSX.Element {
  const say = useSay();
  return (
    <figure class="field-figure" id={id}>
      <a class="past" href={`#${after}`}>
        {say("field.past")}
      </a>
      <div class={field.isSmall ? "axis axis-small" : "axis"}>
        <div class="field-place" aria-hidden="true">
          <Shown dot={field.least} id="field.least" />
        </div>
        <ol class="field-rows">
          {field.rows.map((row) => (
            <li key={row.label} class={row.dots.length === 0 ? "bare" : undefined}>
              <bdi class="field-label number">{row.label}</bdi>
              {row.dots.length > 0 && (
                <ol class="field-dots">
                  {row.dots.map((dot) => (
                    <li key={dot.row}>
                      <Dot dot={dot} isShown={dot.row === field.least.row} />
                    </li>
                  ))}
                </ol>
              )}
            </li>
          ))}
        </ol>
      </div>
      <figcaption>
        <strong>
          <a href={`#${id}`}>{say("field.title")}</a>.
        </strong>{" "}
        {say("field.about")} {field.without}
      </figcaption>
    </figure>
  );
}

/** `isShown`: it is the one shown large until another is pointed at. */
function Dot({ dot, isShown }: { dot: FieldDot; isShown: boolean }): JSX.Element {
  return (
    <a href={`#${dot.row}`} class={`dot${dot.hasStudy ? " full" : ""}${isShown ? " shown" : ""}`}>
      <img class="mini" src={dot.src} alt="" width={dot.width} height={dot.height} decoding="async" />
      <span class="peek">
        <Shown dot={dot} />
      </span>
    </a>
  );
}

/** The flag at a size to look at, with its name and what is weakest in it. */
function Shown({
  dot: { src, fit, width, height, name, clarity, weakest },
  id = "field.flag",
}: {
  dot: FieldDot;
  id?: "field.flag" | "field.least";
}): JSX.Element {
  const say = useSay();
  return (
    <>
      <span class="mat">
        <img
          class={`flag flag-${fit}`}
          src={src}
          alt=""
          width={width}
          height={height}
          loading="lazy"
          decoding="async"
        />
      </span>
      <span class="peek-words">
        <span class="peek-name">{say(id, { name, clarity })}</span>
        {weakest && <span class="renamed">{weakest}</span>}
      </span>
    </>
  );
}
