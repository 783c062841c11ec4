// Part. The sections of a study page.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { StudyPage } from "../../src/views/study/studypage.ts";
import { ProseFigureBlock } from "../figures/prose.tsx";
import { SeenFigure } from "../figures/seen.tsx";
import { Byline } from "./entry.tsx";
import { OptionList } from "./notes.tsx";
import { Pair } from "./pair.tsx";
import { Shown } from "./shown.tsx";
import { Summary } from "./summary.tsx";
import { useSay } from "./words.tsx";

/** The flag, the title, then who, when and what became of it. */
export function Heading({ study }: { study: StudyPage }): JSX.Element {
  const say = useSay();
  return (
    <header class="opening">
      {(study.flag || study.rivals) && (
        <p class="flag-name">
          {study.flag && <span {...study.tongue}>{study.flag}</span>}
          {study.rivals && (
            <>
              {study.flag && say("list.comma")}
              <a href={study.rivals.address}>{study.rivals.text}</a>
            </>
          )}
        </p>
      )}
      <h1 {...study.tongue}>{study.title}</h1>
      <Byline authors={study.authors} people={study.people} date={study.date} status={study.status} />
    </header>
  );
}

/** Both flags at equal size, the verdict, and the three numbers that made it. */
export function Plates({ study }: { study: StudyPage }): JSX.Element {
  const say = useSay();
  return (
    <section class="comparison" aria-labelledby="verdict">
      <Pair plates={study.plates} isPressed split={study.split} note={say("study.unofficial")} />
      <div class="verdict">
        <h2 id="verdict">{study.verdict.word}</h2>
        <p class="verdict-sentence">
          {study.change.sentence} {study.verdict.sentence}
        </p>
        {study.options && (
          <p class="best-change" id="options">
            {study.options.says}{" "}
            <a id="matrix" href={study.options.address}>
              {say("study.allChanges")}
            </a>
          </p>
        )}
      </div>
      <Summary rows={study.summary} caption={say("study.numbers")} />
    </section>
  );
}

/** The author's prose, with the society's decision and the meaning of the change beside it. */
export function Argument({ study }: { study: StudyPage }): JSX.Element | null {
  const say = useSay();
  const { decision, symbolism, options } = study.notes;
  const hasNotes = decision || symbolism || (study.options === undefined && options.length > 0);
  if (study.prose.length === 0 && !hasNotes) return null;
  return (
    <section class="argument" aria-labelledby="argument">
      <h2 id="argument">{say("study.argument")}</h2>
      {hasNotes && (
        <div class="margin">
          {decision && (
            <section id="decision">
              <h3>{say("study.decision")}</h3>
              <p>{decision}</p>
            </section>
          )}
          {symbolism && (
            <section>
              <h3>{say("study.meaning")}</h3>
              <p {...study.tongue}>{symbolism}</p>
            </section>
          )}
          {study.options === undefined && options.length > 0 && (
            <section>
              <h3>{say("options.tried")}</h3>
              <OptionList options={options} />
            </section>
          )}
        </div>
      )}
      <div class={study.isShort ? "prose main short" : "prose main"} {...study.tongue}>
        {study.prose.map((block, index) =>
          block.kind === "html" ? (
            // Written by our Markdown renderer, which shows the author's HTML as text.
            <div key={index} class="prose-run" dangerouslySetInnerHTML={{ __html: block.html }} />
          ) : (
            <ProseFigureBlock key={index} figure={block.figure} study={study} />
          ),
        )}
      </div>
    </section>
  );
}

/** The four previews. */
export function Seen({ study }: { study: StudyPage }): JSX.Element {
  const say = useSay();
  return (
    <section class="seen" aria-labelledby="seen">
      <h2 id="seen">{say("study.seen")}</h2>
      {study.inProse["seen otherwise"] ? (
        <Shown at={study.inProse["seen otherwise"]} id="seen-otherwise" name={say("study.theSeen")} />
      ) : (
        <SeenFigure seen={study.seen} id="seen-otherwise" />
      )}
    </section>
  );
}
