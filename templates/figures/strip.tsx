// Figure. The distance strip: both flags as they look from every distance step, original over redesign.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { StripView } from "../../src/site/present/strip.ts";
import { DrawnMat } from "../parts/plate.tsx";

/** The figure with its caption. `id` is its anchor. */
export function StripFigure({ strip, id }: { strip: StripView; id: string }): JSX.Element {
  return (
    <figure class="strip" id={id}>
      <ol class="strip-steps">
        {strip.steps.map((step, at) => (
          <li key={step.distance}>
            <p class="strip-distance">
              From <span class="number">{step.distance}</span>
              <span class="unseen"> flag heights</span>
            </p>
            {step.plates.map((plate, index) => (
              <div key={plate.label} class="strip-plate">
                <DrawnMat plate={plate} id={`${id}-${at}-${index}`} />
                {step.focus?.clarity && (
                  <p class="strip-left">
                    <span class="unseen">{index === 0 ? "Original: focus " : "Redesign: focus "}</span>
                    clarity <span class="number">{step.focus.clarity[index]}</span>
                  </p>
                )}
              </div>
            ))}
            {step.focus && (
              <p class="strip-left">
                <span class="unseen">Of the focus </span>
                {step.focus.left}
              </p>
            )}
          </li>
        ))}
      </ol>
      <figcaption>
        <strong>
          <a href={`#${id}`}>{strip.title}</a>.
        </strong>{" "}
        Original over redesign, each as a sharp eye has it from so many flag heights away, and then enlarged
        to one size.{" "}
        {strip.steps[0]?.focus &&
          "Under each picture: the clarity of the focus from there; under both: how much of its area is left. "}
        It is a model: a blur in linear light, no wind, no haze, no glare.
      </figcaption>
    </figure>
  );
}
