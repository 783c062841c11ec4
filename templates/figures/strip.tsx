// Figure. The distance strip: both flags as they look from near, far and very far, original beside redesign.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { StripView } from "../../src/views/study/distancestrip.ts";
import { DrawnMat } from "../parts/plate.tsx";

/** The figure with its caption. `id` is its anchor. */
export function StripFigure({ strip, id }: { strip: StripView; id: string }): JSX.Element {
  // Beside captions of others the pictures stay in step.
  const isUnderEach = strip.steps.some(({ clarity }) => clarity !== undefined);
  return (
    <figure class="strip" id={id}>
      <ol class="strip-steps">
        {strip.steps.map((step, at) => (
          <li key={step.distance}>
            <p class="strip-distance">
              From <span class="number">{step.distance}</span> flag heights
            </p>
            <div>
              <div class="small-pair">
                {step.plates.map((plate, index) => (
                  <div key={plate.label}>
                    <DrawnMat plate={plate} id={`${id}-${at}-${index}`} />
                    {step.clarity && (
                      <p class="strip-clarity">
                        <span class="unseen">{index === 0 ? "Original: " : "Redesign: "}</span>
                        what has to be seen:{" "}
                        <span class="strip-number">
                          clarity <span class="number">{step.clarity[index]}</span>
                        </span>
                      </p>
                    )}
                    {isUnderEach && step.lost && <p class="strip-clarity">{step.lost}</p>}
                  </div>
                ))}
              </div>
              {!isUnderEach && step.lost && <p class="strip-clarity">{step.lost}</p>}
            </div>
          </li>
        ))}
      </ol>
      <figcaption>
        <strong>
          <a href={`#${id}`}>{strip.title}</a>.
        </strong>{" "}
        The original first, then the redesign, as a sharp eye has them from there, enlarged to one size: no
        wind, no haze, no glare. {strip.says.join(" ")}
      </figcaption>
    </figure>
  );
}
