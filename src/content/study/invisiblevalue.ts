// Floor 5. Values with characters that nobody sees: two names that look the same would be two, and a title nothing at all.
import { findInvisible, isBlank } from "../../problem/invisible.ts";
import { quoteText } from "../../problem/quote.ts";
import { nameCharacter, stacked, typeAgain } from "../text/cleantext.ts";
import { capital, type Finding, labelOf, wrong } from "../yaml/finding.ts";

/**
 * Returns what cannot be seen in the texts of `value`, as read from YAML, at any depth, and in the names of a palette, and
 * what would be drawn over other texts. Problems: `study/invisible`; `study/no-value` where a text has nothing else;
 * `study/stacked-marks`.
 */
export function checkInvisible(value: unknown, path = ""): Finding[] {
  if (typeof value === "string") return checkText(value, path, "value");
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) => {
    const under = path === "" ? key : `${path}.${key}`;
    return [...(path === "palette" ? checkText(key, under, "key") : []), ...checkInvisible(part, under)];
  });
}

function checkText(text: string, path: string, on: "key" | "value"): Finding[] {
  // What is written as nothing is the schema's to report.
  if (text === "") return [];
  const found = findInvisible(text);
  const label = on === "key" ? `a name of ${quoteText("palette")}` : labelOf(path);
  if (isBlank(text)) {
    const seen =
      found === undefined ? "" : `: it holds ${nameCharacter(found.character)}, which cannot be seen`;
    return wrong(
      "study/no-value",
      path,
      { reason: `${capital(label)} is empty${seen}.`, hint: "Type it again by hand, in letters." },
      { on, isWhole: true },
    );
  }
  if (found === undefined) {
    if (!stacked.test(text.normalize("NFC"))) return [];
    const reason = `${capital(label)} has a letter with more than five marks on it.`;
    return wrong("study/stacked-marks", path, { reason, hint: typeAgain }, { on, isWhole: true });
  }
  const before = [...text.slice(0, found.at)].slice(-12).join("");
  const where = before.trim() === "" ? "at its beginning" : `after ${quoteText(before)}`;
  const reason = `${capital(label)} holds a character that cannot be seen (${nameCharacter(found.character)}), ${where}.`;
  const hint = "Type it again by hand; copying brought the character along.";
  return wrong("study/invisible", path, { reason, hint }, { on, isWhole: true });
}
