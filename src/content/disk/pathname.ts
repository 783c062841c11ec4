// Floor 5. Paths as text: with which sign between their names, and whether one lies in another. The rules are those of the
// system that we run on, or of the one that is handed in.
import path, { type PlatformPath } from "node:path";

/** Returns a path as addresses and messages have it, with `/`. Elsewhere than on Windows `\` is a letter like others. */
export function withSlashes(given: string, { sep }: PlatformPath = path): string {
  return given.replaceAll(sep, "/");
}

/** Returns whether `inner` is `outer` or lies in it, both from the working folder and whether they are there or not. */
export function isInside(inner: string, outer: string, flavour?: PlatformPath): boolean {
  return findWay(inner, outer, flavour) !== undefined;
}

/** Returns the way from `outer` to `inner`, with `/`, and empty where they are one; undefined for what lies elsewhere. */
export function findWay(inner: string, outer: string, flavour: PlatformPath = path): string | undefined {
  const way = withSlashes(flavour.relative(flavour.resolve(outer), flavour.resolve(inner)), flavour);
  return way === ".." || way.startsWith("../") || flavour.isAbsolute(way) ? undefined : way;
}
