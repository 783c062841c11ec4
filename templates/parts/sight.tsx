// Part. The steps of the method from a drawing to its lines: edges, the viewing distance, what is left from afar.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MethodPage } from "../../src/views/method/method.ts";
import { AfarFigure, MarkedFigure, TracedFigure } from "../figures/worked.tsx";
import { Paragraph, paper, Step, stepLink } from "./step.tsx";
import { useSay } from "./words.tsx";

/** What an edge is and how its length is found. */
export function EdgeStep({ method: { limits, pixels, worked } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="edges"
      figure={worked && <TracedFigure worked={worked} />}
      source={<Paragraph id="method.edgesSource" values={limits} />}
    >
      <Paragraph id="method.edgesText" values={{ pixels }} />
      <Paragraph id="method.edgesLimits" values={limits} />
    </Step>
  );
}

/** From where a flag is seen, and what has to be seen of it. */
export function ViewingStep({ method: { limits, viewing, worked } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="distance"
      figure={worked && <MarkedFigure worked={worked} />}
      source={<Paragraph id="method.distanceSource" values={limits} />}
    >
      {viewing ? (
        <Paragraph id="method.distanceText" values={viewing} />
      ) : (
        <Paragraph id="method.distanceNone" />
      )}
      <Paragraph id="method.distanceFocus" />
      <Paragraph id="method.distanceSame" values={limits} tags={{ a: stepLink("beside") }} />
    </Step>
  );
}

/** What is left from each distance, to where it lasts, and the blur of the pictures. */
export function LastingStep({ method: { limits, steps, worked } }: { method: MethodPage }): JSX.Element {
  const say = useSay();
  return (
    <Step
      id="lasting"
      figure={worked && <AfarFigure worked={worked} />}
      source={
        <Paragraph
          id="method.lastingSource"
          values={limits}
          tags={{
            levi: paper("https://doi.org/10.1016/0042-6989(90)90016-E"),
            strasburger: paper("https://doi.org/10.1177/2041669518765850"),
          }}
        />
      }
    >
      <Paragraph id="method.lastingText" values={limits} tags={{ a: stepLink("numbers") }} />
      <Paragraph id="method.lastingLast" />
      <table class="narrow">
        <caption>{say("method.lastingTable")}</caption>
        <thead>
          <tr>
            <th scope="col">{say("method.lastingFrom")}</th>
            <th scope="col" class="end">
              {say("method.lastingFinest")}
            </th>
            <th scope="col" class="end">
              {say("method.lastingBlur")}
            </th>
          </tr>
        </thead>
        <tbody>
          {steps.map(({ distance, finest, blur }) => (
            <tr key={distance}>
              <th scope="row" class="number">
                {distance}
              </th>
              <td class="number end">{finest}</td>
              <td class="number end">{blur}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Step>
  );
}
