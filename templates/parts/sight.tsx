// Part. The steps of the method about sight: the viewing distance, the focus, and what is left of it from afar.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MethodPage } from "../../src/site/present/method.ts";
import { Paper, Step } from "./step.tsx";

/** From where a flag is seen, and what has to be seen of it. */
export function ViewingStep({ method }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="distance"
      heading="Distance, and what has to be seen"
      source={
        <>
          <p>
            That a 20/20 eye resolves one arcminute is the definition of visual acuity: ISO 8596, read in
            summaries. All else here is our own model of resolution; a single strong line may still be
            noticed.
          </p>
          <p>
            The steps of ΔE00 {method.limits.same}, of 10, 35 and 0.2 percent and of a tenth, and the doubling
            of what has to be seen, are our own judgement.
          </p>
        </>
      }
    >
      {method.viewing ? (
        <p>
          Flags are measured as seen from {method.viewing.distance} flag heights away; a gallery may choose
          another distance. From there one arcminute covers {method.viewing.finest} flag heights. Parts
          thinner than that cannot be made out in the model: they are given to the neighbours that remain, and
          edges are traced after that. So thin outlines vanish, and wide ones stay.
        </p>
      ) : (
        <p>
          In this gallery flags are measured on the full drawing, not from a distance. A gallery may choose a
          distance; parts too thin to be made out from there are then given to the neighbours that remain.
        </p>
      )}
      <p>
        Colours closer than ΔE00 {method.limits.same} to a larger one count with it, so that shading in slices
        is one thing. Shares of colours are of the full drawing; a colour that is gone keeps its row. Parts
        within 10 percent of the limit are named in a warning.
      </p>
      <p>
        <em>What has to be seen</em> are the charges. They are <em>found</em> as the parts that touch neither
        the border nor a transparent ground, with what they enclose, of 0.2 percent of the flag or more. Where
        they cover over 35 percent they are a field within a frame, and what lies inside it is looked at the
        same way. The hole of a ring, in the colour of the field, is no charge. Or they are <em>named</em> by
        the author, by colour or by shape. A charge that runs into its own colour is not guessed: the page
        says so, and how to name it. To have no charge is a fact and not a fault. A <em>charge</em> is a
        connected piece with a tenth of the area of all that has to be seen, or more; where no piece has that,
        all of it together.
      </p>
      <p>
        In clarity the edges of what has to be seen count twice, none more than twice. Of an edge that borders
        it along a part of its length only, that part counts twice.
      </p>
    </Step>
  );
}

/** What is left of what has to be seen from each distance, to where it lasts, and the blur of the distance strip. */
export function LastingStep({ method }: { method: MethodPage }): JSX.Element {
  const { limits } = method;
  return (
    <Step
      id="lasting"
      heading="What is left from afar"
      source={
        <>
          <p>
            {limits.span} arcminutes: the height of the letters by which 20/20 sight is defined, ISO 8596,
            read in summaries. To ask it of a charge, and the {limits.left} that have to be left, are our own
            judgement.
          </p>
          <p>
            Blur of the eye, 0.5 arcminutes as a standard deviation: Levi and others, <i>Vision Research</i>{" "}
            30, 1990, 1971–1993, <Paper href="https://doi.org/10.1016/0042-6989(90)90016-E">abstract</Paper>.
          </p>
          <p>
            A Gaussian is not the blur of a lens: Strasburger, Bach, Heinrich, <i>i-Perception</i> 2018,{" "}
            <Paper href="https://doi.org/10.1177/2041669518765850">doi 10.1177/2041669518765850</Paper>.
          </p>
        </>
      }
    >
      <p>
        From 10, 20, 40, 80, 160 and 320 flag heights two things are asked of what has to be seen. How clear
        is it? <em>Its clarity</em> is the <a href="#numbers">clarity</a> of its own edges alone, as they are
        seen from there. How large is it? It <em>lasts to</em> the last step before the first at which less
        than {limits.left} of its area is left, or at which its largest piece spans less than {limits.span}{" "}
        arcminutes along its longer side: the size of a letter that 20/20 sight reads.
      </p>
      <p>
        How far it lasts is a matter of its size alone and says nothing of contrast; a change of colour does
        not move it. 320 stands for 320 or more, and what is too small at the first step lasts to under 10.
        Without a charge nothing lasts, which is not the same. Charges that were found start from their area
        at the gallery’s distance, named ones from their area in full.
      </p>
      <p>
        In the <em>distance strip</em> each flag is blurred in linear light by the angle that it fills from
        there, and then enlarged to one size. The strip is there to be looked at; no number is taken from it.
      </p>
      <table>
        <caption>What each distance makes of a flag. Parts and blur in percent of its height.</caption>
        <thead>
          <tr>
            <th scope="col" class="end">
              Flag heights
            </th>
            <th scope="col" class="end">
              Angle, arcminutes
            </th>
            <th scope="col" class="end">
              Finest part
            </th>
            <th scope="col" class="end">
              Blur
            </th>
          </tr>
        </thead>
        <tbody>
          {method.steps.map((step) => (
            <tr key={step.distance}>
              <th scope="row" class="number end">
                {step.distance}
              </th>
              <td class="number end">{step.angle}</td>
              <td class="number end">{step.finest}</td>
              <td class="number end">{step.blur}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Step>
  );
}
