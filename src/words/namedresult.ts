// Floor 7. Results for pages: every name of a colour in them as the gallery's language has it. Files for machines are made of
// the results as they were measured.
import type { GalleryResult, StudyResult } from "../analysis/result.ts";
import { sayColour } from "./colourphrase.ts";
import type { Format } from "./format.ts";

/** What holds names of colours, as a text or as a list, in what is mapped here. */
const nameKeys: ReadonlySet<string> = new Set(["name", "names", "of", "other", "uneven", "unseen", "shared"]);

/** Studies as they were measured, by those that pages show. */
const measured = new WeakMap<StudyResult, StudyResult>();

/** Studies are asked for again and again, by pages and by pictures. */
const named = new WeakMap<Format, WeakMap<StudyResult, StudyResult>>();

/** A gallery as its pages tell it. The same where the language has the names as they are. */
export function nameGallery(result: GalleryResult, format: Format): GalleryResult {
  const { survey, drawings } = result;
  return {
    ...result,
    studies: result.studies.map((study) => nameStudy(study, format)),
    ...(drawings && {
      drawings: new Map(
        [...drawings].map(([path, one]) => [path, { ...one, measure: sayNames(one.measure, format) }]),
      ),
    }),
    ...(survey && {
      survey: {
        ...survey,
        entries: survey.entries.map(({ flag, measure, ...entry }) => ({
          ...entry,
          flag: sayNames(flag, format),
          measure: sayNames(measure, format),
        })),
      },
    }),
  };
}

/** A study as its pages tell it. */
export function nameStudy(result: StudyResult, format: Format): StudyResult {
  if (measured.has(result)) return result;
  const known = named.get(format) ?? new WeakMap<StudyResult, StudyResult>();
  named.set(format, known);
  const { ranking } = result;
  const said = known.get(result) ?? {
    ...result,
    comparison: sayNames(result.comparison, format),
    ...(ranking && { ranking: nameLater(ranking, format) }),
  };
  known.set(result, said);
  measured.set(said, result);
  return said;
}

/** The study as it was measured, by one that pages show. */
export function measuredOf(result: StudyResult): StudyResult {
  return measured.get(result) ?? result;
}

/** Unpacks nothing before it is asked for, and says names once for as long as what was unpacked is kept. */
function nameLater<T extends object>(packed: T, format: Format): T {
  const said = new WeakMap<object, unknown>();
  const get = (key: string): unknown => {
    const value: unknown = packed[key as keyof T];
    if (typeof value !== "object" || value === null) return sayNames(value, format);
    const known = said.get(value) ?? sayNames(value, format);
    said.set(value, known);
    return known;
  };
  return Object.defineProperties(
    {},
    Object.fromEntries(Object.keys(packed).map((key) => [key, { get: () => get(key), enumerable: true }])),
  ) as T;
}

/** A copy of plain data with its names said, or the very same where none is another. */
function sayNames<T>(value: T, format: Format): T {
  return mapNames(value, (name) => sayColour(name, format)) as T;
}

function mapNames(value: unknown, say: (name: string) => string, isName = false): unknown {
  if (typeof value === "string") return isName ? say(value) : value;
  if (typeof value !== "object" || value === null) return value;
  const entries = Object.entries(value).map(([key, inner]) => [
    key,
    mapNames(inner, say, Array.isArray(value) ? isName : nameKeys.has(key)),
  ]);
  if (entries.every(([key, inner]) => inner === value[key as keyof typeof value])) return value;
  return Array.isArray(value) ? entries.map(([, inner]) => inner) : Object.fromEntries(entries);
}
