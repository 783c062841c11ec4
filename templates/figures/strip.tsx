// Figure. The distance strip: both flags as they look from near, far and very far, original beside redesign.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { StripView } from "../../src/views/study/distancestrip.ts";
import { DrawnMat } from "../parts/plate.tsx";
import { Message, useSay } from "../parts/words.tsx";

/** The figure with its caption. `id` is its anchor. */
export function StripFigure({ strip, id }: { strip: StripView; id: string }): JSX.Element {
  const say = useSay();
  // Beside captions of others the pictures stay in step.
  const isUnderEach = strip.steps.some(({ clarity }) => clarity !== undefined);
  return (
    <figure class="strip" id={id}>
      <ol class="strip-steps">
        {strip.steps.map((step, at) => (
          <li key={step.distance}>
            <div class="small-pair">
              {step.plates.map((plate, index) => (
                <div key={plate.label}>
                  <DrawnMat plate={plate} id={`${id}-${at}-${index}`} />
                  {step.clarity && (
                    <p class="strip-clarity">
                      <span class="unseen">
                        {say("list.colon", {
                          name: say(index === 0 ? "plate.original" : "plate.redesign"),
                          said: "",
                        })}
                      </span>
                      {say("strip.focus")}{" "}
                      <span class="strip-number">
                        {say("strip.clarity")} <span class="number">{step.clarity[index]}</span>
                      </span>
                    </p>
                  )}
                  {isUnderEach && step.lost && <p class="strip-clarity">{step.lost}</p>}
                </div>
              ))}
            </div>
            <div class="strip-distance">
              <p>
                <Message
                  id="strip.from"
                  values={{ distance: step.distance }}
                  tags={{ number: (text) => <span class="number">{text}</span> }}
                />
              </p>
              {!isUnderEach && step.lost && <p class="strip-clarity">{step.lost}</p>}
            </div>
          </li>
        ))}
      </ol>
      <figcaption>
        <strong>
          <a href={`#${id}`}>{strip.title}</a>.
        </strong>{" "}
        {say("strip.caption")} {strip.says.join(" ")}
      </figcaption>
    </figure>
  );
}
