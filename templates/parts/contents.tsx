// Part. What stands where on a study page, in a line, and the way to the other single changes.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { StudyPage } from "../../src/views/study/studypage.ts";

/** Under the pair. */
export function Contents({ study }: { study: StudyPage }): JSX.Element {
  return (
    <>
      <div class="study-ways">
        <nav class="contents on-page" aria-label="On this page">
          <ul>
            {study.contents.map(({ anchor, text }) => (
              <li key={anchor}>
                <a href={anchor}>{text}</a>
              </li>
            ))}
          </ul>
        </nav>
        <p class="to-show">
          <a href={study.show}>Step by step, for a projector</a> ·{" "}
          <a href={study.sheet}>Sheets for a class</a>
        </p>
      </div>
      {study.options && (
        <p class="best-change" id="options">
          {study.options.says}{" "}
          <a id="matrix" href={study.options.address}>
            All other single changes
          </a>
        </p>
      )}
    </>
  );
}
