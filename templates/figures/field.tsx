// Figure. The whole field: every flag at its clarity, a small picture or, where there are many, a dot; the flag itself shows on hover and focus.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { FieldDot, FieldView } from "../../src/site/present/field.ts";

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
        Every flag at its clarity in percent; {field.isSmall ? "underlined where" : "a full mark where"} a
        study begins with it. {field.without && ` ${field.without}`}{" "}
        <a class="past" href={`#${after}`}>
          Go past the picture
        </a>
      </figcaption>
      <div class={field.isSmall ? "axis axis-small" : "axis"}>
        <p class="field-place" aria-hidden="true">
          Each leads to its line below. Point at one to see it here.
        </p>
        <ol class="field-rows">
          {field.rows.map((row) => (
            <li key={row.label}>
              <span class="field-label number">{row.label}</span>
              {row.dots.length > 0 && (
                <ol class="field-dots">
                  {row.dots.map((dot) => (
                    <li key={dot.row}>
                      <Dot dot={dot} isSmall={field.isSmall} />
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

function Dot({ dot, isSmall }: { dot: FieldDot; isSmall: boolean }): JSX.Element {
  return (
    <a href={`#${dot.row}`} class={dot.hasStudy ? "dot full" : "dot"}>
      {isSmall && (
        <img
          class="mini"
          src={dot.src}
          alt=""
          width={dot.width}
          height={dot.height}
          loading="lazy"
          decoding="async"
        />
      )}
      <span class="peek">
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
          {dot.name}, {dot.clarity}
        </span>
      </span>
    </a>
  );
}
