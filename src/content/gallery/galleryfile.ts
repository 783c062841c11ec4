// Floor 5. The bytes of gallery.yaml → the settings of a gallery, every default filled in.
import { defaultCloth } from "../../colour/cloth.ts";
import { locate } from "../../problem/locate.ts";
import type { Outcome, Problem } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import type { Gallery } from "../study/study.ts";
import { readSource } from "../text/textsource.ts";
import { type Finding, placeFindings } from "../yaml/finding.ts";
import { parseYaml } from "../yaml/readyaml.ts";
import { describeIssues } from "../yaml/schemaissue.ts";
import { parseAnswer } from "./answerlink.ts";
import { galleryGuide, gallerySchema } from "./gallerykey.ts";
import { defaultPalette } from "./palette.ts";
import { checkSettings } from "./settingrule.ts";

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
 * `study/wrong-palette`, `study/wrong-colour`, `study/invisible`, `study/wrong-folder`, `study/wrong-answer`, `study/licence`; warnings `study/missing-key` for title and address.
 */
export function parseGallery(
  file: string,
  bytes: Uint8Array,
): Outcome<Gallery> & { readonly value: Gallery } {
  const { value: source, problems } = readSource(file, bytes);
  if (!source) return { value: defaultGallery, problems };
  const yaml = parseYaml(source, source.text, galleryGuide.examples["title"]);
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
  const at = place && locate(source.lines[place.line - 1] ?? "", place);
  return {
    value: at === undefined ? gallery : { ...gallery, compareWithAt: at },
    problems: [...yaml.problems, ...placed],
  };
}

/** Returns the gallery of the settings that are not in `wrong`, with defaults for the others. */
function fillIn(raw: Readonly<Record<string, unknown>>, wrong: ReadonlySet<string | undefined>): Gallery {
  const good = Object.fromEntries(Object.entries(raw).filter(([key]) => !wrong.has(key)));
  const { palette, answer, nominate, ...settings } = gallerySchema.parse(good);
  const readWay = (key: "answer" | "nominate", text: string | undefined) => {
    const parsed = text === undefined ? undefined : parseAnswer(text, key);
    return parsed !== undefined && "way" in parsed ? { [key]: parsed } : {};
  };
  return {
    ...defaultGallery,
    ...settings,
    ...(palette ? { palette: new Map(Object.entries(palette)) } : {}),
    ...readWay("answer", answer),
    ...readWay("nominate", nominate),
  };
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

/** Returns the warning that a content folder has no gallery.yaml. `names` are the files that it has. */
export function missingGallery(file: string, names: readonly string[]): Problem {
  const base = { rule: "study/gallery-missing", severity: "warning", file } as const;
  const near = names.find((name) => /^gallery\.(?:ya?ml|ya?ml\.txt|txt)$/i.test(name));
  if (near !== undefined) {
    const reason = `${quoteText(near)} is not read: the settings of a gallery are in gallery.yaml.`;
    return {
      ...base,
      file: file.replace(/(?<![^/])[^/]*$/, near),
      reason,
      hint: "Rename it to: gallery.yaml",
    };
  }
  return {
    ...base,
    reason: "There is no gallery.yaml, so the gallery has the usual title, palette and settings.",
    hint: `Make one with two lines:\n${galleryGuide.examples.title}\n${galleryGuide.examples.address}`,
  };
}
