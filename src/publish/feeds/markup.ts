// Floor 9. Text that stands in XML or HTML written without a template: feeds, the sitemap, the content of an entry.

const letters: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/**
 * Returns `text` so that it stands for itself between tags and in quoted attributes, of XML and of HTML. Characters that
 * XML cannot hold are left out.
 *
 * Source: XML 1.0, fifth edition, production 2 (Char), section 2.4.
 */
export function escapeMarkup(text: string): string {
  return text
    .replace(/[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu, "")
    .replace(/[&<>"']/g, (letter) => letters[letter] ?? letter);
}
