// Part. How to refer to a study, and what a reader is told who comes by a link to an older state of it.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { ReferView } from "../../src/site/present/refer.ts";

/** The section of a study page. */
export function Refer({ refer }: { refer: ReferView }): JSX.Element {
  return (
    <section class="evidence" aria-labelledby="refer">
      <h2 id="refer">Refer to this</h2>
      <div class="main refer">
        <p class="refer-text">{refer.text}</p>
        <pre>
          <code>{refer.bibtex}</code>
        </pre>
      </div>
      <div class="margin source">
        <p>
          Stamp <code>{refer.stamp}</code>: a short mark of the drawing, the change and the measure. Through{" "}
          <a href={refer.stamped}>an address with the stamp in it</a>, a later reader is told where what is
          measured has changed since. The words of a study may change without it.
        </p>
      </div>
    </section>
  );
}

/** Hidden until the script finds another stamp in the address. */
export function StampNote({ stamp }: { stamp: string }): JSX.Element {
  return (
    <p class="stamp-note" data-stamp={stamp} hidden>
      <strong>This study has changed since.</strong> The link you came by was made for an earlier state. What
      is shown here now has the stamp <code>{stamp}</code>.
    </p>
  );
}
