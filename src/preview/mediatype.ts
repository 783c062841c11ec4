// Floor 10. What kind of file an answer holds, by its name: every kind that a site has.
import path from "node:path";

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".svg": "image/svg+xml",
  ".json": "application/json; charset=utf-8",
  ".xml": "application/xml; charset=utf-8",
  ".csv": "text/csv; charset=utf-8",
  ".bib": "text/plain; charset=utf-8",
  ".png": "image/png",
  ".webp": "image/webp",
  ".md": "text/markdown; charset=utf-8",
  ".woff2": "font/woff2",
  ".txt": "text/plain; charset=utf-8",
};

/** Returns the media type of `file`, for the header Content-Type. */
export function mediaTypeOf(file: string): string {
  return types[path.extname(file)] ?? "application/octet-stream";
}
