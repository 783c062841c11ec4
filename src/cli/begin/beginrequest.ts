// Floor 11, for the command begin. What is asked for, what is there already, and which files have to be made.
import { join } from "node:path";
import { nameFailure } from "../../content/disk/filefailure.ts";
import { readFolder } from "../../content/disk/readfile.ts";
import { type Entry, studySchemaFile } from "../../content/folder/listing.ts";
import { writeGalleryFile } from "../../content/gallery/gallerystarter.ts";
import { describeDevice, foldName, isSlug, proposeSlug } from "../../content/study/slug.ts";
import { findInvisible, isBlank } from "../../problem/invisible.ts";
import { quoteText } from "../../problem/quote.ts";
import { type Given, UsageError } from "../command.ts";
import { quoteWord } from "../text/invocation.ts";
import { listFirstFiles, listWorkflows } from "./firstfile.ts";
import { listSchemas, schemasFolder } from "./galleryschema.ts";
import type { Piece } from "./layout.ts";
import { lookAtSeries, type SeriesThere, writeSeries } from "./seriesentry.ts";
import type { StarterText } from "./studystarter.ts";

/** What is asked for, checked. `original` is the path of the drawing as typed, `file` what to open for writing. */
export interface Request {
  readonly slug: string;
  readonly title: string;
  /** What the flag is called, where it was said. */
  readonly flag?: string;
  readonly original: string;
  /** The slug of the series it belongs to. */
  readonly series?: string;
  readonly content: string;
  /** Whether keys and prose go into files of their own. */
  readonly isSplit: boolean;
  readonly file: "study.md" | "study.yaml";
  /** All that was typed. */
  readonly given: Given;
}

/** What is there already. `schema` is the way from a study's folder to its schema. */
export interface Ground {
  readonly isNew: boolean;
  readonly hasSchemas: boolean;
  readonly series?: SeriesThere;
  readonly schema: string;
}

const longest = { title: 200, flag: 100, slug: 80 };
const samples = { title: "A lighter ferry wheel", flag: "The Harrowquay ferry flag" };

/**
 * Reads what was typed; `content` is the folder where none is named, `taken` the names in its studies/. Throws UsageError
 * with a slug that would do.
 */
export function readRequest(given: Given, content: string, taken: readonly string[] = []): Request {
  const { original, title, flag, series } = given.values;
  const [slug] = given.operands;
  if (original === undefined) throw askForOriginal(slug, { ...given, taken });
  const typed = { ...given, original, taken };
  if (slug === undefined)
    throw new UsageError(
      "begin needs a slug: the name of the study's folder, and of its address.",
      suggest(title ?? nameOf(original), typed),
    );
  if (!isSlug(slug))
    throw new UsageError(
      `${quoteText(slug)} cannot be an address: small letters a to z, digits and single hyphens only, 100 at most.`,
      suggest(proposeSlug(slug) === undefined ? (title ?? nameOf(original)) : slug, typed),
    );
  if (slug.length > longest.slug)
    throw new UsageError(
      `The slug has ${slug.length} characters; it may have ${longest.slug}.`,
      suggest(slug.slice(0, 40), typed),
    );
  for (const name of [slug, series ?? ""]) {
    const device = describeDevice(name);
    if (device === undefined) continue;
    throw new UsageError(
      device.reason,
      name === slug ? suggest(slug, typed) : `Type, for example: --series ${proposeSlug(name)}`,
    );
  }
  if (series !== undefined && !isSlug(series))
    throw new UsageError(
      `${quoteText(series)} cannot be the name of a series: small letters a to z, digits and single hyphens only, 100 at most.`,
      `Type, for example: --series ${proposeSlug(series) ?? "six-flags"}`,
    );
  const isSplit = given.switches.has("yaml");
  return {
    slug,
    title: title === undefined ? titleOf(slug) : checkWords("title", title),
    ...(flag === undefined ? {} : { flag: checkWords("flag", flag) }),
    original,
    ...(series === undefined ? {} : { series }),
    content: given.values["content"] ?? content,
    isSplit,
    given,
    file: isSplit ? "study.yaml" : "study.md",
  };
}

/** Looks at the content folder. Throws UsageError where the study is there already, under whatever case of its letters. */
export async function surveyPlace(request: Request): Promise<Ground> {
  const { slug, content, original, given } = request;
  const top = await list(content);
  if ((top.get("studies") ?? "folder") !== "folder")
    throw new UsageError(
      `${quoteText(join(content, "studies"))} is no folder of its own, and nothing is written through links.`,
      "Put a folder in its place.",
    );
  const studies = await list(join(content, "studies"));
  const taken = [...studies.keys()].find((name) => foldName(name) === foldName(slug));
  if (taken !== undefined) {
    const reason =
      taken === slug
        ? `There is a study ${quoteText(slug)} already, and nothing is overwritten.`
        : `There is ${quoteText(taken)} already, which is the same name on many computers.`;
    throw new UsageError(reason, suggest(slug, { ...given, original, taken: [...studies.keys()] }));
  }
  const series = await lookAtSeries(content, request.series, slug);
  return {
    isNew: !top.has("gallery.yaml"),
    hasSchemas: top.has(schemasFolder),
    ...(series === undefined ? {} : { series }),
    schema: `../../${schemasFolder}/front-matter.schema.json`,
  };
}

