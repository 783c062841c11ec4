// Floor 5. The language that texts are in, as a tag of BCP 47.
import { quoteText } from "../../problem/quote.ts";
import { type Finding, wrong } from "../yaml/finding.ts";

/** Returns what is wrong with the value of `language`. Problem: `study/wrong-language`. */
export function checkLanguage(language: string): Finding[] {
  if (isLanguage(language)) return [];
  const reason = `“language” is ${quoteText(language)}, which is not a language tag.`;
  const hint = findLanguage(language) ?? "Type a tag such as en, en-GB or cy: language: en-GB";
  return wrong("study/wrong-language", "language", { reason, hint });
}

function isLanguage(text: string): boolean {
  try {
    // No language has a name of five to eight letters. Source: RFC 5646, section 2.2.1.
    return Intl.getCanonicalLocales(text).length === 1 && !/^[a-z]{4,}/i.test(text);
  } catch {
    return false;
  }
}

/** Returns what to type for a language by its English name, or undefined. */
function findLanguage(name: string): string | undefined {
  const names = new Intl.DisplayNames(["en"], { type: "language", fallback: "none" });
  const letters = Array.from({ length: 26 }, (_, index) => String.fromCharCode(97 + index));
  const tags = letters.flatMap((first) => letters.map((second) => first + second));
  const found = tags.find((tag) => names.of(tag)?.toLowerCase() === name.trim().toLowerCase());
  return found === undefined ? undefined : `Type: language: ${found}`;
}
