// Floor 11. Viewing distances in words.

/** Returns from where a drawing was seen, in words. */
export function describeDistance(distance: number): string {
  return distance === 0 ? "the full drawing" : `seen from ${distance} flag heights away (a model of sight)`;
}

/** Returns to which distance step a focus lasts, in words: null is a focus that lasts to none. */
export function formatLastsTo(lastsTo: number | null): string {
  if (lastsTo === null) return "under 10";
  return lastsTo === 320 ? "320 or more" : String(lastsTo);
}
