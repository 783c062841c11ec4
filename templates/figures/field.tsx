// Figure. The whole field: every flag at its clarity, a small picture; it shows large while it is pointed at.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { FieldDot, FieldView } from "../../src/views/survey/surveyfield.ts";

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
  return (
    <figure class="field-figure" id={id}>
      <figcaption>
        <strong>
          <a href={`#${id}`}>The whole field</a>.
        </strong>{" "}
        Every flag at its clarity today; underlined where a study is about it.{" "}
        {field.without && `${field.without} `}{" "}
        <a class="past" href={`#${after}`}>
          Go past the picture
        </a>
      </figcaption>
      <div class={field.isSmall ? "axis axis-small" : "axis"}>
        <div class="field-place" aria-hidden="true">
          <Shown dot={field.least} lead="Least clear: " />
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
function Shown({ dot, lead = "" }: { dot: FieldDot; lead?: string }): JSX.Element {
  return (
    <>
      <span class="mat">
        <img
          class={`flag flag-${dot.fit}`}
          src={dot.src}
          alt=""
          width={dot.width}
          height={dot.height}
          loading="lazy"
          decoding="async"
        />
      </span>
      <span class="peek-words">
        <span class="peek-name">
          {lead}
          {dot.name}, clarity {dot.clarity}
        </span>
        {dot.weakest && <span class="renamed">{dot.weakest}</span>}
      </span>
    </>
  );
}
