// Part. The steps of the method that are definitions: the numbers of a flag, outcomes, verdicts, the words, the facts.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MethodPage } from "../../src/views/method/method.ts";
import { OutcomeFigure, SaidFigure, SumFigure } from "../figures/worked.tsx";
import { ClarityFormula, CountFormula } from "./formula.tsx";
import { Paragraph, paper, Step, Term, Terms } from "./step.tsx";
import { useSay } from "./words.tsx";

/** The marks of a flag. */
export function NumbersStep({ method: { limits, worked } }: { method: MethodPage }): JSX.Element {
  const say = useSay();
  return (
    <Step
      id="numbers"
      figure={worked && <SumFigure worked={worked} />}
      source={<Paragraph id="method.numbersSource" />}
    >
      <Paragraph id="method.numbersText" values={limits} />
      <CountFormula />
      <ClarityFormula />
      <Paragraph id="method.numbersClose" />
      <Terms>
        <Term term={say("method.strength")} id="method.strengthMeans" values={limits} />
        <Term term={say("method.weakest")} id="method.weakestMeans" />
        <Term term={say("method.clearShare")} id="method.clearShareMeans" />
      </Terms>
    </Step>
  );
}

/** What a change does to one edge, and to the flag. */
export function OutcomeStep({ method: { limits, examples, worked } }: { method: MethodPage }): JSX.Element {
  const say = useSay();
  const { points } = limits;
  return (
    <Step
      id="outcomes"
      figure={worked && <OutcomeFigure worked={worked} />}
      source={<Paragraph id="method.outcomesSource" values={limits} />}
    >
      <Paragraph id="method.outcomesText" />
      <Terms>
        <Term term={say("method.gained")} id="method.gainedMeans" values={points} example={examples.gained} />
        <Term term={say("method.better")} id="method.betterMeans" values={limits} example={examples.better} />
        <Term term={say("method.same")} id="method.sameMeans" example={examples.same} />
        <Term term={say("method.merged")} id="method.mergedMeans" />
        <Term term={say("method.parted")} id="method.partedMeans" />
      </Terms>
      <Paragraph id="method.outcomesPrice" />
      <Terms>
        <Term
          term={say("method.clearer")}
          id="method.clearerMeans"
          values={points}
          example={examples.clearer}
        />
        <Term
          term={say("method.atAPrice")}
          id="method.atAPriceMeans"
          values={points}
          example={examples.atAPrice}
        />
        <Term
          term={say("method.lessClear")}
          id="method.lessClearMeans"
          values={{ ...limits, largeMove: points.largeMove }}
          example={examples.lessClear}
        />
        <Term term={say("method.mixed")} id="method.mixedMeans" example={examples.mixed} />
        <Term term={say("method.noGain")} id="method.noGainMeans" />
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
      source={<Paragraph id="method.wordsSource" />}
    >
      <Paragraph id="method.wordsText" />
    </Step>
  );
}

/** The facts beside the numbers. */
export function FactsStep(): JSX.Element {
  const say = useSay();
  return (
    <Step
      id="facts"
      source={
        <Paragraph id="method.factsSource" tags={{ good: paper("https://nava.org/good-flag-bad-flag") }} />
      }
    >
      <Terms>
        <Term term={say("method.hue")} id="method.hueMeans" />
        <Term term={say("method.tincture")} id="method.tinctureMeans" />
        <Term term={say("method.colours")} id="method.coloursMeans" />
      </Terms>
    </Step>
  );
}
