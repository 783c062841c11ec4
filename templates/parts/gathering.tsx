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
        The <a href={method.frame.links.survey}>survey</a> is for the question that comes before any study:
        which of these flags are hard to see, and where would one change help most? It takes the original of
        every study and every flag that the gallery keeps without one, and measures each as a study is
        measured. Where a study names what has to be seen, that is used; for the others it is what is found.
      </p>
      <p>
        Flags are listed by clarity, least clear first, then by file name; a flag of one colour has no edge
        and comes last. A line is read from the left: how clear the flag is as a whole, how clear what has to
        be seen, and to how many flag heights that lasts by its size; then which two colours are hardest to
        tell apart where they meet; then the one colour to change first, and the best change of it, with the
        clarity it would bring. Both are found as <a href="#options">told above</a>. The picture over the list
        has the same flags, each at its clarity in steps of five percent: what stands alone at the left is
        where a class may begin.
      </p>
      <p>
        A low place says that edges are hard to see at a distance, and nothing of whether a flag should
        change. A high one says nothing of whether it is good: two flags of 100 percent may be a fine design
        and a dull one. A file that cannot be measured is named with the reason and holds nothing else up.
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
            36,585 pairs of an open collection of 271 flags. 144 of them are under it: 50 are one flag under
            two names, and most of the others have the same fields in near-equal colours. Some that people
            take for each other lie a little above. Half of all pairs are more than 36 apart, and 99 in 100
            more than 13.
          </p>
        </>
      }
    >
      <p>
        A change may make a flag clearer and turn it into the flag of a neighbour. So every redesign is laid
        beside every other flag that is known, and its page shows the three that it is nearest to.
      </p>
      <p>
        Both flags are stretched to the same proportions and laid out as a grid of {columns} by {rows} cells.
        Each cell has the mean colour of its part of the flag, in linear light and as cloth. The likeness of
        two flags is the mean of ΔE00 over all cells: 0 is the same picture, and the smaller the number, the
        more alike; a cell that only one of the two covers counts 100, as black against white. The other flag
        is tried as it is, seen from behind, and upside down. It is said to be turned only where that brings
        it nearer by a whole point.
      </p>
      <p>
        Compared are all originals, all flags of the survey, all redesigns of other flags, and the drawings of
        a further folder where the gallery names one. Those last are named and not shown, because the licence
        to show them is not ours to assume. Its own original, and other proposals for it, are left out. Under{" "}
        {threshold} the study says so.
      </p>
      <p>
        The mean sees a flag as one does from afar: fields count for much, a small charge for little. Two
        flags with one field and different charges may come out near, which is right at sea and wrong in the
        hand. A small number is a reason to look at both, and tells nothing of how they came to be alike.
      </p>
    </Step>
  );
}
