// Figure. What an author puts into prose: any figure of the page, under an anchor of its own.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { ProseFigure } from "../../src/views/study/prosefigure.ts";
import type { StudyPage } from "../../src/views/study/studypage.ts";
import { CaptionedPlate } from "../parts/plate.tsx";
import { EdgeFigure } from "./edge.tsx";
import { GainFigure } from "./gain.tsx";
import { LastingFigure } from "./lasting.tsx";
import { EdgeMapFigure } from "./map.tsx";
import { MatrixFigure } from "./matrix.tsx";
import { RulerFigure } from "./ruler.tsx";
import { SeenFigure } from "./seen.tsx";
import { SizesFigure } from "./sizes.tsx";
import { StripFigure } from "./strip.tsx";

/** One figure of the prose. The lines of the edge map are drawn by the first, to which another one refers. */
export function ProseFigureBlock({
  figure,
  study,
}: {
  figure: ProseFigure;
  study: StudyPage;
}): JSX.Element | null {
  const { id } = figure;
  switch (figure.kind) {
    case "edge":
      return <EdgeFigure edge={figure.edge} details={figure.details} id={id} />;
    case "original":
    case "redesign":
      return <Flag study={study} id={id} at={figure.kind === "original" ? 0 : 1} />;
    case "true size":
      return <SizesFigure rows={study.sizes} id={id} />;
    case "edge map":
      return <EdgeMapFigure map={study.edgeMap} id={id} isAgain={id !== study.inProse[figure.kind]} />;
    case "contrast ruler":
      return study.ruler ? <RulerFigure ruler={study.ruler} ladder={study.ladder} id={id} /> : null;
    case "distance strip":
      return <StripFigure strip={study.strip} id={id} />;
    case "lasts to":
      return study.lasting ? (
        <LastingFigure lasting={study.lasting} id={id} method={study.links.lasting} />
      ) : null;
    case "seen otherwise":
      return <SeenFigure seen={study.seen} id={id} />;
    case "matrix":
      return study.matrix ? <MatrixFigure matrix={study.matrix} id={id} isAgain /> : null;
    case "gain chart":
      return <GainFigure gain={figure.gain} id={id} eager />;
  }
}

function Flag({ study, id, at }: { study: StudyPage; id: string; at: 0 | 1 }): JSX.Element {
  const plate = study.plates[at];
  return (
    <CaptionedPlate plate={plate} id={id}>
      <strong>
        <a href={`#${id}`}>{plate.label}</a>.
      </strong>{" "}
      {at === 0 ? study.change.sentence : study.notes.unofficial}
    </CaptionedPlate>
  );
}
