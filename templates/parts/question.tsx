// Part. One question of a vote: the flags side by side, what the voter answers, and what is told once that is done.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { VoteQuestion } from "../../src/views/vote/votepage.ts";
import { Mat } from "./plate.tsx";

/** One question. What answers it is hidden until the script runs; boxes to tick are on paper alone. */
export function Question({ question, of }: { question: VoteQuestion; of: number }): JSX.Element {
  const { number, key, flag, sides } = question;
  return (
    <form class="vote-question" id={`n${number}`} data-question={key} aria-labelledby={`n${number}-flag`}>
      <p class="vote-number">
        {number} of {of}
      </p>
      <h2 id={`n${number}-flag`} tabindex={-1}>
        {flag}
      </h2>
      <ul class={`vote-sides vote-sides-${Math.min(sides.length, 3)}`}>
        {sides.map(({ side, study, plate, letter }) => (
          <li key={side} data-side={side} data-study={study}>
            <Mat plate={plate} eager={number === "1"} />
            <p class="vote-pick">
              <label>
                <input type="radio" name={key} value={side} hidden />
                <span class="letter">{letter}</span>
              </label>{" "}
              <span class="vote-said" />
            </p>
          </li>
        ))}
        <li class="vote-none" hidden>
          <p class="vote-pick">
            <label>
              <input type="radio" name={key} value="neither" /> Neither
            </label>
          </p>
        </li>
      </ul>
      <p class="vote-caution">
        One of them is the flag as it is;{" "}
        {sides.length > 2
          ? "what is proposed are unofficial studies."
          : "what is proposed is an unofficial study."}
      </p>
      <div class="vote-answer" hidden>
        <p class="vote-why">
          <label for={`n${number}-why`}>Why? (optional)</label>
          <input type="text" id={`n${number}-why`} name="why" maxlength={200} autocomplete="off" />
        </p>
        <button type="submit">This is my choice</button>
        <span class="vote-missing" role="status" />
      </div>
      <p class="vote-boxes" aria-hidden="true">
        {[...sides.map(({ letter }) => letter).sort(), "Neither"].map((name) => (
          <span key={name}>{name}</span>
        ))}
      </p>
      <Told question={question} />
    </form>
  );
}

/** Which is which, the numbers, and how others chose. Without a script it opens on demand. */
function Told({ question: { flag, sides, count } }: { question: VoteQuestion }): JSX.Element {
  const rows = [...sides, { side: "neither", letter: "", name: "Neither", clarity: "", verdict: undefined }];
  return (
    <details class="vote-told">
      <summary>Which is which, and the numbers</summary>
      <table>
        <caption class="unseen">{flag}: which is which</caption>
        <thead>
          <tr>
            <th scope="col">Flag</th>
            <th scope="col">Clarity</th>
            {count && <th scope="col">Chosen, of {count.voters}</th>}
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
                    your choice
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
              {sides.length > 2 && `${one.name}: `}
              {one.verdict.sentence} <a href={one.verdict.address}>The study</a>
            </p>
          ),
      )}
      {count && count.words.length > 0 && (
        <ul class="vote-words">
          {count.words.map(({ side, text }, index) => (
            <li key={index}>
              <span class="quiet">{side}:</span> <bdi>{text}</bdi>
            </li>
          ))}
        </ul>
      )}
    </details>
  );
}
