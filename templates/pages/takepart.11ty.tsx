// Page `/take-part/`: what a study consists of, and a bench on which a reader tries a change and gets the study's text.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { TakePartPage } from "../../src/views/part/takepart.ts";
import type { SiteView } from "../../src/views/siteview.ts";
import { Document } from "../parts/document.tsx";
import { SendLink } from "../parts/refer.tsx";

export const data = {
  pagination: { data: "site.takePart", size: 1, alias: "part" },
  permalink: "take-part/index.html",
};

/** Renders the page by which readers propose a study. */
export function render({ part }: { site: SiteView; part: TakePartPage }): JSX.Element {
  const { frame, words, sample, send } = part;
  return (
    <Document frame={frame} layout="takepart" scripts={[frame.links.partScript]}>
      <header class="opening">
        <h1>{words.title}</h1>
        <p class="lede">{words.lede}</p>
      </header>
      <section aria-labelledby="files">
        <h2 id="files">{words.filesHeading}</h2>
        <ul>
          {words.files.map((file) => (
            <li key={file}>{file}</li>
          ))}
        </ul>
        <p>{words.credit}</p>
        <pre dir="ltr" tabindex={0}>
          <code>{words.creditLine}</code>
        </pre>
      </section>
      <section class="part-template" aria-labelledby="template">
        <h2 id="template">{words.templateHeading}</h2>
        <pre dir="ltr" tabindex={0}>
          <code>{sample}</code>
        </pre>
        <p class="part-unscripted">{words.unscripted}</p>
      </section>
      <Bench part={part} />
      <section aria-labelledby="send">
        <h2 id="send">{words.sendHeading}</h2>
        <p>{send.way === "mail" ? words.send : words.sendForm}</p>
        <p>
          <SendLink
            class="part-send"
            to={{ ...send, href: send.href.replace(part.mark, encodeURIComponent(sample)) }}
            data-template={send.href}
            data-mark={part.mark}
          >
            {words.letter}
          </SendLink>{" "}
          {send.words}
        </p>
      </section>
    </Document>
  );
}

/** Hidden until the script runs. No form: nothing is ever submitted. */
function Bench({ part }: { part: TakePartPage }): JSX.Element {
  const { words, cloth } = part;
  return (
    <section
      class="part-bench"
      aria-labelledby="try"
      data-black={cloth.black}
      data-white={cloth.white}
      hidden
    >
      <h2 id="try">{words.makeHeading}</h2>
      <p>{words.private}</p>
      <p class="field">
        <label for="part-file">{words.choose}</label>
        <input type="file" id="part-file" accept=".svg,image/svg+xml" />
      </p>
      <p
        class="part-said"
        role="status"
        data-too-big={words.tooBig}
        data-broken={words.broken}
        data-endless={words.endless}
        data-colourless={words.colourless}
        data-chosen={words.chosen}
      />
      <div class="part-work" hidden>
        <Change part={part} />
        <Marks words={words} />
        <Text words={words} />
      </div>
    </section>
  );
}

function Change({ part: { words, palette } }: { part: TakePartPage }): JSX.Element {
  return (
    <>
      <div class="part-choices">
        <p class="field">
          <label for="part-replace">{words.replace}</label>
          <select id="part-replace" />
        </p>
        <p class="field">
          <label for="part-with">{words.palette}</label>
          <select id="part-with">
            {palette.map(({ name, hex }) => (
              <option key={name} value={name} data-hex={hex}>
                {name}
              </option>
            ))}
          </select>
        </p>
        <p class="field">
          <label for="part-typed">{words.typed}</label>
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
        data-unknown={words.unknown}
        data-same={words.same}
      />
      <div class="part-pair">
        {(["before", "after"] as const).map((side) => (
          <figure key={side}>
            <div class="part-mat" role="img" aria-label={words.alt[side]} data-side={side} />
            <figcaption>{words[side]}</figcaption>
          </figure>
        ))}
      </div>
    </>
  );
}

function Marks({ words }: { words: TakePartPage["words"] }): JSX.Element {
  return (
    <>
      <h3 id="part-pairs">{words.pairsHeading}</h3>
      <p>{words.rough}</p>
      <p class="part-more" hidden>
        {words.more}
      </p>
      <table
        class="part-marks"
        aria-labelledby="part-pairs"
        {...Object.fromEntries(Object.entries(words.grades).map(([grade, word]) => [`data-${grade}`, word]))}
      >
        <thead>
          <tr>
            <th scope="col">{words.pairs}</th>
            <th scope="col">{words.before}</th>
            <th scope="col">{words.after}</th>
          </tr>
        </thead>
        <tbody />
      </table>
    </>
  );
}

function Text({ words }: { words: TakePartPage["words"] }): JSX.Element {
  const fields = [
    ["title", words.studyTitle, 200],
    ["flag", words.flag, 100],
    ["author", words.author, 100],
  ] as const;
  return (
    <>
      <h3>{words.studyHeading}</h3>
      {fields.map(([name, label, longest]) => (
        <p key={name} class="field">
          <label for={`part-${name}`}>{label}</label>
          <input type="text" id={`part-${name}`} maxlength={longest} autocomplete="off" />
        </p>
      ))}
      <p class="field">
        <label for="part-why">{words.why}</label>
        <textarea id="part-why" rows={5} maxlength={5000} />
      </p>
      <p class="part-ready" role="status" data-untitled={words.untitled} data-ready={words.ready} />
      <div class="part-result" hidden>
        <pre dir="ltr" tabindex={0}>
          <code class="part-study" />
        </pre>
        <p>
          <button type="button" class="part-copy">
            {words.copy}
          </button>{" "}
          <span role="status" class="copied" data-copied={words.copied} data-refused={words.refused} />
        </p>
      </div>
    </>
  );
}
