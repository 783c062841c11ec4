// Part. The steps of the method that are definitions: edges, the numbers of a flag, outcomes, verdicts, cautions.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MethodPage } from "../../src/site/present/method.ts";
import { ClarityFormula, CountFormula } from "./formula.tsx";
import { Step } from "./step.tsx";

/** What an edge is and how its length is found. */
export function EdgeStep({ method }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="edges"
      heading="Paints and edges"
      source={
        <>
          <p>
            One way of tracing serves every flag. It is checked against flags whose geometry a law fixes:
            shares within 0.2 percentage points, lengths within 1 percent, within 3 percent where a charge has
            tips finer than a pixel.
          </p>
          <p>The size of the picture and the step of 1 percent are our own judgement.</p>
        </>
      }
    >
      <p>
        A <em>paint</em> is one colour as the original uses it. The drawing is rendered, {method.pixels}{" "}
        pixels high unless it is very wide, with each paint in a flat code colour of its own, so that every
        pixel says which paint it is. The lines where two paints meet are traced on that picture. All lines
        between the same two paints together are one <em>edge</em>; its length is given in flag heights. The
        border of the flag is no edge.
      </p>
      <p>
        Shapes that show at less than half are left out; from half on they count as if opaque. An edge under 1
        percent of all edge length is listed, but is never the weakest and moves no verdict.
      </p>
    </Step>
  );
}

/** The three numbers of a flag. */
export function NumbersStep(): JSX.Element {
  return (
    <Step
      id="numbers"
      heading="The numbers of a flag"
      source={<p>These three are our own definitions. 45 is the step at which a grade becomes clear.</p>}
    >
      <dl class="definitions">
        <dt>Clear-edge share</dt>
        <dd>the share of all edge length whose grade is clear or strong</dd>
        <dt>Clarity</dt>
        <dd>
          how far all edges together come towards clear: each counts in full from contrast 45, in proportion
          below it
        </dd>
        <dt>Weakest edge</dt>
        <dd>the edge of least contrast</dd>
      </dl>
      <CountFormula />
      <ClarityFormula />
      <p>
        The weight of an edge is its length and, once more, the part of it that borders the <em>focus</em>.
        Where a flag has no focus, the weight is the length.
      </p>
      <p>Where a flag has one colour there is no edge, and none of the three has a value.</p>
    </Step>
  );
}

/** What a change does to one edge, and to the flag. */
export function OutcomeStep(): JSX.Element {
  return (
    <Step
      id="outcomes"
      heading="Outcomes and verdict"
      source={
        <p>
          The steps of 3 points, 1 point and ΔE00 5 are our own judgement. A change is measured on the shapes
          it already has: a merged edge keeps its length and counts as contrast 0 in the figures of the
          redesign.
        </p>
      }
    >
      <p>A change replaces one colour by another. Each edge then has one outcome:</p>
      <dl class="definitions">
        <dt>Gained</dt>
        <dd>not clear before, clear or strong after</dd>
        <dt>Lost</dt>
        <dd>clear or strong before, no longer after</dd>
        <dt>Better, worse</dt>
        <dd>the contrast moves by 3 points or more without crossing into or out of clear</dd>
        <dt>Same</dt>
        <dd>it moves by less</dd>
        <dt>Merged</dt>
        <dd>the two colours have become one: ΔE00 under 5</dd>
        <dt>Parted</dt>
        <dd>there was no edge before and is one after, because only a part of a paint was changed</dd>
      </dl>
      <p>The verdict is the first of these that fits:</p>
      <dl class="definitions">
        <dt>Mixed</dt>
        <dd>something gained or better, and something lost, merged or worse</dd>
        <dt>Clearer</dt>
        <dd>clarity rises by 1 or more</dd>
        <dt>Less clear</dt>
        <dd>clarity falls by 1 or more</dd>
        <dt>No gain</dt>
        <dd>neither</dd>
      </dl>
      <p>
        Numbers on the pages are rounded; grades, outcomes and verdicts are decided on the unrounded ones.
      </p>
    </Step>
  );
}

/** What none of this is. */
export function CautionStep(): JSX.Element {
  return (
    <Step id="cautions" heading="Cautions">
      <ul>
        <li>
          Every redesign is an unofficial study: a proposal for discussion, not a flag in use, and not put
          forward by anyone who could adopt it unless its decision says so.
        </li>
        <li>
          Laws on the use of flags differ. Follow the local ones before you make, alter or fly anything shown
          here, and respect the licence of each drawing.
        </li>
        <li>
          The previews of other eyes are approximations of the strongest form of each deficiency. People
          differ, and the previews are no test of anyone’s sight.
        </li>
        <li>
          Contrast says how easily two cloths can be told apart. It does not say whether a flag is good, what
          it means, or whose it is. That is for the argument.
        </li>
        <li>
          Distance is a model of resolution. A 20/20 eye and a still flag are assumed; a single strong line
          may be noticed further off than the model has it, and haze, glare and wind make every distance
          shorter.
        </li>
        <li>
          What has to be seen is found by a rule and not understood. Where the rule errs, the author’s word
          counts, and the page says that it was given.
        </li>
        <li>
          The numbers are those of the drawing’s colours under plain daylight. Dyes differ, and cloth fades,
          gets wet and hangs in folds.
        </li>
      </ul>
    </Step>
  );
}
