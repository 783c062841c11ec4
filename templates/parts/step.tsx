// Part. One step of the method: heading and text, beside them a picture and the sources.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { ComponentChildren, JSX } from "preact";

/** All steps with their headings, in the order of the page: its contents say the same. */
export const headings = {
  edges: "Edges",
  distance: "Distance",
  lasting: "From afar",
  reflectance: "Reflectance",
  contrast: "Contrast and grade",
  numbers: "Clarity",
  outcomes: "Outcome and verdict",
  words: "The words",
  options: "Other single changes",
  survey: "The survey",
  likeness: "Could it be mistaken?",
  beside: "Other measures",
  facts: "Facts",
  vision: "To colour-blind readers, and in grey",
  cautions: "Cautions",
} as const;

/** One step. `source` says where it comes from, or that it comes from nowhere but us. */
export function Step({
  id,
  figure,
  source,
  children,
}: {
  id: keyof typeof headings;
  figure?: ComponentChildren;
  source?: ComponentChildren;
  children: ComponentChildren;
}): JSX.Element {
  return (
    <section aria-labelledby={id}>
      <div class="text">
        <h2 id={id}>{headings[id]}</h2>
        {children}
      </div>
      <div class="beside-text">
        {figure}
        {source && <div class="source">{source}</div>}
      </div>
    </section>
  );
}

/** Terms with what they mean, in two columns. */
export function Terms({ children }: { children: ComponentChildren }): JSX.Element {
  return <dl class="definitions">{children}</dl>;
}

/** One term. */
export function Term({ name, children }: { name: string; children: ComponentChildren }): JSX.Element {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
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
