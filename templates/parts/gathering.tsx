// Part. The steps of the method beyond one comparison: other changes, the survey, likeness, other eyes, and the cautions.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MethodPage } from "../../src/views/method/method.ts";
import { LikenessFigure, OptionFigure, PlacedFigure, VisionFigure } from "../figures/worked.tsx";
import { Paragraph, paper, Step } from "./step.tsx";
import { useSay } from "./words.tsx";

/** How options are found and ordered. */
export function OptionsStep({ method: { limits, worked } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="options"
      figure={worked && <OptionFigure worked={worked} />}
      source={
        <Paragraph
          id="method.optionsSource"
          values={limits}
          tags={{ ottosson: paper("https://bottosson.github.io/posts/oklab/") }}
        />
      }
    >
      <Paragraph id="method.optionsText" values={limits} />
      <Paragraph id="method.optionsOrder" values={limits} />
    </Step>
  );
}

/** How the survey is made. */
export function SurveyStep({ method: { frame, worked } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="survey"
      figure={worked && <PlacedFigure worked={worked} />}
      source={<Paragraph id="method.surveySource" />}
    >
      <Paragraph id="method.surveyText" tags={{ a: (text) => <a href={frame.links.survey}>{text}</a> }} />
    </Step>
  );
}

/** How likeness is measured. */
export function LikenessStep({ method: { likeness, worked } }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="likeness"
      figure={worked && <LikenessFigure worked={worked} />}
      source={<Paragraph id="method.likenessSource" values={likeness} />}
    >
      <Paragraph id="method.likenessText" values={likeness} />
      <Paragraph id="method.likenessCare" />
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
        <Paragraph
          id="method.visionSource"
          tags={{ machado: paper("https://doi.org/10.1109/TVCG.2009.113") }}
        />
      }
    >
      <Paragraph id="method.visionText" />
    </Step>
  );
}

const cautions = [
  "method.cautionProposal",
  "method.cautionLaw",
  "method.cautionEyes",
  "method.cautionWorth",
  "method.cautionDistance",
  "method.cautionCloth",
] as const;

/** What none of this is. */
export function CautionStep(): JSX.Element {
  const say = useSay();
  return (
    <Step id="cautions">
      <ul>
        {cautions.map((id) => (
          <li key={id}>{say(id)}</li>
        ))}
      </ul>
    </Step>
  );
}
