// Floor 5. The bytes of gallery.yaml → the settings of a gallery, every default filled in.
import { defaultCloth } from "../colour/cloth.ts";
import type { Outcome, Problem } from "../problem/problem.ts";
import { quoteText } from "../problem/quote.ts";
import { parseAnswer } from "./answer.ts";
import { type Finding, placeFindings } from "./finding.ts";
import { describeIssues } from "./issue.ts";
import { defaultPalette } from "./palette.ts";
import { checkColour } from "./rule.ts";
import { galleryGuide, gallerySchema } from "./settings.ts";
import { readSource } from "./source.ts";
import type { Gallery } from "./study.ts";
import { parseYaml } from "./yaml.ts";

/** The settings of a gallery without a gallery.yaml. */
export const defaultGallery: Gallery = {
  title: "Flag redesign studies",
  description: "Studies of flags: one colour changed, every edge measured.",
  address: "http://localhost:8080/",
  language: "en",
  viewingDistance: 40,
  cloth: defaultCloth,
  palette: defaultPalette,
};

/**
 * Reads gallery.yaml. There is always a gallery: a setting that is wrong is reported and replaced by its default.
 *
 * Problems: those of `readSource` and `parseYaml`, `study/unknown-key`, `study/wrong-type`, `study/no-value`,
 * `study/too-long`, `study/out-of-range`, `study/wrong-address`, `study/wrong-language`, `study/wrong-cloth`,
 * `study/wrong-palette`, `study/wrong-colour`, `study/wrong-folder`, `study/wrong-answer`; warnings `study/missing-key` for title and address.
 */
export function parseGallery(
  file: string,
  bytes: Uint8Array,
): Outcome<Gallery> & { readonly value: Gallery } {
  const { value: source, problems } = readSource(file, bytes);
  if (!source) return { value: defaultGallery, problems };
  const yaml = parseYaml(source, source.text);
  if (!yaml.value) return { value: defaultGallery, problems: yaml.problems };

  const raw = yaml.value.value;
  const result = gallerySchema.safeParse(raw);
  const issues = result.success ? [] : describeIssues(result.error.issues, yaml.value, galleryGuide);
  const findings = [...issues, ...checkSettings(raw)];
  const wrong = new Set(
    [...findings.map(({ path }) => path), ...yaml.value.unread].map((path) => path.split(".")[0]),
  );
  const lastLine = Math.max(1, source.text.trimEnd().split("\n").length);
  const placed = placeFindings(source, yaml.value, lastLine, [...findings, ...checkMissing(raw)]);
  const gallery = fillIn(raw, wrong);
  const place = gallery.compareWith === undefined ? undefined : yaml.value.places.get("compareWith");
  const at = place && { place, sourceLine: source.lines[place.line - 1] ?? "" };
  return {
    value: at === undefined ? gallery : { ...gallery, compareWithAt: at },
    problems: [...yaml.problems, ...placed],
  };
}

/** Returns the gallery of the settings that are not in `wrong`, with defaults for the others. */
function fillIn(raw: Readonly<Record<string, unknown>>, wrong: ReadonlySet<string | undefined>): Gallery {
  const good = Object.fromEntries(Object.entries(raw).filter(([key]) => !wrong.has(key)));
  const { palette, answer, ...settings } = gallerySchema.parse(good);
  const parsed = answer === undefined ? undefined : parseAnswer(answer);
  return {
    ...defaultGallery,
    ...settings,
    ...(palette ? { palette: new Map(Object.entries(palette)) } : {}),
    ...(parsed !== undefined && "way" in parsed ? { answer: parsed } : {}),
  };
}

