// Part. How to refer to a study, and what a reader is told who comes by a link to an older state of it.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import { type ComponentChildren, Fragment, type JSX } from "preact";
import type { AnswerView } from "../../src/views/study/answerview.ts";
import type { CitationView, ReferView } from "../../src/views/study/citation.ts";

/** The section of an edge page. */
export function Refer({ refer }: { refer: ReferView }): JSX.Element {
  return (
    <section class="evidence" aria-labelledby="refer">
      <h2 id="refer">Cite this</h2>
      <div class="main">
        <Citation refer={refer} />
      </div>
    </section>
  );
}

/** The words to cite, with the BibTeX behind them. The buttons are hidden until a script can copy. */
export function Citation({ refer }: { refer: ReferView | CitationView }): JSX.Element {
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
          Copy the text
        </button>{" "}
        <button type="button" value="refer-bibtex">
          Copy the BibTeX
        </button>{" "}
        <span role="status" class="copied" />
      </p>
      <details>
        <summary>{"stamp" in refer ? "BibTeX, and what the stamp is for" : "BibTeX"}</summary>
        <pre dir="ltr">
          <code id="refer-bibtex">{refer.bibtex}</code>
        </pre>
        {"stamp" in refer && (
          <p class="measured">
            Stamp <code>{refer.stamp}</code>: a short mark of the drawing, the change and the measure. Through{" "}
            <a href={refer.link}>an address with the stamp in it</a>, a later reader is told where what is
            measured has changed since. The words of a study may change without it.
          </p>
        )}
      </details>
    </div>
  );
}

/** The way to answer, with the address of the page in it. */
export function Argue({ answer }: { answer: AnswerView }): JSX.Element {
  return (
    <p class="argue">
      <SendLink to={answer}>Argue with this</SendLink> {answer.words}
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
      A flag that should have a study? <SendLink to={nominate}>Name it, and say why</SendLink>
    </p>
  );
}

/** Hidden until the script finds another stamp in the address. */
export function StampNote({ stamp }: { stamp: string }): JSX.Element {
  return (
    <p class="stamp-note" data-stamp={stamp} hidden>
      <strong>This study has changed since.</strong> The link you came by was made for an earlier state, with
      the stamp <code class="stamp-came">{stamp}</code>. What is shown here now has the stamp{" "}
      <code>{stamp}</code>.
    </p>
  );
}
