// Part. What stands in the place of a figure that the argument of the study shows already.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import { Message } from "./words.tsx";

/** Where the figure is. `id` is its anchor on pages whose prose does not show it, `at` that of the prose. */
export function Shown({ at, id, name }: { at: string; id: string; name: string }): JSX.Element {
  return (
    <p class="measured shown" id={id}>
      <Message
        id="study.shown"
        values={{ name }}
        tags={{ argument: (text) => <a href={`#${at}`}>{text}</a> }}
      />
    </p>
  );
}