function checkSettings(raw: Readonly<Record<string, unknown>>): Finding[] {
  const { address, language, cloth, palette, compareWith, answer } = raw;
  const findings: Finding[] = [];
  const add = (rule: string, path: string, reason: string, hint: string) =>
    findings.push({ rule, path, on: "value", reason, hint });
  if (typeof address === "string" && address !== "" && !isWebAddress(address)) {
    const reason = `“address” is ${quoteText(address)}, which is not a web address.`;
    add(
      "study/wrong-address",
      "address",
      reason,
      `Type the whole address of the front page: address: ${isWebAddress(`https://${address}`) ? `https://${address}` : "https://flags.example/"}`,
    );
  }
  if (typeof language === "string" && language !== "" && !isLanguage(language)) {
    const reason = `“language” is ${quoteText(language)}, which is not a language tag.`;
    add(
      "study/wrong-language",
      "language",
      reason,
      findLanguage(language) ?? "Type a tag such as en, en-GB or cy: language: en-GB",
    );
  }
  if (
    isGroup(cloth) &&
    typeof cloth.black === "number" &&
    typeof cloth.white === "number" &&
    cloth.black >= cloth.white
  ) {
    const reason = `Black cloth (${cloth.black} %) must reflect less than white cloth (${cloth.white} %).`;
    const turned =
      cloth.black > cloth.white ? `black: ${cloth.white}, white: ${cloth.black}` : "black: 5, white: 85";
    add("study/wrong-cloth", "cloth", reason, `Type: cloth: { ${turned} }`);
  }
  if (typeof compareWith === "string" && compareWith !== "" && !isInnerFolder(compareWith)) {
    const reason = `“compareWith” is ${quoteText(compareWith)}; it must name a folder inside the content folder.`;
    add(
      "study/wrong-folder",
      "compareWith",
      reason,
      `Put the drawings there and type: ${galleryGuide.examples.compareWith}`,
    );
  }
  const answered = typeof answer === "string" && answer !== "" ? parseAnswer(answer) : undefined;
  if (answered !== undefined && "reason" in answered)
    add("study/wrong-answer", "answer", answered.reason, answered.hint);
  if (isGroup(palette)) {
    for (const [name, colour] of Object.entries(palette)) findings.push(...checkPaletteEntry(name, colour));
    if (Object.keys(palette).length === 0) {
      add(
        "study/wrong-palette",
        "palette",
        "“palette” has no colour.",
        "Add colours, or delete the line to get the usual ones.",
      );
    }
  }
  return findings;
}

function checkPaletteEntry(name: string, colour: unknown): Finding[] {
  const path = `palette.${name}`;
  if (/^\p{L}[\p{L}\p{M}\p{N} '’-]{0,39}$/u.test(name)) {
    return typeof colour === "string" && colour !== "" ? checkColour(path, colour) : [];
  }
  const reason = `${quoteText(name)} cannot be the name of a colour.`;
  const hint =
    "A name begins with a letter and has letters, digits, spaces and hyphens, at most 40: sea green";
  return [{ rule: "study/wrong-palette", path, on: "key", reason, hint }];
}

function checkMissing(raw: Readonly<Record<string, unknown>>): Finding[] {
  const missing: readonly ("title" | "address")[] = ["title", "address"];
  return missing
    .filter((key) => raw[key] === undefined)
    .map((key) => ({
      rule: "study/missing-key",
      path: key,
      on: "parent",
      severity: "warning",
      reason: `gallery.yaml does not say “${key}”, so it is ${quoteText(defaultGallery[key])}.`,
      hint: `Add a line: ${galleryGuide.examples[key] ?? ""}`,
    }));
}

function isWebAddress(text: string): boolean {
  return URL.canParse(text) && /^https?:\/\/[^\s\\]+$/i.test(text) && new URL(text).username === "";
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

/** Names of folders with slashes between them: nothing that climbs, is hidden or is a path of the whole computer. */
function isInnerFolder(text: string): boolean {
  return /^[\p{L}\p{N}][\p{L}\p{N} _.-]*(?:\/[\p{L}\p{N}][\p{L}\p{N} _.-]*)*\/?$/u.test(text);
}

function isGroup(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** Returns the warning that a content folder has no gallery.yaml. */
export function missingGallery(file: string): Problem {
  return {
    rule: "study/gallery-missing",
    severity: "warning",
    file,
    reason: "There is no gallery.yaml, so the gallery has the usual title, palette and settings.",
    hint: `Make one with two lines:\n${galleryGuide.examples.title}\n${galleryGuide.examples.address}`,
  };
}
