// Part. A colour beside the lines that stand for it in grey print.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { Chip } from "../../src/views/sheet/hatchchip.ts";

/** The lines alone; the words beside them say of what. */
export function SignChip({ sign }: { sign: Chip["sign"] }): JSX.Element {
  return (
    <svg
      class={sign.isToned ? "sign toned" : "sign"}
      viewBox="0 0 48 30"
      width="48"
      height="30"
      aria-hidden="true"
      focusable="false"
    >
      <rect width="48" height="30" />
      <path d={sign.path} />
    </svg>
  );
}

/** Colours, each with its lines and its name. */
export function ChipList({ chips }: { chips: readonly Chip[] }): JSX.Element {
  return (
    <ul class="sheets-chips">
      {chips.map(({ hex, name, sign }) => (
        <li key={name}>
          <svg class="sign" viewBox="0 0 48 30" width="48" height="30" aria-hidden="true" focusable="false">
            <rect class="sign-colour" width="48" height="30" fill={hex} />
          </svg>
          <SignChip sign={sign} /> {name}
        </li>
      ))}
    </ul>
  );
}
