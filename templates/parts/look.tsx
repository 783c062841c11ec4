// Part. Both flags once more, at true size.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { StudyPage } from "../../src/site/present/study.ts";
import { SizesFigure } from "../figures/sizes.tsx";

/** The section of a study page. */
export function Look({ study }: { study: StudyPage }): JSX.Element {
  return (
    <section class="evidence look" aria-labelledby="look">
      <h2 id="look">Another look</h2>
      <SizesFigure rows={study.sizes} id="true-size" />
    </section>
  );
}
