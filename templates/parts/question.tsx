// Part. One question of a vote: the flags side by side, what the voter answers, and what is told once that is done.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { VoteQuestion } from "../../src/views/vote/votepage.ts";
import { Mat } from "./plate.tsx";
import { Message, useSay } from "./words.tsx";

/** One question. What answers it is hidden until the script runs; boxes to tick are on paper alone. */
export function Question({ question, isFirst }: { question: VoteQuestion; isFirst: boolean }): JSX.Element {
  const say = useSay();
  const { anchor, place, key, flag, sides } = question;
  return (
    <form class="vote-question" id={anchor} data-question={key} aria-labelledby={`${anchor}-flag`}>
      <p class="vote-number">{place}</p>
      <h2 id={`${anchor}-flag`} tabindex={-1}>
        {flag}
      </h2>
      <ul class={`vote-sides vote-sides-${Math.min(sides.length, 3)}`}>
        {sides.map(({ side, study, plate, letter }) => (
          <li key={side} data-side={side} data-study={study}>
            <Mat plate={plate} eager={isFirst} />
            <p class="vote-pick">
              <label>
                <input type="radio" name={key} value={side} hidden />
                <span class="letter">{letter}</span>
              </label>{" "}
              <span class="vote-said" data-unofficial={say("study.unofficial")} />
            </p>
          </li>
        ))}
        <li class="vote-none" hidden>
          <p class="vote-pick">
            <label>
              <input type="radio" name={key} value="neither" /> {say("vote.neither")}
            </label>
          </p>
        </li>
      </ul>
      <p class="vote-caution">{say(sides.length > 2 ? "vote.cautionMany" : "vote.cautionOne")}</p>
      <div class="vote-answer" hidden>
        <p class="vote-why">
          <label for={`${anchor}-why`}>{say("vote.why")}</label>
          <input type="text" id={`${anchor}-why`} name="why" maxlength={200} autocomplete="off" />
        </p>
        <button type="submit">{say("vote.choose")}</button>
        <span class="vote-missing" role="status" />
      </div>
      <p class="vote-boxes" aria-hidden="true">
        {[...sides.map(({ letter }) => letter).sort(), say("vote.neither")].map((name) => (
          <span key={name}>{name}</span>
        ))}
      </p>
      <Told question={question} />
    </form>
  );
}

/** Which is which, the numbers, and how others chose. Without a script it opens on demand. */
function Told({ question: { flag, sides, count } }: { question: VoteQuestion }): JSX.Element {
  const say = useSay();
  const neither = { side: "neither", letter: "", name: say("vote.neither"), clarity: "" };
  const rows = [...sides, neither];
  return (
    <details class="vote-told">
      <summary>{say("vote.told")}</summary>
      <table>
        <caption class="unseen">{say("vote.which", { flag })}</caption>
        <thead>
          <tr>
            <th scope="col">{say("vote.headFlag")}</th>
            <th scope="col">{say("mark.clarity")}</th>
            {count && <th scope="col">{say("vote.headChosen", { count: count.total })}</th>}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ side, letter, name, clarity }) => {
            const counted = count?.sides.find((one) => one.side === side);
            return (
              <tr key={side} data-side={side}>
                <th scope="row">
                  <span class="letter">{letter}</span> <span class="vote-name">{name}</span>{" "}
                  <strong class="vote-own" hidden>
                    {say("vote.own")}
                  </strong>
                </th>
                <td class="number">{clarity}</td>
                {count && (
                  <td class="number">
                    {counted && (
                      <>
                        {counted.count} · {counted.share} <span class="quiet">({counted.between})</span>
                      </>
                    )}
                  </td>
                )}
              </tr>
            );
          })}
        </tbody>
      </table>
      {sides.map(
        (one) =>
          one.verdict && (
            <p key={one.side}>
              {sides.length > 2
                ? say("vote.verdictOf", { name: one.name, sentence: one.verdict.sentence })
                : one.verdict.sentence}{" "}
              <a href={one.verdict.address}>{say("vote.study")}</a>
            </p>
          ),
      )}
      {count && count.words.length > 0 && (
        <ul class="vote-words">
          {count.words.map(({ side, text }, index) => (
            <li key={index}>
              <Message
                id="vote.said"
                values={{ side }}
                tags={{
                  quiet: (inside) => <span class="quiet">{inside}</span>,
                  said: () => <bdi>{text}</bdi>,
                }}
              />
            </li>
          ))}
        </ul>
      )}
    </details>
  );
}
