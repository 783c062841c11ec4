// Part. What stands where on a study page, in a line.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { StudyPage } from "../../src/views/study/studypage.ts";

/** Under the pair and its verdict. */
export function Contents({ study }: { study: StudyPage }): JSX.Element {
  return (
    <nav class="contents on-page" aria-label="On this page">
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
