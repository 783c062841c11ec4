// Part. A list of links in a sentence, with what the language puts between them.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { Linked } from "../../src/views/linklist.ts";

/** The list; what has no address is no link. */
export function LinkList({ pieces }: { pieces: readonly Linked[] }): JSX.Element {
  return (
    <>
      {pieces.map(({ text, address }, index) =>
        address ? (
          <a key={index} href={address}>
            {text}
          </a>
        ) : (
          text
        ),
      )}
    </>
  );
}
