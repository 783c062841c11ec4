// Part. The ways between the pages of a long list.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { PagesView } from "../../src/views/paging.ts";
import { Message, useSay } from "./words.tsx";

/** Where this page stands, and the ways to the others. */
export function PageLinks({ pages }: { pages: PagesView }): JSX.Element {
  const say = useSay();
  const id = !pages.previous ? "paging.onward" : pages.next ? "paging.both" : "paging.back";
  return (
    <nav class="pages" aria-label={say("paging.ways")}>
      <p class="count">
        <Message
          id={id}
          values={{ place: pages.label }}
          tags={{
            first: (text) => <a href={pages.first}>{text}</a>,
            previous: (text) => (
              <a href={pages.previous ?? ""} rel="prev">
                {text}
              </a>
            ),
            next: (text) => (
              <a href={pages.next ?? ""} rel="next">
                {text}
              </a>
            ),
            last: (text) => <a href={pages.last}>{text}</a>,
          }}
        />
      </p>
    </nav>
  );
}
