// Part. Small pieces of cloth: one colour, or two that meet. The words beside them say what they are.
/** @jsxRuntime automatic */
/** @jsxImportSource preact */
import type { JSX } from "preact";
import type { Hex } from "../../src/colour/colour.ts";
import type { DetailView } from "../../src/views/edge/edgecrop.ts";

/** One colour. */
export function SwatchChip({ hex }: { hex: Hex }): JSX.Element {
  return (
    <svg class="swatch" viewBox="0 0 20 20" width="20" height="20" aria-hidden="true" focusable="false">
      <rect width="20" height="20" fill={hex} />
    </svg>
  );
}

/** Two colours that meet in the middle. */
export function SwatchPair({ hexes }: { hexes: readonly [Hex, Hex] }): JSX.Element {
  return (
    <svg
      class="swatch swatch-pair"
      viewBox="0 0 40 20"
      width="40"
      height="20"
      aria-hidden="true"
      focusable="false"
    >
      <rect width="20.5" height="20" fill={hexes[0]} />
      <rect x="20" width="20" height="20" fill={hexes[1]} />
    </svg>
  );
}

/** The place where two colours meet, cut out of a flag; both colours alone where none of their lines is traced. */
export function MeetingChip({
  hexes,
  detail,
}: {
  hexes: readonly [Hex, Hex];
  detail?: DetailView | undefined;
}): JSX.Element {
  return detail ? <DetailChip detail={detail} /> : <SwatchPair hexes={hexes} />;
}

/** A part of a drawing, small. */
export function DetailChip({ detail: { src, viewBox, width, height } }: { detail: DetailView }): JSX.Element {
  return (
    <svg class="detail-chip" viewBox={viewBox} width="72" height="48" aria-hidden="true" focusable="false">
      <image href={src} width={width} height={height} preserveAspectRatio="none" />
    </svg>
  );
}
