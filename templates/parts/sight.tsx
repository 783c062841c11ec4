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
      heading="Colours and edges"
      figure={worked && <TracedFigure worked={worked} />}
      source={
        <p>
          Checked against flags whose geometry a law fixes: shares within 0.2 points, lengths within 1%, with
          fine tips 3%. Own: the picture’s size, the {limits.edge}.
        </p>
      }
    >
      <p>
        The drawing is rendered {pixels} pixels high, less if very wide, each colour in a flat code colour.
        Where two meet a line is traced; all lines of the same two are one <em>edge</em>, measured in flag
        heights. The flag’s border is none. Shapes that show at less than half are left out, others count as
        opaque. An edge under {limits.edge} of all edge length is never the weakest and moves no verdict.
      </p>
    </Step>
  );
}

/** From where a flag is seen, and what has to be seen of it. */
export function ViewingStep({ method: { limits, viewing, worked } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="distance"
      heading="Distance, and what has to be seen"
      figure={worked && <MarkedFigure worked={worked} />}
      source={
        <p>
          One arcminute: 20/20 sight, ISO 8596, read in summaries. A model of resolution: a single strong line
          may still be noticed. Own: all other steps.
        </p>
      }
    >
      {viewing ? (
        <p>
          Flags are measured from {viewing.distance} flag heights, as this gallery chooses. One arcminute then
          covers {viewing.finest} flag heights. Thinner parts go to their neighbours before edges are traced:
          outlines vanish, wide fimbriations stay. Within 10% of the limit a warning says so.
        </p>
      ) : (
        <p>
          This gallery measures the full drawing. From a distance, which it may choose, parts too thin to be
          made out go to their neighbours.
        </p>
      )}
      <p>
        Colours within ΔE00 {limits.same} of a larger one count with it. Shares of colours are of the full
        drawing.
      </p>
      <p>
        <em>What has to be seen</em> are the charges: parts of 0.2% of the flag or more that touch neither
        border nor transparency, with what they enclose. Over 35% they are a framed field, and its inside is
        searched. The hole of a ring is none. Authors may name them, and must where a charge runs into its own
        colour: that is not guessed. None is a fact, not a fault. A <em>charge</em> is a connected tenth of
        that area, else all of it.
      </p>
    </Step>
  );
}

/** What is left from each distance, to where it lasts, and the blur of the pictures. */
export function LastingStep({ method: { limits, steps, worked } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="lasting"
      heading="From afar"
      figure={worked && <AfarFigure worked={worked} />}
      source={
        <p>
          {limits.span} arcminutes: ISO 8596, read in summaries. Own: both limits. Blur, 0.5 arcminutes
          standard deviation: Levi and others, <i>Vision Research</i> 30, 1990,{" "}
          <Paper href="https://doi.org/10.1016/0042-6989(90)90016-E">abstract</Paper>; a Gaussian is no lens:
          Strasburger and others, <Paper href="https://doi.org/10.1177/2041669518765850">2018</Paper>.
        </p>
      }
    >
      <p>
        How clear is it? The <a href="#numbers">clarity</a> of what has to be seen alone, from there. How
        large? It <em>lasts to</em> the last step before less than {limits.left} of its area is left or its
        largest piece spans under {limits.span} arcminutes, a letter that 20/20 sight reads: a matter of size
        that no colour changes. 320 is 320 or more. Found charges start from the gallery’s distance, named
        ones from the drawing. Pictures are blurred in linear light; no number is theirs.
      </p>
      <table class="narrow">
        <caption>What a distance makes of a flag; % of its height</caption>
        <tbody>
          <Numbers head="Flag heights" values={steps.map(({ distance }) => distance)} />

          <Numbers head="Finest part, %" values={steps.map(({ finest }) => finest)} />
          <Numbers head="Blur, %" values={steps.map(({ blur }) => blur)} />
        </tbody>
      </table>
    </Step>
  );
}

function Numbers({ head, values }: { head: string; values: readonly string[] }): JSX.Element {
  return (
    <tr>
      <th scope="row">
        <bdi>{head}</bdi>
      </th>
      {values.map((value, index) => (
        <td key={index} class="number end">
          {value}
        </td>
      ))}
    </tr>
  );
}
