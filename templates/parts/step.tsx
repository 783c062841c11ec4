// Part. One step of the method: heading, text, and its sources in the margin.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { ComponentChildren, JSX } from "preact";

/** One step. `source` says where it comes from, or that it comes from nowhere but us. */
export function Step({
  id,
  heading,
  source,
  children,
}: {
  id: string;
  heading: string;
  source?: ComponentChildren;
  children: ComponentChildren;
}): JSX.Element {
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{heading}</h2>
      <div class="text">{children}</div>
      {source && <div class="source">{source}</div>}
    </section>
  );
}

/** A link to a published source. */
export function Paper({ href, children }: { href: string; children: ComponentChildren }): JSX.Element {
  return (
    <a href={href} rel="noopener">
      {children}
    </a>
  );
}
