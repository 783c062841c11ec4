// Drawings written out by hand, as bytes.
export const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

/** A drawing of 3 × 2 parts, 30 × 20 units, with this inside. */
export const drawing = (inside: string): Uint8Array =>
  bytesOf(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 30 20">${inside}</svg>`);

/** A rectangle over the whole flag. */
export const field = (colour: string): string => `<rect width="30" height="20" fill="${colour}"/>`;

/** A disc in the middle, a charge. */
export const disc = (colour: string, radius = 6): string =>
  `<circle cx="15" cy="10" r="${radius}" fill="${colour}"/>`;

/** Upright stripes of equal width. */
export const stripes = (...colours: readonly string[]): string =>
  colours
    .map(
      (colour, index) =>
        `<rect x="${(30 * index) / colours.length}" width="${30 / colours.length}" height="20" fill="${colour}"/>`,
    )
    .join("");
