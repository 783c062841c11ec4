// Part. A flag on its neutral mat: proportions kept, never cropped.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { ComponentChildren, JSX } from "preact";
import type { EdgePlate } from "../../src/views/edge/edgepage.ts";
import type { DrawnPlate, MarkedPlate, Plate } from "../../src/views/plate.ts";
import { Message } from "./words.tsx";

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

/** The mat with a flag drawn within the page. `id`, the drawing's own on the page, names what tells of it. */
export function DrawnMat({ plate, id }: { plate: DrawnPlate; id: string }): JSX.Element {
  const { width, height } = plate;
  return (
    <div class="mat">
      <svg
        class={`flag flag-${plate.fit}`}
        viewBox={`0 0 ${width} ${height}`}
        width={width}
        height={height}
        role="img"
        aria-labelledby={`${id}-title ${id}-desc`}
      >
        <title id={`${id}-title`}>{plate.label}</title>
        <desc id={`${id}-desc`}>{plate.description}</desc>
        <image href={plate.src} width={width} height={height} preserveAspectRatio="none" />
      </svg>
    </div>
  );
}

/** `Redesign · clarity 86% · unofficial study`: what is shown, and the one number of the flag, or of an edge of it. */
export function PlateName({
  plate: { label, clarity, contrast },
  note,
}: {
  plate: Plate & Partial<Pick<MarkedPlate, "clarity"> & Pick<EdgePlate, "contrast">>;
  note?: string | undefined;
}): JSX.Element {
  const tags = { number: (text: ComponentChildren) => <span class="plate-mark">{text}</span> };
  return (
    <>
      <span>{label}</span>
      {(clarity || contrast) && " · "}
      <span class="plate-clarity">
        {clarity && <Message id="plate.clarity" values={{ clarity }} tags={tags} />}
        {contrast && <Message id="plate.contrast" values={{ contrast }} tags={tags} />}
      </span>
      {note && <span class="plate-note"> {note}</span>}
    </>
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
