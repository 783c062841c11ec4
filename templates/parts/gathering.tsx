// Part. The steps of the method about many flags at once: the survey, and which flags look alike.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MethodPage } from "../../src/site/present/method.ts";
import { Paper, Step } from "./step.tsx";

/** How the survey is made. */
export function SurveyStep({ method }: { method: MethodPage }): JSX.Element {
  return (
    <Step
      id="survey"
      heading="The survey"
      source={<p>The order of the survey, and what stands in it, are our own judgement.</p>}
    >
      <p>
        The <a href={method.frame.links.survey}>survey</a> takes the original of every study and every flag
        that the gallery keeps without one, and measures each as a study is measured. Where a study names the
        focus, that focus is used; for the others it is what is found. Flags are listed by clarity, least
        clear first, then by file name; a flag of one colour has no edge and comes last.
      </p>
      <p>
        The best single change is the best option of the colour to change first, as ranked above. A file that
        cannot be measured is named with the reason and holds nothing else up. The survey is about edges that
        can be seen, not about whether a flag should change.
      </p>
    </Step>
  );
}

/** How likeness is measured. */
export function LikenessStep({ method }: { method: MethodPage }): JSX.Element {
  const { columns, rows, threshold } = method.likeness;
  return (
    <Step
      id="likeness"
      heading="Which flags look alike"
      source={
        <>
          <p>
            CIEDE2000:{" "}
            <Paper href="https://doi.org/10.1002/col.20070">G. Sharma, W. Wu, E. N. Dalal, 2005</Paper>.
          </p>
          <p>
            The grid, the mean and the step of {threshold} are our own judgement. The step was set on all
            pairs of an open collection of 271 flags: nearly all pairs under it have the same fields in
            near-equal colours, and some that people take for each other lie a little above it.
          </p>
        </>
      }
    >
      <p>
        Both flags are stretched to the same proportions and laid out as a grid of {columns} by {rows} cells.
        Each cell has the mean colour of its part of the flag, in linear light and as cloth. The likeness of
        two flags is the mean of ΔE00 over all cells; a cell that only one of the two covers counts 100, as
        black against white. The other flag is tried as it is, seen from behind, and upside down, and the
        nearest counts.
      </p>
      <p>
        Every redesign is compared with all originals, all flags of the survey, all redesigns of other flags,
        and the drawings of a further folder where the gallery names one. Those last are named and not shown,
        because the licence to show them is not ours to assume. Its own original, and other proposals for it,
        are left out. Under {threshold} the study says so. A small mean tells that two flags look alike from
        afar, and nothing of how they came to.
      </p>
    </Step>
  );
}
