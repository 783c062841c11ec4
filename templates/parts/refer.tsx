// Part. How to refer to a study, and what a reader is told who comes by a link to an older state of it.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import { type ComponentChildren, Fragment, type JSX } from "preact";
import type { AnswerView } from "../../src/views/study/answerview.ts";
import type { CitationView, ReferView } from "../../src/views/study/citation.ts";
import { Message, useSay } from "./words.tsx";

/** The section of an edge page. */
export function Refer({ refer }: { refer: ReferView }): JSX.Element {
  const say = useSay();
  return (
    <section class="evidence" aria-labelledby="refer">
      <h2 id="refer">{say("refer.heading")}</h2>
      <div class="main">
        <Citation refer={refer} />
      </div>
    </section>
  );
}

/** The words to cite, with the BibTeX behind them. The buttons are hidden until a script can copy. */
export function Citation({ refer }: { refer: ReferView | CitationView }): JSX.Element {
  const say = useSay();
  return (
    <div class="refer">
      <p class="refer-text" id="refer-text">
        {refer.text.split("/").map((piece, index) => (
          <Fragment key={index}>
            {index > 0 && (
              <>
                /<wbr />
              </>
            )}
            {piece}
          </Fragment>
        ))}
      </p>
      <p class="copying" hidden>
        <button type="button" value="refer-text">
          {say("refer.copyText")}
        </button>{" "}
        <button type="button" value="refer-bibtex">
          {say("refer.copyBibtex")}
        </button>{" "}
        <span
          role="status"
          class="copied"
          data-done={say("refer.copied")}
          data-failed={say("refer.notCopied")}
        />
      </p>
      <details>
        <summary>{"stamp" in refer ? say("refer.bibtexAndStamp") : "BibTeX"}</summary>
        <pre dir="ltr">
          <code id="refer-bibtex">{refer.bibtex}</code>
        </pre>
        {"stamp" in refer && (
          <p class="measured">
            <Message
              id="refer.stamp"
              tags={{
                stamp: () => <code>{refer.stamp}</code>,
                link: (text) => <a href={refer.link}>{text}</a>,
              }}
            />
          </p>
        )}
      </details>
    </div>
  );
}

/** The way to answer, with the address of the page in it. */
export function Argue({ answer }: { answer: AnswerView }): JSX.Element {
  const say = useSay();
  return (
    <p class="argue">
      <SendLink to={answer}>{say("study.argue")}</SendLink> {answer.words}
    </p>
  );
}

/** A link by which something is sent, by mail or to a form of others. */
export function SendLink({
  to,
  children,
  ...attributes
}: {
  to: Pick<AnswerView, "href" | "way">;
  id?: string;
  class?: string;
  children: ComponentChildren;
}): JSX.Element {
  return (
    <a {...attributes} href={to.href} rel={to.way === "form" ? "nofollow noopener" : undefined}>
      {children}
    </a>
  );
}

/** The way to name a flag that needs a study. */
export function Nominate({ nominate }: { nominate: AnswerView | undefined }): JSX.Element | null {
  if (nominate === undefined) return null;
  return (
    <p class="nominate">
      <Message id="front.nominate" tags={{ name: (text) => <SendLink to={nominate}>{text}</SendLink> }} />
    </p>
  );
}

/** Hidden until the script finds another stamp in the address. */
export function StampNote({ stamp }: { stamp: string }): JSX.Element {
  return (
    <p class="stamp-note" data-stamp={stamp} hidden>
      <Message
        id="refer.changed"
        tags={{
          strong: (text) => <strong>{text}</strong>,
          came: () => <code class="stamp-came">{stamp}</code>,
          now: () => <code>{stamp}</code>,
        }}
      />
    </p>
  );
}
