// Part. The steps of the method that are definitions: the numbers of a flag, outcomes, verdicts, the words, the facts.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MethodPage } from "../../src/views/method/method.ts";
import { OutcomeFigure, SaidFigure, SumFigure } from "../figures/worked.tsx";
import { ClarityFormula, CountFormula } from "./formula.tsx";
import { Move } from "./move.tsx";
import { Paper, Step, Term, Terms } from "./step.tsx";

/** The marks of a flag. */
export function NumbersStep({ method: { limits, worked } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="numbers"
      figure={worked && <SumFigure worked={worked} />}
      source={<p>Our own judgement: the sum, and that what has to be seen counts twice.</p>}
    >
      <p>
        An edge counts by how far its contrast comes towards {limits.clear}%, and in full from there on: 30 /
        45 = 67%. Clarity is the mean of all edges, each weighed by its length and, once more, by the part of
        it that borders what has to be seen:
      </p>
      <CountFormula />
      <ClarityFormula />
      <p>
        So a flag whose edges are all clear has 100%, and a long weak edge costs more than a short one. A flag
        of one colour has no edge and no clarity.
      </p>
      <Terms>
        <Term name="Strength">
          the same sum towards {limits.strong}%; it orders what clarity leaves equal
        </Term>
        <Term name="Weakest edge">the edge with the least contrast, the shortest left out</Term>
        <Term name="Clear-edge share">
          the share of length that is clear or strong; it jumps at one step, so it decides nothing
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
      figure={worked && <OutcomeFigure worked={worked} />}
      source={
        <p>
          Our own judgement: the steps of {limits.contrastStep}, {limits.leastMove} and {limits.largeMove}{" "}
          points. A merged edge keeps its length, for the shapes stay, and counts as contrast 0%. Numbers
          shown are rounded, those that decide are not.
        </p>
      }
    >
      <p>To one edge a change does this:</p>
      <Terms>
        <Term name="Gained, lost">
          it becomes clear, or no longer is, and moves by {limits.contrastStep} points or more:{" "}
          <Move before="40%" after="52%" />
        </Term>
        <Term name="Better, worse">
          it moves as far without becoming clear or ceasing to be: <Move before="20%" after="30%" />; nothing
          above {limits.strong}% counts
        </Term>
        <Term name="Same">
          it moves by less: <Move before="50%" after="51%" />
        </Term>
        <Term name="Merged">its two colours come so near that they count as one</Term>
        <Term name="Parted">it is new, because only a part of a colour was changed</Term>
      </Terms>
      <p>
        The <em>price</em> of a change is the edges that are lost, worse, merged, or parted and not clear. The
        verdict goes by clarity in whole percent and, where that is level, by strength:
      </p>
      <Terms>
        <Term name="Clearer">
          up by {limits.leastMove} point or more, at no price: <Move before="63%" after="64%" />
        </Term>
        <Term name="Clearer, at a price">
          up by {limits.largeMove} points or more, the price named with it: <Move before="57%" after="86%" />
        </Term>
        <Term name="Less clear">
          down by {limits.largeMove} points or more: <Move before="60%" after="51%" />; or by{" "}
          {limits.leastMove} with nothing gained, better, or parted and clear
        </Term>
        <Term name="Mixed">
          gains and a price, clarity between: <Move before="91%" after="88%" />
        </Term>
        <Term name="No gain">every edge stays the same, or nothing above fits</Term>
      </Terms>
    </Step>
  );
}

/** How the words are made. */
export function WordsStep({ method: { worked } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="words"
      figure={worked && <SaidFigure worked={worked} />}
      source={
        <p>
          What a fimbriation is: common practice, no source. Our own judgement, by which we know one: a mean
          width under 8% of the flag’s height, two sides within a third of each other in length, between
          colours that meet along a fifth of it at most.
        </p>
      }
    >
      <p>
        Sentences are put together by rule, from the numbers and names on the page alone. They speak of what
        has to be seen first, and of weak edges before strong ones. A <em>fimbriation</em> is a narrow line of
        a third colour that parts two others; while it can be seen, its own edges count, and the words say
        what it does for the pair.
      </p>
    </Step>
  );
}

/** The facts beside the numbers. */
export function FactsStep(): JSX.Element {
  return (
    <Step
      id="facts"
      source={
        <p>
          A. C. Fox-Davies, <i>A Complete Guide to Heraldry</i>, 1909, chapter VII; exemptions: common
          practice, no source. <Paper href="https://nava.org/good-flag-bad-flag">Good Flag, Bad Flag</Paper>,
          North American Vexillological Association, 2006, third principle;{" "}
          <i>Guiding Principles of Flag Design</i>, Joint Commission on Vexillographic Principles, 2014, 3.1.
          Our own judgement: hue alone, the 0.5%.
        </p>
      }
    >
      <Terms>
        <Term name="Hue alone">
          weak with a ΔE00 of 20 or more, in grey under 10: it goes in dusk, grey print and for many
          colour-blind eyes
        </Term>
        <Term name="Tincture">
          no metal (white, yellow) on metal, no colour (red, blue, green, black, purple) on colour. Exempt:
          parts of the field that both reach the border, fimbriations; furs too, not recognised here
        </Term>
        <Term name="Colours">
          those over 0.5% of the area, like shades as one; guides advise two or three
        </Term>
      </Terms>
    </Step>
  );
}