/** Returns the files to make: the study, and what the gallery does not have yet. The drawing is copied byte for byte. */
export async function listPieces(
  { slug, isSplit, series, content, given }: Request,
  { isNew, hasSchemas, series: there }: Ground,
  { frontMatter, prose, schema }: StarterText,
  drawing: Uint8Array,
  palette: ReadonlyMap<string, string>,
): Promise<readonly Piece[]> {
  const text: readonly (readonly [string, string])[] = isSplit
    ? [
        ["study.yaml", frontMatter],
        ["prose.md", prose],
      ]
    : [["study.md", `---\n${frontMatter}---\n${prose}`]];
  const study = new Map<string, string | Uint8Array>([
    ...text,
    ["original.svg", drawing],
    [studySchemaFile, schema],
  ]);
  return [
    ...(hasSchemas ? [] : [{ path: schemasFolder, content: listSchemas(palette), isShared: true }]),
    ...(isNew
      ? [
          {
            path: "gallery.yaml",
            content: writeGalleryFile(`${schemasFolder}/gallery.schema.json`),
            isShared: true,
          },
          ...listFirstFiles(content),
        ]
      : []),
    ...(await listWorkflows(content, given.values["host"])),
    ...(series === undefined || there === "left"
      ? []
      : [
          there === undefined
            ? {
                path: join("series", `${series}.md`),
                content: writeSeries(titleOf(series), slug),
                isShared: true,
              }
            : { path: join("series", `${series}.md`), content: there.text, instead: there.was },
        ]),
    { path: join("studies", slug), content: study },
  ];
}

async function list(folder: string): Promise<ReadonlyMap<string, Entry["kind"]>> {
  const entries = await readFolder(folder);
  if (!("kind" in entries)) return new Map(entries.map(({ name, kind }) => [name, kind]));
  if (entries.kind === "missing") return new Map();
  if (entries.kind === "other")
    throw new UsageError(
      `${quoteText(folder)} is a file; the gallery is a folder.`,
      "Name a folder with --content.",
    );
  throw new UsageError(
    `${quoteText(folder)} could not be read: ${nameFailure(entries)}.`,
    "Check that you may read it.",
  );
}

/** Returns the names in the folder of the studies of what was typed; none where there is none to be read. */
export async function listTaken({ values }: Given, content: string): Promise<readonly string[]> {
  const entries = await readFolder(join(values["content"] ?? content, "studies"));
  return "kind" in entries ? [] : entries.map(({ name }) => name);
}

/** `slug`, or where there is one of that name the first with a number behind it. */
function findFree(slug: string, taken: readonly string[]): string {
  const folded = new Set(taken.map(foldName));
  let free = slug;
  for (let number = 2; folded.has(foldName(free)); number += 1) free = `${slug}-${number}`;
  return free;
}

function askForOriginal(
  slug: string | undefined,
  given: Given & { readonly taken: readonly string[] },
): UsageError {
  const isDrawing = slug !== undefined && /\.svg$/i.test(slug);
  return new UsageError(
    "begin needs a drawing: --original and the name of an SVG file.",
    isDrawing
      ? suggest(nameOf(slug), { ...given, original: slug })
      : suggest(slug ?? "ferry-wheel", { ...given, original: "FILE.svg" }),
  );
}

/** Says what to type: the slug nearest to `name` that is free, and all else as it was typed. */
function suggest(
  name: string,
  {
    original,
    values,
    switches,
    taken,
  }: Given & { readonly original: string; readonly taken: readonly string[] },
): string {
  const rest = ["title", "flag", "series", "content", "host"].flatMap((option) => {
    const value = values[option];
    return value === undefined ? [] : [`--${option} ${quoteWord(value)}`];
  });
  const words = [
    findFree(proposeSlug(name) ?? "my-flag", taken),
    `--original ${quoteWord(original)}`,
    ...rest,
  ];
  return `Type: counterchange begin ${words.join(" ")}${switches.has("yaml") ? " --yaml" : ""}`;
}

/** The name of a file without its folders and its ending. */
function nameOf(path: string): string {
  return (path.split(/[/\\]/).at(-1) ?? "").replace(/\.[a-z0-9]{1,4}$/i, "");
}

function titleOf(slug: string): string {
  const words = slug.replaceAll("-", " ");
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** What the study file would warn about is refused here. */
function checkWords(option: "title" | "flag", given: string): string {
  const plain = given.trim();
  const most = longest[option];
  const hint = `Type, for example: --${option} "${samples[option]}"`;
  if (plain === "") throw new UsageError(`--${option} is empty.`, hint);
  if (plain.length > most)
    throw new UsageError(`--${option} has ${plain.length} characters; it may have ${most}.`, hint);
  if (/\p{Cc}|\p{Surrogate}/u.test(plain) || isBlank(plain) || findInvisible(plain) !== undefined)
    throw new UsageError(`--${option} holds a line end, or a character that is not to be seen.`, hint);
  return plain.normalize("NFC");
}
