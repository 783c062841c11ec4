// Floor 5. Typographic quotes round a value that is a code or a word of ours: YAML takes them for letters.
import { capital, type Finding, labelOf, wrong } from "./finding.ts";

/** Every mark that word processors put in place of a straight quote. Source: Unicode, general categories Pi and Pf, U+201A, U+201E. */
const curly = /[\p{Pi}\p{Pf}\u201a\u201e\u2033]/u;

/** Where no typographic quote is ever meant: colours, selectors, files, dates, words from a list. In prose they are right. */
const plainPaths =
  /^(?:original|status|date|focus\.\w+|(?:change|options\.\d+)\.(?:replace|with|only)|credit\.(?:licence|source)|address|language|compareWith|answer|nominate|palette\..+)$/;

/** Returns a finding for each value in `raw` that stands in typographic quotes and must not. */
export function checkCurly(raw: unknown, path = ""): Finding[] {
  if (typeof raw === "object" && raw !== null) {
    return Object.entries(raw).flatMap(([key, value]) =>
      checkCurly(value, path === "" ? key : `${path}.${key}`),
    );
  }
  if (typeof raw !== "string" || !plainPaths.test(path)) return [];
  const [first = "", last = ""] = [raw.charAt(0), raw.charAt(raw.length - 1)];
  if (!curly.test(first) && !curly.test(last)) return [];
  const plain = raw.replace(new RegExp(curly, "gu"), "").trim();
  return wrong(
    "study/curly-quotes",
    path,
    {
      reason: `${capital(labelOf(path))} stands in curly quotes, which count as letters of the value.`,
      hint: `Type straight quotes: ${path.split(".").at(-1)}: ${JSON.stringify(plain)}`,
    },
    { isWhole: true },
  );
}
