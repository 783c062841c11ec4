// Part. The steps of the method beyond one comparison: other changes, the survey, likeness, other eyes, and the cautions.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MethodPage } from "../../src/views/method/method.ts";
import { LikenessFigure, OptionFigure, PlacedFigure, VisionFigure } from "../figures/worked.tsx";
import { Paper, Step } from "./step.tsx";

/** How options are found and ordered. */
export function OptionsStep({ method: { limits, worked } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="options"
      figure={worked && <OptionFigure worked={worked} />}
      source={
        <p>
          ΔE*ab {limits.departure}: Melgosa and Gómez-Robledo, <i>Óptica Pura y Aplicada</i> 55(2), 2022, who
          propose it; abstract read. Lightness of the kept hue:{" "}
          <Paper href="https://bottosson.github.io/posts/oklab/">Ottosson, 2020</Paper>. Our own judgement:
          all other numbers, and the order.
        </p>
      }
    >
      <p>
        Every colour over 0.4% of the flag is replaced, one at a time: by each colour of the gallery’s
        palette, by each other colour of the flag, and by its <em>kept hue</em>, the same hue as much lighter
        or darker as brings {limits.keptHue}% of contrast with the neighbours it is not clear of. No grade may
        fall for that, and the colour keeps its family: pink is no red. Within ΔE*ab {limits.departure}{" "}
        nothing is a change, since official flags of one nation differ by as much.
      </p>
      <p>
        The clearest stands first, then the strongest, the same family, the smaller difference. What merges a
        third of a charge’s outline has no place. The <em>colours to change first</em> are the{" "}
        {limits.mostFirst} at most whose best comes within {limits.firstWithin} points of the best of all, if
        that gains {limits.leastGain}; without such a gain, a flag of {limits.wholeClear} is clear as it is.
        Which looks best is for the author to say.
      </p>
    </Step>
  );
}

/** How the survey is made. */
export function SurveyStep({ method }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="survey"
      figure={method.worked && <PlacedFigure worked={method.worked} />}
      source={<p>Our own judgement: the order.</p>}
    >
      <p>
        The <a href={method.frame.links.survey}>survey</a> measures every flag as it is today, each once,
        however many studies it has. The least clear stands first, a flag of one colour last. A low place does
        not say that a flag should change, nor a high one that it is good.
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
      figure={worked && <LikenessFigure worked={worked} />}
      source={
        <p>
          Our own judgement: the grid, the mean and {threshold}. Of the 36,585 pairs of an open collection 144
          are nearer than that, 50 of them one flag under two names; half are over 36 apart.
        </p>
      }
    >
      <p>
        A clearer flag may be a neighbour’s. So each redesign is laid on every other flag and redesign known
        here, but its own original and rivals. Both are divided into {columns} by {rows} cells of mean colour
        as cloth, and the number is the mean ΔE00 of the cells: 0 is the same picture, and a cell that one
        lacks counts 100. The other is also tried mirrored and upside down. Under {threshold} the study says
        so.
      </p>
      <p>
        Large fields count for much and small charges for little, so a small number is a reason to look and no
        proof of how it came about. Drawings kept only for this are named, not shown: their licence is not
        ours to assume.
      </p>
    </Step>
  );
}

/** Four kinds of vision. */
export function VisionStep({ method: { worked } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="vision"
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
        Many people have eyes without one of the three kinds of cones. We recolour both drawings as such eyes
        have them, and in grey, and measure them again. Grey keeps every contrast as it was, so there we tell
        how far apart the nearest two greys are.
      </p>
    </Step>
  );
}

/** What none of this is. */
export function CautionStep(): JSX.Element {
  return (
    <Step id="cautions">
      <ul>
        <li>Every redesign is a proposal and no flag in use, unless its decision says so.</li>
        <li>
          Laws on flags differ. Follow the local ones before you make, alter or fly anything shown here, and
          respect each drawing’s licence.
        </li>
        <li>Pictures for other eyes are approximations, and no test of anyone’s sight.</li>
        <li>Contrast does not say whether a flag is good, what it means, or whose it is.</li>
        <li>Distance is a model: haze, glare and wind make every distance shorter.</li>
        <li>Numbers are of the drawing in daylight. Dyes differ, and cloth fades, gets wet and folds.</li>
      </ul>
    </Step>
  );
}
