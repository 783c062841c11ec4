// Floor 2. The numbers by which the paints of a drawing go, each kind a type of its own: none is taken for another, nor reads
// a list of another, and what one is as another is worked out here alone.

type Numbered<Kind extends string> = number & { readonly kind: Kind };

/** Place of a paint among those of a drawing, from 0; so too of whatever else a map labels, as pieces. */
export type PaintIndex = Numbered<"paint">;

/** What a label map has where a paint shows, from 1; {@link transparent} where nothing does. */
export type Label = Numbered<"label">;
export const transparent = 0 as Label;

/** Place of a paint in an edge table, by area, from 0. */
export type Rank = Numbered<"rank">;

/** Returns the label of a paint. */
export function labelOf(paint: PaintIndex): Label {
  return (paint + 1) as Label;
}

/** Returns the paint with a label; of {@link transparent} a number that no list has. */
export function paintOf(label: Label): PaintIndex {
  return (label - 1) as PaintIndex;
}

/** An array whose places are numbers of the kind `N`: the compiler lets no other read it. */
export type List<N extends number, T> = Readonly<Record<N, T>> & Listed<N, T>;

interface Listed<N extends number, T> extends Iterable<T> {
  readonly length: number;
  keys(): IterableIterator<N>;
  entries(): IterableIterator<[N, T]>;
  map<U>(change: (item: T, at: N) => U): List<N, U>;
  flatMap<U>(change: (item: T, at: N) => U | readonly U[]): U[];
  filter(test: (item: T, at: N) => boolean): T[];
  every(test: (item: T, at: N) => boolean): boolean;
  some(test: (item: T, at: N) => boolean): boolean;
  findIndex(test: (item: T, at: N) => boolean): N;
}

/** Says of an array by what it is read. */
export function listed<N extends number, T>(items: readonly T[]): List<N, T> {
  return items as unknown as List<N, T>;
}
