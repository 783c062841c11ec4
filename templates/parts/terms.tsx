// Part. The steps of the method that are definitions: the numbers of a flag, outcomes, verdicts, the words, the facts.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MethodPage } from "../../src/views/method/method.ts";
import { OutcomeFigure, SumFigure } from "../figures/worked.tsx";
import { ClarityFormula, CountFormula } from "./formula.tsx";
import { Paper, Step, Term, Terms } from "./step.tsx";

/** The marks of a flag. */
export function NumbersStep({ method: { limits, worked } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="numbers"
      heading="Clarity, the one mark"
      figure={worked && <SumFigure worked={worked} />}
      source={<p>Own definitions, the doubling too.</p>}
    >
      <CountFormula />
      <ClarityFormula />
      <p>
        Weight is the length of an edge and, once more, the part of it that borders what has to be seen. A
        flag of one colour has no edge and no number.
      </p>
      <Terms>
        <Term name="Strength">
          the same with {limits.strong} for {limits.clear}; orders what clarity leaves equal
        </Term>
        <Term name="Weakest edge">the least contrast, of edges with {limits.edge} of all length or more</Term>
        <Term name="Clear-edge share">
          the share of length that is clear or strong. It jumps at {limits.clear}%, so it decides nothing
        </Term>
      </Terms>
    </Step>
  );
}

/** What a change does to one edge, and to the flag. */
export function OutcomeStep({ method: { limits, worked } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="outcomes"
      heading="Outcome and verdict"
      figure={worked && <OutcomeFigure worked={worked} />}
      source={
        <p>
          Own: {limits.contrastStep}, {limits.leastMove}, {limits.largeMove} points, ΔE00 {limits.same}. The
          shapes stay: a merged edge keeps its length and counts as contrast 0.
        </p>
      }
    >
      <Terms>
        <Term name="Gained, lost">
          becomes clear, or no longer is, by {limits.contrastStep} points or more
        </Term>
        <Term name="Better, worse">
          moves as much, counted up to {limits.strong}%, without crossing {limits.clear}%
        </Term>
        <Term name="Same">moves by less</Term>
        <Term name="Merged">two colours become one: ΔE00 under {limits.same}</Term>
        <Term name="Parted">a new edge: only a part of a colour was changed</Term>
      </Terms>
      <p>
        <em>Price</em>: edges lost, worse, merged, or parted and not clear. Verdict, by clarity in whole
        percent, then strength; the first that fits:
      </p>
      <Terms>
        <Term name="No gain">all edges stay the same</Term>
        <Term name="Clearer">up by {limits.leastMove} point or more, no price</Term>
        <Term name="Clearer, at a price">up by {limits.largeMove} or more, the price named with it</Term>
        <Term name="Less clear">
          down by {limits.largeMove} or more, or by {limits.leastMove} and nothing gained, better, or parted
          and clear
        </Term>
        <Term name="Mixed">gains and a price, clarity in between</Term>
        <Term name="No gain">what is left</Term>
      </Terms>
      <p>Numbers shown are rounded, those that decide are not.</p>
    </Step>
  );
}

/** How the words are made. */
export function WordsStep(): JSX.Element {
  return (
    <Step
      id="words"
      heading="The words"
      source={
        <p>
          Fimbriation and tincture: common teaching. Own: a mean width under 8% of the height, sides within a
          third of each other, the pair meeting along a fifth at most.
        </p>
      }
    >
      <p>
        Sentences are made by rule of the numbers and names on the page alone: what has to be seen first, weak
        before strong. A <em>fimbriation</em> is a narrow line of a third colour. While it can be seen, its
        own edges count and the pair behind it does not; the words say what it does for that pair.
      </p>
    </Step>
  );
}

/** The facts beside the numbers. */
export function FactsStep(): JSX.Element {
  return (
    <Step
      id="facts"
      heading="Facts, none a score"
      source={
        <p>
          A. C. Fox-Davies, <i>A Complete Guide to Heraldry</i>, 1909, chapter VII; exemptions: common
          teaching. <Paper href="https://nava.org/good-flag-bad-flag">Good Flag, Bad Flag</Paper>, North
          American Vexillological Association, 2006, third principle; <i>Guiding Principles of Flag Design</i>
          , Joint Commission on Vexillographic Principles, 2014, 3.1. Own: hue alone.
        </p>
      }
    >
      <Terms>
        <Term name="Hue alone">
          contrast under 30%, ΔE00 20 or more: gone in dusk, grey print, many colour-blind eyes
        </Term>
        <Term name="Tincture">
          no metal (white, yellow) on metal, no colour (red, blue, green, black, purple) on colour. Exempt:
          parts of the field that both reach the border, fimbriations; furs too, not recognised here
        </Term>
        <Term name="Colours">
          over 0.5% of the area, shades within ΔE00 5 as one; guides advise two or three
        </Term>
        <Term name="Warnings">parts near the limit of sight, shapes left out, colours that are not flat</Term>
      </Terms>
    </Step>
  );
}
