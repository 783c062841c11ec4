// Part. One step of the method: heading and text, beside them a picture and the sources.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { ComponentChildren, JSX } from "preact";
import type { WordId } from "../../src/words/en/all.ts";
import { Move } from "./move.tsx";
import { Message, type MessageProps, useSay } from "./words.tsx";

/** All steps with the messages of their headings, in the order of the page: its contents say the same. */
export const headings = {
  edges: "method.edges",
  distance: "method.distance",
  lasting: "method.lasting",
  reflectance: "method.reflectance",
  contrast: "method.contrast",
  numbers: "method.numbers",
  outcomes: "method.outcomes",
  words: "method.words",
  options: "method.options",
  survey: "method.survey",
  likeness: "method.likeness",
  beside: "method.beside",
  facts: "method.facts",
  vision: "method.vision",
  cautions: "method.cautions",
} as const satisfies Readonly<Record<string, WordId>>;

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
  const say = useSay();
  return (
    <section aria-labelledby={id}>
      <div class="text">
        <h2 id={id}>{say(headings[id])}</h2>
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

interface TextProps<Id extends WordId> extends Omit<MessageProps<Id>, "tags"> {
  readonly tags?: MessageProps<Id>["tags"];
}

/** One term and the message of what it means, in which `move` is an example. */
export function Term<Id extends WordId>({
  term,
  example,
  ...meaning
}: TextProps<Id> & { term: string; example?: readonly [string, string] }): JSX.Element {
  return (
    <div>
      <dt>{term}</dt>
      <dd>
        <Text {...meaning} tags={{ move: () => <Move before={example?.[0]} after={example?.[1]} /> }} />
      </dd>
    </div>
  );
}

/** A paragraph that is one message; `at` is its address on the page. */
export function Paragraph<Id extends WordId>({
  at,
  ...message
}: TextProps<Id> & { at?: string }): JSX.Element {
  return (
    <p id={at}>
      <Text {...message} />
    </p>
  );
}

/** A message of the method: what is emphasised in it, and titles of papers, need no tag of their own. */
function Text<Id extends WordId>({ tags, ...message }: TextProps<Id>): JSX.Element {
  return (
    <Message {...message} tags={{ em: (text) => <em>{text}</em>, i: (text) => <i>{text}</i>, ...tags }} />
  );
}

/** A tag that links to a published source. */
export function paper(href: string): (text: ComponentChildren) => JSX.Element {
  return (text) => (
    <a href={href} rel="noopener">
      {text}
    </a>
  );
}

/** A tag that links to another step. */
export function stepLink(id: keyof typeof headings): (text: ComponentChildren) => JSX.Element {
  return (text) => <a href={`#${id}`}>{text}</a>;
}
