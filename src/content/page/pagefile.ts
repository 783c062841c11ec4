// Floor 5. The bytes of a page of the gallery's own → the page, checked, or every problem they have.
import { z } from "zod";
import type { Outcome } from "../../problem/problem.ts";
import { checkInvisible } from "../study/invisiblevalue.ts";
import { checkScripts } from "../study/namesense.ts";
import { type MarkdownKind, readMarkdown } from "../study/studyfile.ts";
import { line } from "../yaml/textvalue.ts";

/** A page that the gallery's authors wrote beside its studies. */
export interface Page {
  /** Its address without the slashes around it: `guide/study` of `pages/guide/study.md`. */
  readonly path: string;
  /** Path of the file, as shown in messages. */
  readonly file: string;
  readonly title: string;
  /** Its word in the navigation of every page. */
  readonly menu?: string;
  /** Its place among its neighbours. */
  readonly order?: number;
  /** The heading under which the page above lists it, with others of the same. */
  readonly group?: string;
  /** Markdown. */
  readonly body: string;
  /** Line on which the text begins in its file, from 1. */
  readonly bodyLine: number;
}

const pageSchema = z.strictObject({
  title: line(200).describe("The heading of the page."),
  menu: line(24).describe("Its word in the navigation of every page.").exactOptional(),
  order: z
    .number()
    .min(0)
    .max(10_000)
    .describe("Its place among its neighbours, the smallest first; without it, it comes after them.")
    .exactOptional(),
  group: line(60)
    .describe("The heading under which the page above lists it, with others that have the same.")
    .exactOptional(),
});

const pageKind: MarkdownKind<z.infer<typeof pageSchema>> = {
  schema: pageSchema,
  guide: {
    whole: "A page",
    examples: {
      title: "title: How to take part",
      menu: "menu: About",
      order: "order: 1",
      group: "group: For teachers",
    },
  },
  check: (raw) => [...checkInvisible(raw), ...checkScripts(raw)],
  shows: "studies",
  begins: "title: How to take part",
};

/**
 * Reads one file of `pages/`. The value is undefined as soon as there is one error; warnings leave it.
 *
 * Problems: those of `readMarkdown`, `checkInvisible` and `checkScripts`.
 */
export function parsePage(path: string, file: string, bytes: Uint8Array): Outcome<Page> {
  const { value, problems } = readMarkdown(file, bytes, pageKind);
  return { value: value && { path, ...value.prose, ...value.fields }, problems };
}

/** By `order`, those without one last, then by title and path. */
export function orderPages(pages: readonly Page[]): readonly Page[] {
  const place = ({ order = Number.POSITIVE_INFINITY }: Page) => order;
  return [...pages].sort(
    (a, b) =>
      (place(a) === place(b) ? 0 : place(a) - place(b)) ||
      a.title.localeCompare(b.title, "en") ||
      (a.path < b.path ? -1 : 1),
  );
}

/** The path of the page above: `guide` of `guide/study`; undefined for one that lies in no folder. */
export function parentOf(path: string): string | undefined {
  return path.includes("/") ? path.slice(0, path.lastIndexOf("/")) : undefined;
}
