// Part. Both flags from afar: as they look from there, and as large as they look.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { StudyPage } from "../../src/views/study/studypage.ts";
import { SizesFigure } from "../figures/sizes.tsx";
import { StripFigure } from "../figures/strip.tsx";
import { Shown } from "./shown.tsx";
import { useSay } from "./words.tsx";

/** The section of a study page. */
export function Afar({ study }: { study: StudyPage }): JSX.Element {
  const say = useSay();
  const { "distance strip": strip, "true size": sizes } = study.inProse;
  return (
    <section class="afar" aria-labelledby="distance">
      <h2 id="distance">{say("study.afar")}</h2>
      {strip ? (
        <Shown at={strip} id="distance-strip" name={say("study.theStrip")} />
      ) : (
        <StripFigure strip={study.strip} id="distance-strip" />
      )}
      {sizes ? (
        <Shown at={sizes} id="true-size" name={say("study.theSizes")} />
      ) : (
        <SizesFigure rows={study.sizes} id="true-size" />
      )}
    </section>
  );
}
