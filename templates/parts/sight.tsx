// Part. The steps of the method from a drawing to its lines: edges, the viewing distance, what is left from afar.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MethodPage } from "../../src/views/method/method.ts";
import { AfarFigure, MarkedFigure, TracedFigure } from "../figures/worked.tsx";
import { Paper, Step } from "./step.tsx";

/** What an edge is and how its length is found. */
export function EdgeStep({ method: { limits, pixels, worked } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="edges"
      figure={worked && <TracedFigure worked={worked} />}
      source={
        <p>
          Checked against flags whose geometry a law fixes: shares agree within 0.2 points, lengths within 1%,
          with fine tips within 3%. Our own judgement: the size of the picture, half the strength,{" "}
          {limits.edge} of all length.
        </p>
      }
    >
      <p>
        We draw the flag {pixels} pixels high, lower where it is very wide, and number its colours. We trace
        the line wherever two of them meet. All lines between the same two colours are one <em>edge</em>; its
        length is told in heights of the flag: across one of 2:3 it is 1.5.
      </p>
      <p>
        The border of the flag is no edge. A shape that shows at less than half its strength (opacity 0.4) is
        left out; any other counts as opaque. An edge under {limits.edge} of all edge length is listed, but is
        never the weakest and moves no verdict.
      </p>
    </Step>
  );
}

/** From where a flag is seen, and what has to be seen of it. */
export function ViewingStep({ method: { limits, viewing, worked } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="distance"
      figure={worked && <MarkedFigure worked={worked} />}
      source={
        <p>
          One arcminute: 20/20 sight, ISO 8596, second-hand. It is a model: a single strong line may still be
          noticed. Our own judgement: the distance and all percentages, ΔE00 {limits.same}, the tenth.
        </p>
      }
    >
      {viewing ? (
        <p>
          A flag is made to be seen from afar. This gallery measures from {viewing.distance} flag heights
          away; from there the finest part that an eye makes out, one arcminute, is {viewing.finest} of a flag
          height. Thinner parts are given to their neighbours before edges are traced, so a thin outline goes
          and a broad one stays. A part within 10% of the limit raises a warning.
        </p>
      ) : (
        <p>
          This gallery measures the full drawing. From a distance, which it may choose, parts too thin to be
          made out go to their neighbours.
        </p>
      )}
      <p>
        <em>What has to be seen</em> are the charges: parts that touch no border, with all that they enclose,
        and that fill 0.2% of the flag or more. Over 35% they are a framed field, and we look inside it; the
        hole of a ring is none. A piece with a tenth of that area is a <em>charge</em> of its own. Authors may
        name it instead, and must where a charge runs into a field of its own colour, for we do not guess. A
        flag without a charge is no worse for it.
      </p>
      <p>
        A colour within {limits.same} of a larger one (<a href="#beside">ΔE00</a>) counts with it. Shares of
        colours are of the full drawing.
      </p>
    </Step>
  );
}

/** What is left from each distance, to where it lasts, and the blur of the pictures. */
export function LastingStep({ method: { limits, steps, worked } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="lasting"
      figure={worked && <AfarFigure worked={worked} />}
      source={
        <p>
          {limits.span} arcminutes: ISO 8596, second-hand. Our own judgement: the {limits.left}, and to ask it
          of the largest piece. Blur, 0.5 arcminutes standard deviation: Levi and others,{" "}
          <i>Vision Research</i> 30, 1990,{" "}
          <Paper href="https://doi.org/10.1016/0042-6989(90)90016-E">abstract</Paper>; a Gaussian is no lens:
          Strasburger and others, <Paper href="https://doi.org/10.1177/2041669518765850">2018</Paper>.
        </p>
      }
    >
      <p>
        From each distance we ask two things. Is what has to be seen clear? Its own edges have a{" "}
        <a href="#numbers">clarity</a> there. Is it large enough? At least {limits.left} of its area has to be
        left, and its largest piece has to span {limits.span} arcminutes, as a letter that 20/20 sight reads.
      </p>
      <p>
        It <em>lasts to</em> the last distance from which it is large enough. That is a matter of size, which
        no change of colour moves. The pictures are blurred as an eye has them; no number is taken from them.
      </p>
      <table class="narrow">
        <caption>What a distance makes of a flag, in percent of its height</caption>
        <thead>
          <tr>
            <th scope="col">Flag heights</th>
            <th scope="col" class="end">
              Finest part
            </th>
            <th scope="col" class="end">
              Blur
            </th>
          </tr>
        </thead>
        <tbody>
          {steps.map(({ distance, finest, blur }) => (
            <tr key={distance}>
              <th scope="row" class="number">
                {distance}
              </th>
              <td class="number end">{finest}%</td>
              <td class="number end">{blur}%</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Step>
  );
}
