// Page `/take-part/`: what a study consists of, and a bench on which a reader tries a change and gets the study's text.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { TakePartPage } from "../../src/views/part/takepart.ts";
import type { SiteView } from "../../src/views/siteview.ts";
import { Document } from "../parts/document.tsx";
import { SendLink } from "../parts/refer.tsx";
import { useSay } from "../parts/words.tsx";

export const data = {
  pagination: { data: "site.takePart", size: 1, alias: "part" },
  permalink: "take-part/index.html",
};

/** A line of a study, as it is typed. */
const creditLine = 'credit: { author: Ines Valcourt, source: "https://flags.example", licence: CC0-1.0 }';

/** The two drawings. */
const sides = [
  { side: "before", name: "part.before", shown: "part.beforeShown" },
  { side: "after", name: "part.after", shown: "part.afterShown" },
] as const;

/** Renders the page by which readers propose a study. */
export function render({ part }: { site: SiteView; part: TakePartPage }): JSX.Element {
  const { frame } = part;
  return (
    <Document frame={frame} layout="takepart" scripts={[frame.links.partScript]}>
      <TakePart part={part} />
    </Document>
  );
}

function TakePart({ part }: { part: TakePartPage }): JSX.Element {
  const { sample, send } = part;
  const say = useSay();
  return (
    <>
      <header class="opening">
        <h1>{say("part.title")}</h1>
        <p class="lede">{say("part.lede")}</p>
      </header>
      <Bench part={part} />
      <section class="part-files" aria-labelledby="files">
        <h2 id="files">{say("part.files")}</h2>
        <dl>
          <dt>
            <code>original.svg</code>
          </dt>
          <dd>{say("part.drawing")}</dd>
          <dt>
            <code>study.md</code>
          </dt>
          <dd>{say("part.textFile")}</dd>
        </dl>
      </section>
      <section class="part-template" aria-labelledby="template">
        <h2 id="template">{say("part.template")}</h2>
        <p>{say("part.study")}</p>
        <pre dir="ltr" tabindex={0}>
          <code>{sample}</code>
        </pre>
        <p class="part-unscripted">{say("part.unscripted")}</p>
        <p>{say("part.credit")}</p>
        <pre dir="ltr" tabindex={0}>
          <code>{creditLine}</code>
        </pre>
      </section>
      <section aria-labelledby="send">
        <h2 id="send">{say("part.send")}</h2>
        <p>{say(send.way === "mail" ? "part.sendByMail" : "part.sendAtForm")}</p>
        <p>
          <SendLink
            class="part-send"
            to={{ ...send, href: send.href.replace(part.mark, encodeURIComponent(sample)) }}
            data-template={send.href}
            data-mark={part.mark}
          >
            {say("part.letter")}
          </SendLink>{" "}
          {send.words}
        </p>
      </section>
    </>
  );
}

/** Hidden until the script runs. No form: nothing is ever submitted. */
function Bench({ part }: { part: TakePartPage }): JSX.Element {
  const say = useSay();
  const { cloth } = part;
  return (
    <section
      class="part-bench"
      aria-labelledby="try"
      data-black={cloth.black}
      data-white={cloth.white}
      hidden
    >
      <h2 id="try">{say("part.try")}</h2>
      <p>{say("part.private")}</p>
      <p class="field">
        <label for="part-file">{say("part.choose")}</label>
        <input type="file" id="part-file" accept=".svg,image/svg+xml" />
      </p>
      <p
        class="part-said"
        role="status"
        data-too-big={say("part.tooBig")}
        data-broken={say("part.broken")}
        data-endless={say("part.endless")}
        data-colourless={say("part.colourless")}
        data-chosen={say("part.chosen")}
      />
      <div class="part-work" hidden>
        <Change part={part} />
        <Marks />
        <Text />
      </div>
    </section>
  );
}

function Change({ part: { palette } }: { part: TakePartPage }): JSX.Element {
  const say = useSay();
  return (
    <>
      <div class="part-pair">
        {sides.map(({ side, name, shown }) => (
          <figure key={side}>
            <div class="part-mat" role="img" aria-label={say(shown)} data-side={side} />
            <figcaption>{say(name)}</figcaption>
          </figure>
        ))}
      </div>
      <div class="part-choices">
        <p class="field">
          <label for="part-replace">{say("part.replace")}</label>
          <select id="part-replace" />
        </p>
        <p class="field">
          <label for="part-with">{say("part.palette")}</label>
          <select id="part-with">
            {palette.map(({ name, label, hex }) => (
              <option key={name} value={name} data-hex={hex}>
                {label}
              </option>
            ))}
          </select>
        </p>
        <p class="field">
          <label for="part-typed">{say("part.typed")}</label>
          <input
            type="text"
            id="part-typed"
            dir="ltr"
            autocomplete="off"
            spellcheck={false}
            aria-describedby="part-wrong"
          />
        </p>
      </div>
      <p
        class="part-wrong"
        id="part-wrong"
        role="status"
        data-unknown={say("part.unknown")}
        data-same={say("part.same")}
      />
    </>
  );
}

function Marks(): JSX.Element {
  const say = useSay();
  return (
    <>
      <h3 id="part-pairs">{say("part.pairs")}</h3>
      <p>{say("part.rough")}</p>
      <p class="part-more" hidden>
        {say("part.more")}
      </p>
      <table
        class="part-marks"
        aria-labelledby="part-pairs"
        data-weak={say("grade.weak")}
        data-soft={say("grade.soft")}
        data-clear={say("grade.clear")}
        data-strong={say("grade.strong")}
      >
        <thead>
          <tr>
            <th scope="col">{say("part.pair")}</th>
            <th scope="col">{say("part.before")}</th>
            <th scope="col">{say("part.after")}</th>
          </tr>
        </thead>
        <tbody />
      </table>
    </>
  );
}

function Text(): JSX.Element {
  const say = useSay();
  const fields = [
    ["title", say("part.textTitle"), 200],
    ["flag", say("part.textFlag"), 100],
    ["author", say("part.textAuthor"), 100],
  ] as const;
  return (
    <>
      <h3>{say("part.text")}</h3>
      {fields.map(([name, label, longest]) => (
        <p key={name} class="field">
          <label for={`part-${name}`}>{label}</label>
          <input type="text" id={`part-${name}`} maxlength={longest} autocomplete="off" />
        </p>
      ))}
      <p class="field">
        <label for="part-why">{say("part.textWhy")}</label>
        <textarea id="part-why" rows={5} maxlength={5000} />
      </p>
      <p
        class="part-ready"
        role="status"
        data-untitled={say("part.untitled")}
        data-ready={say("part.ready")}
      />
      <div class="part-result" hidden>
        <pre dir="ltr" tabindex={0}>
          <code class="part-study" />
        </pre>
        <p>
          <button type="button" class="part-copy">
            {say("part.copy")}
          </button>{" "}
          <span
            role="status"
            class="copied"
            data-copied={say("part.copied")}
            data-refused={say("part.refused")}
          />
        </p>
      </div>
    </>
  );
}
