// Part. What stands where on a study page, in a line; and in another, at its end, what else there is of the study.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { StudyPage } from "../../src/views/study/studypage.ts";
import { SendLink } from "./refer.tsx";
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

/** Under the record. */
export function Ways({ study }: { study: StudyPage }): JSX.Element {
  const say = useSay();
  return (
    <p class="to-show">
      <a href={study.links.outcomes}>{say("study.verdictHow")}</a>
      <a href={study.show}>{say("study.show")}</a>
      <a href={study.sheet}>{say("study.sheets")}</a>
      {study.answer && (
        <SendLink to={study.answer}>
          {say(study.answer.way === "mail" ? "study.argueByMail" : "study.argue")}
        </SendLink>
      )}
    </p>
  );
}
