// Floor 5. The palette of a gallery that names none: one typical flag shade for each common name.

/**
 * Name → CSS colour. The order is the order in which equal options are listed.
 *
 * Source: none. The shades are our own choice, each a common flag shade of its name.
 */
export const defaultPalette: ReadonlyMap<string, string> = new Map([
  ["white", "#ffffff"],
  ["black", "#141414"],
  ["red", "#c8202f"],
  ["yellow", "#f7c81e"],
  ["green", "#2f8f46"],
  ["dark green", "#12512f"],
  ["blue", "#1f56a8"],
  ["dark blue", "#16285c"],
  ["light blue", "#6fb3e0"],
  ["orange", "#ee7a1a"],
  ["purple", "#5f2a7a"],
  ["brown", "#6f4526"],
]);

/** Returns whether `palette` is the usual one: a gallery that names its own has settled what its names mean. */
export function isUsualPalette(palette: ReadonlyMap<string, string>): boolean {
  return (
    palette.size === defaultPalette.size &&
    [...defaultPalette].every(([name, colour]) => palette.get(name) === colour)
  );
}
