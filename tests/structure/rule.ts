// The rules of the house as checks on source text. Each returns one line for each fault, `path:line  what is wrong`.
import { blankOut, type Import, listImports, type SourceFile } from "./source.ts";

/** Floors from the ground up. */
export const floors = [
  "problem",
  "colour",
  "svg",
  "regions",
  "measure",
  "content",
  "analysis",
  "words",
  "views",
  "publish",
  "preview",
  "cli",
];

/** Packages that one place imports: where a path must begin. */
const importers: Readonly<Record<string, readonly string[]>> = {
  culori: ["src/colour/"],
  saxes: ["src/svg/"],
  "css-tree": ["src/svg/"],
  svgson: ["src/svg/"],
  sharp: [
    "src/regions/raster.ts",
    "src/publish/pictures/pixelpicture.ts",
    "src/publish/pictures/eleventy-img.d.ts",
  ],
  "@11ty/eleventy": ["src/publish/", "eleventy.config.ts"],
  "@11ty/eleventy-img": ["src/publish/pictures/pixelpicture.ts"],
  "subset-font": ["src/publish/fonts/subset.ts"],
  // The old name of the same.
  fs: [],
};

/** The modules that read from a disk or ask what is there, and what that is. What authors or strangers wrote: the first two. */
const readers: Readonly<Record<string, string>> = {
  "src/content/disk/readfile.ts":
    "content, what is kept, locks, hidden folders, sites: bounded, and through no link",
  "src/content/disk/pathkind.ts": "what is at a path; opens nothing",
  "src/content/disk/packagefile.ts": "what came with the package",
  "src/analysis/jobs/childusage.ts": "/proc",
  "src/publish/folder/lockowner.ts": "/proc",
  "src/preview/watchfolder.ts": "hears that something changed; reads nothing",
  "src/publish/folder/writedisk.ts": "reads back what it wrote, to compare it",
  "src/cli/start.mjs": "whether the package has sources",
  "src/cli/compile.mjs": "sources of the package, before they run",
};

/** The modules that write, and where. */
const writers: Readonly<Record<string, string>> = {
  "src/content/disk/makefolder.ts": "folders of what is kept, and in the home",
  "src/analysis/store/signature.ts": "the secret in the home",
  "src/analysis/store/resultstore.ts": "what is kept",
  "src/analysis/store/evict.ts": "what is kept",
  "src/publish/folder/stagingfolder.ts": "the hidden folder",
  "src/publish/folder/lock.ts": "the hidden folder",
  "src/publish/eleventyplugin.ts": "beside what another site writes",
  "src/publish/pictures/linkimage.ts": "fonts in a temporary folder of its own",
  "src/cli/begin/layout.ts": "a new study",
  "src/cli/begin/draftfolder.ts": "the folder in which a new study is laid ready",
  "src/cli/begin/galleryschema.ts": "the schemas of a gallery",
  "src/cli/temporary.ts": "a try in the temporary folder",
  "src/cli/writenew.ts": "a file named with --out",
};

/** What a writer may import: none of it gives anything that stands on the disk. */
const writing = /^(?:mkdir|mkdtemp|rm|rmSync|rmdir|rename|writeFile|copyFile|link|symlink|constants)$/;

