// Part. What stands where on a study page, in a line.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { StudyPage } from "../../src/views/study/studypage.ts";
import { useSay } from "./words.tsx";

/** Under the pair and its verdict. */
export function Contents({ study }: { study: StudyPage }): JSX.Element {
  const say = useSay();
  return (
    <nav class="contents on-page" aria-label={say("study.contents")}>
      <ul>
        {study.contents.map(({ anchor, text }) => (
          <li key={anchor}>
            <a href={anchor}>{text}</a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
