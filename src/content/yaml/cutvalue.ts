// Floor 5. A colour such as rgb(10, 20, 30) that stands in braces without quotes: at each comma YAML begins another key.

type Raw = Readonly<Record<string, unknown>>;

/** Returns whether a value is the beginning of a CSS function that was cut off at its first comma: `rgb(238`. */
export function isCutOff(value: unknown): value is string {
  return typeof value === "string" && /^[a-z]{3,5}\([^)]*$/i.test(value);
}

/** Returns the keys of `map` that are the rest of such a value, `122` and `26)`; they need no message of their own. */
export function listPieces(map: unknown): readonly string[] {
  if (typeof map !== "object" || map === null || Array.isArray(map)) return [];
  if (!Object.values(map).some(isCutOff)) return [];
  return Object.entries(map as Raw).flatMap(([key, value]) =>
    value === null && /^[\d.%\s]+\)?$/.test(key) ? [key] : [],
  );
}
