// Floor 8. What a page may load: the content policy in its head, and the same for hosts that read a `_headers` file.

import { cropFiles } from "./edge/edgeaddress.ts";
import { stillsFolder } from "./show/lessonfile.ts";

const directives = [
  "default-src 'none'",
  "img-src 'self'",
  "style-src 'self'",
  "script-src 'self'",
  "font-src 'self'",
  // Pages fetch nothing. A tool that audits one asks for `robots.txt` in its name, and `preview` sends it news.
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  // No text becomes a script, its address or a document, but through the policy by which the front page asks for the words of
  // a search, and the one by which `/take-part/` reads a drawing. Last, because `preview` adds a policy of its own. Source: W3C, Trusted Types.
  "require-trusted-types-for 'script'",
  "trusted-types words drawing",
];

/** The policy of every page, as its meta element carries it. */
export const pagePolicy = directives.join("; ");

/** Every page, for hosts: a name behind a colon is one step of a path. */
const pagePatterns = [
  "/",
  "/survey/",
  "/method/",
  "/rules/",
  "/take-part/",
  "/authors/",
  "/authors/:name/",
  "/tags/",
  "/tags/:name/",
  "/decisions/",
  "/series/:slug/",
  "/flags/:slug/",
  "/flags/:slug/:one/:other/",
  "/series/:slug/sheet/",
  "/series/:slug/show/",
  "/series/:slug/vote/",
  "/studies/:slug/",
  "/studies/:slug/changes/",
  "/studies/:slug/show/",
  "/studies/:slug/sheet/",
  "/studies/:slug/maker/",
  "/studies/:slug/edges/:edge/",
];

/** Lists that are too long for one page. */
const pagedPatterns = [
  "/list/",
  "/list/page/:number/",
  "/decisions/page/:number/",
  "/authors/page/:number/",
  "/authors/:name/page/:number/",
  "/tags/page/:number/",
  "/tags/:name/page/:number/",
];

/** The site path of the gallery's logo. */
export const logoPath = "/assets/logo.svg";

/** Where the drawings are that the gallery's own pages show. */
export const shownDrawings = "/assets/drawings/";

/** A drawing opened on its own may style itself and do nothing else. */
export const drawingPolicy = "default-src 'none'; style-src 'unsafe-inline'; sandbox";

/**
 * The text of `_headers`. `frame-ancestors` has no effect in a meta element, so pages get their policy here again.
 * `drawings` are the file names in a study's folder; `isPaged` says whether lists have more than one page; `own` are the
 * paths of the gallery's own pages.
 */
export function formatHeaders(
  drawings: readonly string[],
  isPaged = false,
  own: readonly string[] = [],
): string {
  const rules = [
    rule("/*", ["X-Content-Type-Options: nosniff", "Referrer-Policy: no-referrer"]),
    ...[...pagePatterns, ...(isPaged ? pagedPatterns : []), ...own].map((page) =>
      rule(page, [`Content-Security-Policy: ${pagePolicy}; frame-ancestors 'none'`]),
    ),
    ...[...drawings, ...Object.values(cropFiles).map((file) => `edges/:edge/${file}`)].map((file) =>
      rule(`/studies/:slug/${file}`, [`Content-Security-Policy: ${drawingPolicy}`]),
    ),
    // The figure of all changes holds its flags as a picture.
    rule(`/studies/:slug/${stillsFolder}*`, [`Content-Security-Policy: ${drawingPolicy}; img-src data:`]),
    ...["/survey/flags/*", `${shownDrawings}*`, logoPath].map((path) =>
      rule(path, [`Content-Security-Policy: ${drawingPolicy}`]),
    ),
    // The next build may put other letters into a file of the same name: who has it asks whether it still holds.
    rule("/assets/fonts/*", ["Cache-Control: public, no-cache"]),
  ];
  return rules.join("\n");
}

function rule(path: string, headers: readonly string[]): string {
  return `${[path, ...headers.map((header) => `  ${header}`)].join("\n")}\n`;
}
