// Part. The steps of the method beyond one comparison: other changes, the survey, likeness, other eyes, and the cautions.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MethodPage } from "../../src/views/method/method.ts";
import { LikenessFigure, VisionFigure } from "../figures/worked.tsx";
import { Paper, Step } from "./step.tsx";

/** How options are found and ordered. */
export function OptionsStep({ method: { limits } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="options"
      heading="Other single changes"
      source={
        <p>
          ΔE*ab {limits.departure}: Melgosa and Gómez-Robledo, <i>Óptica Pura y Aplicada</i> 55(2), 2022, who
          propose it; abstract read. Lightness:{" "}
          <Paper href="https://bottosson.github.io/posts/oklab/">Ottosson, 2020</Paper>. Own: the order, the
          third, the {limits.leastGain} and {limits.firstWithin} points.
        </p>
      }
    >
      <p>
        Every colour over 0.4% of the flag is replaced by the gallery’s palette, the flag’s other colours, and
        its <em>kept hue</em>: the least change of lightness to a contrast of {limits.keptHue}% with
        neighbours it is not clear of, no grade falling, its name in the family: pink is no red. Within ΔE*ab{" "}
        {limits.departure} nothing is a change: official flags of one nation differ as much. At most 24
        colours of a flag and 64 of a palette are tried.
      </p>
      <p>
        Order: clarity, strength, same family, smaller ΔE00, palette. What merges a third of a charge’s
        outline has no place. <em>Change first</em>: {limits.mostFirst} colours at most whose best is within{" "}
        {limits.firstWithin} points of the best of all, if that gains {limits.leastGain}; else a flag of{" "}
        {limits.wholeClear} is clear as it is. Looks are the author’s.
      </p>
    </Step>
  );
}

/** How the survey is made. */
export function SurveyStep({ method }: { method: MethodPage }): JSX.Element {
  return (
    <Step id="survey" heading="The survey" source={<p>Own: the order, and what stands in it.</p>}>
      <p>
        The <a href={method.frame.links.survey}>survey</a> measures every original and every flag without a
        study, least clear first, one colour last. A low place does not say that a flag should change, nor a
        high one that it is good.
      </p>
    </Step>
  );
}

/** How likeness is measured. */
export function LikenessStep({ method: { likeness, worked } }: { method: MethodPage }): JSX.Element {
  const { columns, rows, threshold } = likeness;
  return (
    <Step
      id="likeness"
      heading="Could it be mistaken?"
      figure={worked && <LikenessFigure worked={worked} />}
      source={
        <p>
          Own: grid, mean, and {threshold}, under which 144 of the 36,585 pairs of an open collection are, 50
          of them one flag under two names; half are over 36 apart.
        </p>
      }
    >
      <p>
        A clearer flag may be a neighbour’s. Each redesign is laid beside every other flag known but its
        original and rivals, both stretched to {columns} by {rows} cells of mean colour as cloth. The number
        is the mean ΔE00: 0 is the same picture; a cell that one lacks counts 100. The other is also tried
        mirrored and upside down. Under {threshold} the study says so. Drawings kept only for this are named,
        not shown: their licence is not ours to assume.
      </p>
      <p>
        Fields count for much, small charges for little. A small number is a reason to look, no proof of how
        it came about.
      </p>
    </Step>
  );
}

/** Four kinds of vision. */
export function VisionStep({ method: { worked } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="vision"
      heading="To other eyes, and in grey"
      figure={worked && <VisionFigure worked={worked} />}
      source={
        <p>
          Protan, deutan: Machado, Oliveira, Fernandes,{" "}
          <Paper href="https://doi.org/10.1109/TVCG.2009.113">2009</Paper>, severity 1, in linear light, which
          the paper does not plainly say. Tritan, which that model does not reach: Brettel, Viénot, Mollon,
          1997. Matrices read in published implementations.
        </p>
      }
    >
      <p>
        Drawings are recoloured as eyes without one kind of cones see them, and in grey, and measured again.
        Grey keeps contrast; only its ΔE00 says anything new.
      </p>
    </Step>
  );
}

/** What none of this is. */
export function CautionStep(): JSX.Element {
  return (
    <Step id="cautions" heading="Cautions">
      <ul>
        <li>Every redesign is an unofficial study, no flag in use, unless its decision says so.</li>
        <li>
          Laws on flags differ. Follow the local ones before you make, alter or fly anything shown here, and
          respect each drawing’s licence.
        </li>
        <li>Previews of other eyes are approximations, no test of anyone’s sight.</li>
        <li>Contrast does not say whether a flag is good, what it means, or whose it is.</li>
        <li>Distance is a model: haze, glare and wind make every distance shorter.</li>
        <li>What has to be seen is found by rule; the author’s word goes before it.</li>
        <li>Numbers are of the drawing in daylight. Dyes differ; cloth fades, gets wet, folds.</li>
      </ul>
    </Step>
  );
}
