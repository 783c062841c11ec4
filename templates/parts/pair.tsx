// Part. Both flags of a study beside each other, what shows one at a time in the same place, and for paper one flag of both halves.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { MarkedPlate, Plate } from "../../src/views/plate.ts";
import type { SplitView } from "../../src/views/study/splitline.ts";
import { CaptionedPlate, PlateName } from "./plate.tsx";
import { useSay } from "./words.tsx";

/**
 * The pair. Its controls are hidden until the script runs that they need, `templates/client/swap.js`. With
 * `isPressed` so do the flags themselves, where no link covers them. With `split` one flag of both halves stands beside
 * it on paper. `note` is said once, under the redesign.
 */
export function Pair({
  plates,
  isPressed = false,
  split,
  note,
}: {
  plates: readonly [MarkedPlate, MarkedPlate];
  isPressed?: boolean;
  split?: SplitView;
  note?: string;
}): JSX.Element {
  const say = useSay();
  return (
    <div class="swap" data-shown="both">
      <div class="pair">
        {plates.map((plate, index) => (
          <CaptionedPlate key={plate.label} plate={plate} eager>
            <PlateName plate={plate} note={index === 1 ? note : undefined} />
          </CaptionedPlate>
        ))}
        {split && <SplitFlag plates={plates} split={split} />}
      </div>
      <div
        class="swap-controls"
        data-both={say("pair.bothShown")}
        data-alone={say("pair.shownAlone", { name: "{name}" })}
        hidden
      >
        <button type="button">{say("pair.swap")}</button>
        <button type="button" hidden>
          {say("pair.both")}
        </button>
        <span class="swap-hint">
          {isPressed && say("pair.pressFlag")}
          <span class="swap-keys">{isPressed ? ` ${say("pair.orKey")}` : say("pair.pressKey")}</span>
        </span>
        <span class="unseen" role="status" />
      </div>
    </div>
  );
}

/** One flag, half original and half redesign: on paper alone. */
function SplitFlag({ plates, split }: { plates: readonly [Plate, Plate]; split: SplitView }): JSX.Element {
  return (
    <figure class={`plate split ${split.name}`}>
      <div class="mat">
        {plates.map((plate, index) => (
          <img
            key={plate.label}
            class={`flag flag-${plate.fit}`}
            src={plate.src}
            alt={index === 0 ? split.caption : ""}
            width={plate.width}
            height={plate.height}
            decoding="async"
          />
        ))}
      </div>
      <figcaption>{split.caption}</figcaption>
    </figure>
  );
}
