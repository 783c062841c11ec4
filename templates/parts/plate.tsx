// Part. A flag on its neutral mat: proportions kept, never cropped.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { ComponentChildren, JSX } from "preact";
import type { Plate } from "../../src/site/present/plate.ts";

/** The mat with its flag, without a caption. `eager` is for the flags a page opens with. */
export function Mat({ plate, eager = false }: { plate: Plate; eager?: boolean }): JSX.Element {
  return (
    <div class="mat">
      <img
        class={`flag flag-${plate.fit}`}
        src={plate.src}
        alt={plate.alt}
        width={plate.width}
        height={plate.height}
        loading={eager ? undefined : "lazy"}
        decoding="async"
      />
    </div>
  );
}

/** A mat with a caption under it. */
export function CaptionedPlate({
  plate,
  eager = false,
  id,
  children,
}: {
  plate: Plate;
  eager?: boolean;
  id?: string;
  children: ComponentChildren;
}): JSX.Element {
  return (
    <figure class="plate" id={id}>
      <Mat plate={plate} eager={eager} />
      <figcaption>{children}</figcaption>
    </figure>
  );
}
