// Part. A page as text, and the words of all its parts: the catalogue in the gallery's language.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import { type ComponentChildren, createContext, isValidElement, type JSX } from "preact";
import { useContext } from "preact/hooks";
import { renderToString } from "preact-render-to-string";
import type { WordId } from "../../src/words/en/all.ts";
import type { Say, Values } from "../../src/words/say.ts";

const Words = createContext<Say | undefined>(undefined);

/** The text of a page, whose parts say their words with `say`. Throws TypeError where `page` is no element. */
export function renderPage(say: Say, page: unknown): string {
  if (!isValidElement(page)) throw new TypeError("a page template must return one element");
  return `<!DOCTYPE html>\n${bindPairs(renderToString(<Words.Provider value={say}>{page}</Words.Provider>))}\n`;
}

/** No line breaks at the slash between two colours. What stands in tags, or is there to be typed, stays as it is. */
function bindPairs(html: string): string {
  let isTyped = false;
  return html
    .split(/(?=<)/)
    .map((piece) => {
      if (/^<\/?(?:pre|code|textarea|script)\b/.test(piece)) isTyped = !piece.startsWith("</");
      const text = piece.indexOf(">") + 1;
      return isTyped
        ? piece
        : piece.slice(0, text) + piece.slice(text).replace(/ \/ (?=\p{L}|$)/gu, "\u00a0/\u00a0");
    })
    .join("");
}

/** What a template exports as `render`: it is called outside of a page, where nothing can be said yet, and `Page` within it. */
export function pageOf<Data extends object>(Page: (data: Data) => JSX.Element): (data: Data) => JSX.Element {
  return (data) => <Page {...data} />;
}

/** What a part says its words with. */
export function useSay(): Say {
  const say = useContext(Words);
  if (say === undefined) throw new TypeError("a page is rendered without words");
  return say;
}

export interface MessageProps<Id extends WordId> {
  readonly id: Id;
  readonly tags: Readonly<Record<string, (inside: ComponentChildren) => JSX.Element>>;
  readonly values?: Values<Id>[0];
}

/** A message with parts that are more than text: `<Message id="…" tags={{ a: (text) => <a href={…}>{text}</a> }} />`. */
export function Message<Id extends WordId>({ id, tags, values }: MessageProps<Id>): JSX.Element {
  const say = useSay() as unknown as { parts(...all: readonly unknown[]): ComponentChildren };
  return <>{say.parts(id, tags, values)}</>;
}
