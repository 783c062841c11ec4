// Floor 8. A list that is too long for one page → pages of it, each with the way to the others.

import type { Format } from "../words/format.ts";
import type { Linker } from "./address.ts";

/** Entries of a list on one page. Our own judgement: some 400 KB of HTML at most. */
export const mostOnPage = 200;

/** Site path of the list of all studies, of a gallery that the front page does not show whole. */
export const listPath = "/list/";

/** Where a page stands among those of its list. */
export interface PagesView {
  /** Numbers as text, of the page and of all pages. */
  readonly number: string;
  readonly count: string;
  /** `Page 2 of 15`. */
  readonly label: string;
  readonly previous: string | undefined;
  readonly next: string | undefined;
  readonly first: string;
  readonly last: string;
}

/** One page of a list. `path` is its site path. */
export interface ListPage<T> {
  readonly path: string;
  readonly items: readonly T[];
  /** Its number from 1, of how many. */
  readonly number: number;
  readonly of: number;
}

/** The site path of a page of the list that begins at `path`: `/`, then `/page/2/`. */
function formatPagePath(path: string, number: number): string {
  return number === 1 ? path : `${path}page/${number}/`;
}

/** Divides a list; an empty one has one page. */
export function divideList<T>(path: string, items: readonly T[]): readonly ListPage<T>[] {
  const of = Math.max(1, Math.ceil(items.length / mostOnPage));
  return Array.from({ length: of }, (_, at) => ({
    path: formatPagePath(path, at + 1),
    items: items.slice(at * mostOnPage, (at + 1) * mostOnPage),
    number: at + 1,
    of,
  }));
}

/** The ways between the pages of the list that begins at `path`; undefined where there is one page. */
export function presentPages(
  path: string,
  { number, of }: Pick<ListPage<unknown>, "number" | "of">,
  link: Linker,
  format: Format,
): PagesView | undefined {
  if (of === 1) return undefined;
  const to = (other: number) => (other < 1 || other > of ? undefined : link(formatPagePath(path, other)));
  const at = { number: format.number(number, 0), count: format.number(of, 0) };
  return {
    ...at,
    label: format.say("paging.place", at),
    previous: to(number - 1),
    next: to(number + 1),
    first: link(formatPagePath(path, 1)),
    last: link(formatPagePath(path, of)),
  };
}

/** The title of a page of a list called `title`: with its place where there are several. */
export function titlePage(title: string, pages: PagesView | undefined, { say }: Format): string {
  return pages === undefined
    ? title
    : say("paging.title", { title, number: pages.number, count: pages.count });
}
