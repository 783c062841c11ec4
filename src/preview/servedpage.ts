// Floor 10. What a served page has and a published one has not: the script that shows it anew, its style, and leave to read a
// page as one. Nothing else of the page changes.
import { pagePolicy } from "../views/pagepolicy.ts";

/** Where the server's own files are. No page of a site begins so. */
export const ownFolder = "/_serve/";

/** What is added to the policy of a page, whose last directive names who may turn text into more: a newer page into one. */
const renewing = " renewal";

/** Returns a page as it is served. `mark` names what it shows, see `Version.markPage`. */
export function dressPage(html: string, mark: string): string {
  return html
    .replace(`content="${pagePolicy}"`, `content="${servedPolicy}"`)
    .replace("</head>", `${formatTags(mark)}</head>`);
}

/** Returns the page without what `dressPage` has put on. */
export function undressPage(html: string): string {
  return html
    .replace(`content="${servedPolicy}"`, `content="${pagePolicy}"`)
    .replace(/<link rel="stylesheet" href="\/_serve\/[^<>]*><script src="\/_serve\/[^<>]*><\/script>/, "");
}

/** The policy of a served page, as its meta element carries it. */
export const servedPolicy = `${pagePolicy}${renewing}`;

/** A page in place of one whose template failed. Why is for the terminal: it names places in the program. */
export function formatFailure(mark: string): string {
  return dressPage(
    `<!DOCTYPE html>\n<html lang="en"><head><meta http-equiv="Content-Security-Policy" content="${pagePolicy}"/><meta charset="utf-8"/><title>Not rendered</title></head><body><h1>This page could not be rendered</h1><p>The terminal says why.</p></body></html>\n`,
    mark,
  );
}

function formatTags(mark: string): string {
  return `<link rel="stylesheet" href="${ownFolder}notice.css"/><script src="${ownFolder}reload.js" data-mark="${mark}" defer></script>`;
}
