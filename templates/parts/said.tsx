// Part. What others said, each with its own address, and the author's reply under it.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SaidView } from "../../src/views/study/saidview.ts";
import { Message, useSay } from "./words.tsx";

/** The section of a study's page, an edge's or that of the other changes. */
export function Said({ said }: { said: readonly SaidView[] }): JSX.Element | null {
  const say = useSay();
  if (said.length === 0) return null;
  return (
    <section class="said" aria-labelledby="answers">
      <h2 id="answers">{say("said.heading")}</h2>
      <ol>
        {said.map(({ anchor, lead, date, about, html, link, reply }) => (
          <li key={anchor} id={anchor} class="said-one">
            <p class="said-lead">
              <a href={`#${anchor}`}>{lead}</a>
              {date && (
                <>
                  <span aria-hidden="true"> · </span>
                  <time dateTime={date.iso}>{date.text}</time>
                </>
              )}
              {about.map(({ name, address }) => (
                <span key={address}>
                  <span aria-hidden="true"> · </span>
                  <Message
                    id="said.about"
                    values={{ name }}
                    tags={{ about: (text) => <a href={address}>{text}</a> }}
                  />
                </span>
              ))}
            </p>
            <Words html={html} />
            {link && (
              <p class="said-lead">
                <a href={link} rel="nofollow noopener">
                  {say("said.more", { host: link.split("/")[2] ?? "" })}
                </a>
              </p>
            )}
            {reply && (
              <div class="said-reply">
                <p class="said-lead">{reply.lead}</p>
                <Words html={reply.html} />
              </div>
            )}
          </li>
        ))}
      </ol>
    </section>
  );
}

function Words({ html }: { html: readonly string[] }): JSX.Element {
  return (
    <div class="prose">
      {html.map((run, index) => (
        // Written by our Markdown renderer, which shows the HTML of strangers as text.
        <div key={index} class="prose-run" dangerouslySetInnerHTML={{ __html: run }} />
      ))}
    </div>
  );
}
