// Page `/series/<slug>/vote/`: which flag of each, blind to the numbers. Without a script, and on paper, a tally sheet.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { SiteView } from "../../src/views/siteview.ts";
import type { VotePage } from "../../src/views/vote/votepage.ts";
import { Document } from "../parts/document.tsx";
import { Question } from "../parts/question.tsx";
import { SendLink } from "../parts/refer.tsx";

export const data = {
  pagination: { data: "site.votes", size: 1, alias: "vote" },
  permalink: ({ vote }: { vote: VotePage }) => `series/${vote.slug}/vote/index.html`,
};

/** Renders the vote on one series. */
export function render({ vote }: { site: SiteView; vote: VotePage }): JSX.Element {
  return (
    <Document frame={vote.frame} layout="vote" scripts={[vote.frame.links.voteScript]}>
      <article class="vote-all" data-series={vote.slug} data-seed={vote.seed}>
        <header class="opening">
          <p class="flag-name">
            A vote on <a href={vote.back}>{vote.title}</a>
          </p>
          <h1>Which would you fly?</h1>
          <p class="lede vote-how">
            The flag as it is, and what is proposed in its place. Which is which is not said, and no number is
            shown, until you have chosen.
          </p>
        </header>
        <p class="vote-unscripted">
          To vote on this page takes a script, which this browser does not run. In a room it goes without:
          print the page, hold up the flags one by one, and tick a box for each hand. Each question says at
          its end which is which.
        </p>
        {vote.questions.map((question) => (
          <Question key={question.key} question={question} of={vote.questions.length} />
        ))}
        <Ballot vote={vote} />
        <nav class="vote-move" aria-label="Questions" hidden>
          <button type="button">Back</button>
          <button type="button">Next</button>
        </nav>
        <Room vote={vote} />
        <Key vote={vote} />
      </article>
    </Document>
  );
}

/** What the voter chose, and the ways to hand it in; hidden until the script has something to show. */
function Ballot({ vote }: { vote: VotePage }): JSX.Element {
  return (
    <section class="vote-ballot" aria-labelledby="ballot" hidden>
      <h2 id="ballot" tabindex={-1}>
        Your ballot
      </h2>
      <ol class="vote-chosen" />
      <p>
        It is kept in this browser alone, under a number drawn by lot, and nobody is told of it until you hand
        it in.
      </p>
      <p class="vote-line">
        <code dir="ltr" />
      </p>
      <p class="vote-ways">
        <button type="button" class="vote-copy">
          Copy this line
        </button>
        <a class="vote-save" href="./" download={`ballot-${vote.slug}.csv`}>
          Save as a table (CSV)
        </a>
        {vote.send && (
          <SendLink class="vote-send" to={vote.send}>
            {vote.send.way === "mail" ? "Send by mail" : "Send with a form"}
          </SendLink>
        )}
        <button type="button" class="vote-anew">
          Begin another ballot
        </button>
        <span role="status" class="copied" />
      </p>
    </section>
  );
}

/** For whoever asks a class or a meeting. */
function Room({ vote }: { vote: VotePage }): JSX.Element {
  return (
    <aside class="vote-room" aria-labelledby="room">
      <h2 id="room">For a class or a meeting</h2>
      <p class="vote-same" hidden>
        <a href="./">The same order for everyone</a> · <a href="./">An order of your own</a>. With the first,
        everyone who opens it sees A and B as you see them now; with the second, each voter sees them in an
        order drawn by lot.
      </p>
      <p>
        Printed, this page is a tally sheet: the flags, boxes for the hands, and on the last page which is
        which.
      </p>
      <p>
        {vote.ballots
          ? `${vote.ballots} came back. Beside each share stands the range in which, with 95% confidence, that of all would lie if the voters had been drawn by lot (Wilson’s interval); voters who came of themselves were not.`
          : "No ballot has come back yet."}
      </p>
    </aside>
  );
}

/** Which is which, for whoever counts: on paper alone. */
function Key({ vote }: { vote: VotePage }): JSX.Element {
  return (
    <section class="vote-key" aria-hidden="true">
      <p>For whoever counts: which is which</p>
      <ol>
        {vote.questions.map(({ key, flag, sides }) => (
          <li key={key} data-question={key}>
            {flag}:{" "}
            {sides.map(({ side, letter, name }) => (
              <span key={side} class="vote-which" data-side={side}>
                <span class="letter">{letter}</span> {name}{" "}
              </span>
            ))}
          </li>
        ))}
      </ol>
    </section>
  );
}
