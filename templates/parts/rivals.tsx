// Part. Several redesigns of one flag: all at one scale, one at a time in the same place, and their numbers in one table.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { NumberedPlate, Proposal } from "../../src/views/flag/rivalspage.ts";
import { Byline } from "./entry.tsx";
import { Move } from "./move.tsx";
import { CaptionedPlate } from "./plate.tsx";
import { useSay } from "./words.tsx";

/** The flags. Any of them takes the place of any other by its button, once `templates/client/swap.js` runs. */
export function Rivals({ plates }: { plates: readonly NumberedPlate[] }): JSX.Element {
  const say = useSay();
  const flags = (
    <div class="pair rival-flags">
      {plates.map(({ plate, caption, clarity, address }) => (
        <CaptionedPlate key={plate.label} plate={plate} eager>
          <div>
            <span>{plate.label}</span> {address ? <a href={address}>{caption}</a> : caption}
          </div>
          <div class="rival-mark number">
            {say("mark.clarity")} <strong>{clarity}</strong>
          </div>
        </CaptionedPlate>
      ))}
    </div>
  );
  if (plates.length < 2) return flags;
  return (
    <div class="swap" data-shown="both">
      {flags}
      <div
        class="swap-controls"
        data-both={say(plates.length > 2 ? "flagPage.allShown" : "pair.bothShown")}
        data-alone={say("pair.shownAlone", { name: "{name}" })}
        hidden
      >
        <button type="button">{say("pair.swap")}</button>
        <button type="button" hidden>
          {say("flagPage.showAll")}
        </button>
        <span class="swap-choices">
          {plates.map(({ plate: { label } }) => (
            <button key={label} type="button">
              {label}
            </button>
          ))}
        </span>
        <span class="unseen" role="status" />
      </div>
    </div>
  );
}

/** What each brings and costs. */
export function RivalTable({ proposals }: { proposals: readonly Proposal[] }): JSX.Element {
  const say = useSay();
  const hasFocus = proposals.some(({ focusClarity }) => focusClarity !== undefined);
  return (
    <table class="rival-table">
      <thead>
        <tr>
          <th scope="col">{say("flagPage.head")}</th>
          <th scope="col">{say("flagPage.verdict")}</th>
          <th scope="col">{say("mark.clarity")}</th>
          {hasFocus && <th scope="col">{say("options.ofFocus")}</th>}
          <th scope="col">{say("flagPage.share")}</th>
        </tr>
      </thead>
      <tbody>
        {proposals.map((proposal) => (
          <Row key={proposal.number} proposal={proposal} hasFocus={hasFocus} />
        ))}
      </tbody>
    </table>
  );
}

function Row({ proposal, hasFocus }: { proposal: Proposal; hasFocus: boolean }): JSX.Element {
  const say = useSay();
  const { number, card, verdict, argument, focusClarity, share, likeness } = proposal;
  return (
    <tr>
      <th scope="row">
        <span class="rival-number">{number}</span>
        <div>
          <a href={card.address}>{card.title}</a>
          <Byline authors={card.authors} date={card.date} status={card.status} />
          {argument && <p>{argument}</p>}
        </div>
      </th>
      <td data-head={say("flagPage.verdict")}>
        <strong>{verdict.word}.</strong> {verdict.cost} {likeness}
      </td>
      <td class="number" data-head={say("mark.clarity")}>
        <Move before={card.clarity.before} after={card.clarity.after} />
      </td>
      {hasFocus && (
        <td class="number" data-head={say("options.ofFocus")}>
          {focusClarity ? (
            <Move before={focusClarity.before} after={focusClarity.after} />
          ) : (
            say("surveyTable.noEmblem")
          )}
        </td>
      )}
      <td class="number" data-head={say("flagPage.share")}>
        {share}
      </td>
    </tr>
  );
}
