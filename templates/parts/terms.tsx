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
      heading="Colours and edges"
      source={
        <>
          <p>
            One way of tracing serves every flag. It is checked against flags whose geometry a law fixes:
            shares within 0.2 percentage points, lengths within 1 percent, within 3 percent where a charge has
            tips finer than a pixel.
          </p>
          <p>The size of the picture and the step of {method.limits.edge} are our own judgement.</p>
        </>
      }
    >
      <p>
        The drawing is rendered, {method.pixels} pixels high unless it is very wide, with each colour of the
        original in a flat code colour of its own, so that every pixel says which one it is. The lines where
        two colours meet are traced on that picture. All lines between the same two colours together are one{" "}
        <em>edge</em>; its length is given in flag heights. The border of the flag is no edge.
      </p>
      <p>
        Shapes that show at less than half are left out; from half on they count as if opaque. An edge under{" "}
        {method.limits.edge} of all edge length is listed, but is never the weakest and moves no verdict.
      </p>
    </Step>
  );
}

/** The marks of a flag. */
export function NumbersStep({ method: { limits } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="numbers"
      heading="The numbers of a flag"
      source={
        <p>
          These are our own definitions. {limits.clear} and {limits.strong} are the steps at which a grade
          becomes clear and strong. That what has to be seen counts twice is our own judgement.
        </p>
      }
    >
      <dl class="definitions">
        <dt>Clarity</dt>
        <dd>
          the one mark of a flag: how far all edges together come towards clear. Each counts in full from
          contrast {limits.clear}, in proportion below it
        </dd>
        <dt>Strength</dt>
        <dd>
          the same sum with {limits.strong} in place of {limits.clear}: how far the edges go beyond clear. It
          orders what clarity leaves equal and stands in the data
        </dd>
        <dt>Clarity of what has to be seen</dt>
        <dd>clarity of the edges of the charges alone</dd>
        <dt>Weakest edge</dt>
        <dd>the edge of least contrast, of those with {limits.edge} of all edge length or more</dd>
        <dt>Clear-edge share</dt>
        <dd>
          the share of all edge length whose grade is clear or strong. It jumps where contrast crosses{" "}
          {limits.clear}, so it is data: no order and no verdict goes by it
        </dd>
      </dl>
      <CountFormula />
      <ClarityFormula />
      <p>
        The weight of an edge is its length and, once more, the part of it that borders{" "}
        <em>what has to be seen</em>: such an edge counts twice, none more than twice. Where a flag has no
        charge, the weight is the length.
      </p>
      <p>Where a flag has one colour there is no edge, and none of these has a value.</p>
    </Step>
  );
}

/** What a change does to one edge, and to the flag. */
export function OutcomeStep({ method: { limits } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="outcomes"
      heading="Outcomes and verdict"
      source={
        <p>
          The steps of {limits.contrastStep}, {limits.leastMove} and {limits.largeMove} points and of ΔE00{" "}
          {limits.same} are our own judgement. A change is measured on the shapes it already has: a merged
          edge keeps its length and counts as contrast 0 in the figures of the redesign.
        </p>
      }
    >
      <p>A change replaces one colour by another. Each edge then has one outcome:</p>
      <dl class="definitions">
        <dt>Gained</dt>
        <dd>not clear before, clear or strong after</dd>
        <dt>Lost</dt>
        <dd>
          clear or strong before, no longer after; both only where the contrast moves by {limits.contrastStep}{" "}
          points or more
        </dd>
        <dt>Better, worse</dt>
        <dd>
          the contrast, counted up to {limits.strong}, moves by {limits.contrastStep} points or more without
          crossing into or out of clear
        </dd>
        <dt>Same</dt>
        <dd>it moves by less</dd>
        <dt>Merged</dt>
        <dd>the two colours have become one: ΔE00 under {limits.same}</dd>
        <dt>Parted</dt>
        <dd>there was no edge before and is one after, because only a part of a colour was changed</dd>
      </dl>
      <p>
        The verdict goes by clarity in whole percent and, where that is level, by strength. An edge under{" "}
        {limits.edge} of all edge length has no say. The <em>price</em> of a change are the edges that are
        lost, worse or merged, or parted and not clear. The verdict is the first of these that fits:
      </p>
      <dl class="definitions">
        <dt>No gain</dt>
        <dd>every edge that has a say stays the same</dd>
        <dt>Clearer</dt>
        <dd>up by {limits.leastMove} point or more, without a price</dd>
        <dt>Clearer, at a price</dt>
        <dd>up by {limits.largeMove} points or more, with a price that the same sentence names</dd>
        <dt>Less clear</dt>
        <dd>
          down by {limits.largeMove} points or more, or by {limits.leastMove} or more where no edge is gained,
          better, or parted and clear
        </dd>
        <dt>Mixed</dt>
        <dd>gains and a price, and clarity in between</dd>
        <dt>No gain</dt>
        <dd>what is left</dd>
      </dl>
      <p>Numbers on the pages are rounded; grades and outcomes are decided on the unrounded ones.</p>
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