/** The floor of a path from 0, the next for templates (on the roof), or undefined for what stands outside the house. */
function floorOf(path: string): number | undefined {
  if (path.startsWith("templates/")) return floors.length;
  const at = floors.indexOf(/^(?:dist\/)?src\/([^/]+)\//.exec(path)?.[1] ?? "");
  return at < 0 ? undefined : at;
}

const place = (found: Import): string => `${found.from}:${found.line}`;

/** A file imports its own folder or a lower floor; a template imports templates, and types of any floor; a script for browsers code too. */
export function findUpward(files: readonly SourceFile[]): readonly string[] {
  return files.flatMap(listImports).flatMap((found) => {
    if (!found.isRelative) return [];
    const own = floorOf(found.from);
    const other = floorOf(found.target);
    if (own === undefined || other === undefined)
      return own === undefined ? [] : [`${place(found)}  leaves the house for ${found.target}`];
    if (other > own) return [`${place(found)}  imports upward: ${found.target}`];
    // Scripts run in the page, and are bundled with what they import.
    const isRoof = own === floors.length && !found.from.startsWith("templates/client/");
    if (isRoof && other !== own && !found.isType)
      return [`${place(found)}  a template imports code: ${found.target}`];
    return [];
  });
}

/** One line for each circle of imports, types counted, at the import that closes it. */
export function findCircles(files: readonly SourceFile[]): readonly string[] {
  const imports = new Map(
    files.map((file) => [file.path, listImports(file).filter((found) => found.isRelative)]),
  );
  const done = new Set<string>();
  const circles: string[] = [];
  const visit = (path: string, trail: readonly string[]): void => {
    if (done.has(path)) return;
    for (const found of imports.get(path) ?? []) {
      const at = [...trail, path].indexOf(found.target);
      if (at >= 0)
        circles.push(`${place(found)}  circle: ${[...trail, path, found.target].slice(at).join(" → ")}`);
      else visit(found.target, [...trail, path]);
    }
    done.add(path);
  };
  for (const file of files) visit(file.path, []);
  return circles;
}

/** A library is used elsewhere than in its place. */
export function findStrayImport(files: readonly SourceFile[]): readonly string[] {
  return files.flatMap(listImports).flatMap((found) => {
    const open = found.isRelative ? undefined : importers[found.target];
    return open === undefined || open.some((place) => found.from.startsWith(place))
      ? []
      : [`${place(found)}  ${found.target} is used outside ${open.join(", ")}`];
  });
}

/** The disk is read past the modules that know how, or written where nobody looks for it. */
export function findLooseReading(files: readonly SourceFile[]): readonly string[] {
  return files.flatMap((file) =>
    listImports(file)
      .filter(({ target }) => target === "node:fs")
      .flatMap((found) => {
        if (file.path in readers) return [];
        if (!(file.path in writers))
          return [`${place(found)}  the file system past content/disk/readfile.ts`];
        const line = file.text.split("\n")[found.line - 1] ?? "";
        const names = /\{([^}]*)\} from "node:fs/.exec(line)?.[1]?.split(",") ?? ["everything"];
        const loose = names.map((name) => name.trim()).filter((name) => name !== "" && !writing.test(name));
        return loose.length === 0
          ? []
          : [`${place(found)}  reads past content/disk/readfile.ts: ${loose.join(", ")}`];
      }),
  );
}

/** Those of the two lists above that use the file system no more. */
export function findIdleDoors(files: readonly SourceFile[]): readonly string[] {
  const users = new Set(
    files.flatMap(listImports).flatMap(({ from, target }) => (target === "node:fs" ? [from] : [])),
  );
  return [...Object.keys(readers), ...Object.keys(writers)].filter((path) => !users.has(path));
}

/** Names that say nothing and grow without end. */
export function findVagueNames(files: readonly SourceFile[]): readonly string[] {
  return files
    .filter(({ path }) =>
      /\/(?:utils?|helpers?|commons?|types?|misc|index)(?:\.d)?\.[cm]?[jt]sx?$/.test(path),
    )
    .map(({ path }) => `${path}:1  the name says nothing`);
}

/** `any` where a type stands. */
export function findAny(files: readonly SourceFile[]): readonly string[] {
  const asType = /(?:[:<,|&(=[]|\bas|=>|\bextends|\bkeyof|\breadonly)\s*any\b(?!\s*(?:[:(.]|=>))/;
  return files.flatMap(({ path, text }) =>
    blankOut(text, false)
      .split("\n")
      .flatMap((line, index) => (asType.test(line) ? [`${path}:${index + 1}  any: ${line.trim()}`] : [])),
  );
}

/** Percent that are rounded where they stand: `src/measure/percenttext.ts` alone knows what a rounded one may say. */
export function findLoosePercent(files: readonly SourceFile[]): readonly string[] {
  const loose = /(?:toFixed|[rR]ound\w*|floor|ceil)\([^`]*\)\}\s?%/;
  return files
    .filter(({ path }) => path !== "src/measure/percenttext.ts")
    .flatMap(({ path, text }) =>
      text
        .split("\n")
        .flatMap((line, index) =>
          loose.test(line) ? [`${path}:${index + 1}  percent rounded by hand: ${line.trim()}`] : [],
        ),
    );
}

/** Modules whose code runs, without a test of their own name. */
export function findUntested(files: readonly SourceFile[], tests: ReadonlySet<string>): readonly string[] {
  return files
    .filter(({ path, text }) => path.endsWith(".ts") && !path.endsWith(".d.ts") && hasCode(text))
    .map(({ path }) => path.replace(/^src\//, "tests/").replace(/\.ts$/, ".test.ts"))
    .filter((path) => !tests.has(path));
}

/** Whether anything is left of a file besides types: a declaration that exists when it runs. */
export function hasCode(text: string): boolean {
  return /^(?:export\s+)?(?:default\s+)?(?:async\s+)?(?:const|let|function|class)\b/m.test(
    blankOut(text, false),
  );
}
