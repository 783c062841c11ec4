// Part. The ways between the pages of a long list.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { PagesView } from "../../src/views/paging.ts";

/** Where this page stands, and the ways to the others. */
export function PageLinks({ pages }: { pages: PagesView }): JSX.Element {
  return (
    <nav class="pages" aria-label="Pages of this list">
      <p class="count">
        {pages.label}
        {pages.previous && (
          <>
            . <a href={pages.first}>First</a>,{" "}
            <a href={pages.previous} rel="prev">
              previous
            </a>
          </>
        )}
        {pages.next && (
          <>
            {pages.previous ? ", " : ". "}
            <a href={pages.next} rel="next">
              next
            </a>
            , <a href={pages.last}>last</a>
          </>
        )}
      </p>
    </nav>
  );
}
