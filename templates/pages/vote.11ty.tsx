// Page `/series/<slug>/vote/`: which flag of each, blind to the numbers. Without a script, and on paper, a tally sheet.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SiteView } from "../../src/views/siteview.ts";
import type { VotePage } from "../../src/views/vote/votepage.ts";
import { Document } from "../parts/document.tsx";
import { Question } from "../parts/question.tsx";
import { SendLink } from "../parts/refer.tsx";
import { Message, pageOf, useSay } from "../parts/words.tsx";

export const data = {
  pagination: { data: "site.votes", size: 1, alias: "vote" },
  permalink: ({ vote }: { vote: VotePage }) => `series/${vote.slug}/vote/index.html`,
};

/** Renders the vote on one series. */
export const render = pageOf(Vote);

function Vote({ vote }: { site: SiteView; vote: VotePage }): JSX.Element {
  const say = useSay();
  return (
    <Document frame={vote.frame} layout="vote" scripts={[vote.frame.links.voteScript]}>
      <article
        class="vote-all"
        data-series={vote.slug}
        data-seed={vote.seed}
        data-missing={say("vote.missing")}
        data-unofficial={say("vote.unofficial", { name: "{name}" })}
      >
        <header class="opening">
          <p class="flag-name">
            <Message
              id="vote.on"
              values={{ series: vote.title }}
              tags={{ a: (text) => <a href={vote.back}>{text}</a> }}
            />
          </p>
          <h1>{say("vote.heading")}</h1>
          <p class="lede vote-how">{say("vote.how")}</p>
        </header>
        <p class="vote-unscripted">{say("vote.unscripted")}</p>
        {vote.questions.map((question, index) => (
          <Question key={question.key} question={question} isFirst={index === 0} />
        ))}
        <Ballot vote={vote} />
        <nav class="vote-move" aria-label={say("vote.questions")} hidden>
          <button type="button">{say("vote.back")}</button>
          <button type="button">{say("vote.next")}</button>
        </nav>
        <Room vote={vote} />
        <Key vote={vote} />
      </article>
    </Document>
  );
}

/** What the voter chose, and the ways to hand it in; hidden until the script has something to show. */
function Ballot({ vote }: { vote: VotePage }): JSX.Element {
  const say = useSay();
  const marks = { flag: "{flag}", choice: "{choice}", why: "{why}" };
  return (
    <section class="vote-ballot" aria-labelledby="ballot" hidden>
      <h2 id="ballot" tabindex={-1}>
        {say("vote.ballot")}
      </h2>
      <ol
        class="vote-chosen"
        data-answer={say("vote.answer", marks)}
        data-answer-why={say("vote.answerWhy", marks)}
        data-unanswered={say("vote.unanswered", marks)}
      />
      <p>{say("vote.kept")}</p>
      <p class="vote-line">
        <code dir="ltr" />
      </p>
      <p class="vote-ways">
        <button type="button" class="vote-copy">
          {say("vote.copy")}
        </button>
        <a class="vote-save" href="./" download={`ballot-${vote.slug}.csv`}>
          {say("vote.save")}
        </a>
        {vote.send && (
          <SendLink class="vote-send" to={vote.send}>
            {say(vote.send.way === "mail" ? "vote.mail" : "vote.form")}
          </SendLink>
        )}
        <button type="button" class="vote-anew">
          {say("vote.anew")}
        </button>
        <span
          role="status"
          class="copied"
          data-copied={say("vote.copied")}
          data-refused={say("vote.refused")}
        />
      </p>
    </section>
  );
}

/** For whoever asks a class or a meeting. */
function Room({ vote }: { vote: VotePage }): JSX.Element {
  const say = useSay();
  return (
    <aside class="vote-room" aria-labelledby="room">
      <h2 id="room">{say("vote.room")}</h2>
      <p class="vote-same" hidden>
        <Message
          id="vote.same"
          tags={{
            same: (text) => (
              <a class="vote-shared" href="./">
                {text}
              </a>
            ),
            own: (text) => <a href="./">{text}</a>,
          }}
        />
      </p>
      <p>{say("vote.paper")}</p>
      <p>{vote.ballots > 0 ? say("vote.ballots", { count: vote.ballots }) : say("vote.noBallots")}</p>
    </aside>
  );
}

/** Which is which, for whoever counts: on paper alone. */
function Key({ vote }: { vote: VotePage }): JSX.Element {
  const say = useSay();
  return (
    <section class="vote-key" aria-hidden="true">
      <p>{say("vote.key")}</p>
      <ol>
        {vote.questions.map(({ key, flag, sides }) => (
          <li key={key} data-question={key}>
            <Message
              id="vote.sides"
              values={{ flag }}
              tags={{
                sides: () => (
                  <>
                    {sides.map(({ side, letter, name }) => (
                      <span key={side} class="vote-which" data-side={side}>
                        <span class="letter">{letter}</span> {name}{" "}
                      </span>
                    ))}
                  </>
                ),
              }}
            />
          </li>
        ))}
      </ol>
    </section>
  );
}
