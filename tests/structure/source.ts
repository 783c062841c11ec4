// The source of the project as text: its files, its code without comments, and what every file imports.
import { readdirSync, readFileSync } from "node:fs";
import { join, posix } from "node:path";

export interface SourceFile {
  /** From the top of the project, with slashes: `src/svg/xml/readxml.ts`. */
  readonly path: string;
  readonly text: string;
}

/** One import. `line` counts from 1; `target` is a path for a relative import, else the name of the package. */
export interface Import {
  readonly from: string;
  readonly line: number;
  readonly target: string;
  readonly isRelative: boolean;
  readonly isType: boolean;
}

const top = join(import.meta.dirname, "../..");

/** Every file below `folders` with one of `endings`, in the order of its path. */
export function readSources(
  folders: readonly string[],
  endings: readonly string[] = [".ts", ".tsx", ".mjs", ".js"],
): readonly SourceFile[] {
  return folders
    .flatMap((folder) =>
      readdirSync(join(top, folder), { recursive: true, encoding: "utf8" }).map((name) =>
        posix.join(folder, name.replaceAll("\\", "/")),
      ),
    )
    .filter((path) => endings.some((ending) => path.endsWith(ending)))
    .sort()
    .map((path) => ({ path, text: readFileSync(join(top, path), "utf8") }));
}

export function readTop(name: string): SourceFile {
  return { path: name, text: readFileSync(join(top, name), "utf8") };
}

/**
 * The code with the same lines, in which comments are blank; with `strings` false, what stands inside strings and
 * regular expressions is blank too.
 */
export function blankOut(text: string, strings: boolean): string {
  const blank = (part: string): string => part.replace(/[^\n]/g, " ");
  // A slash begins a regular expression where a value may begin.
  const token =
    /\/\/[^\n]*|\/\*[\s\S]*?\*\/|"(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\[\s\S])*`|(?<=(?:[(,=:[!&|?{};+]|return)\s*)\/(?![/*])(?:[^/\\[\n]|\\.|\[(?:[^\]\\\n]|\\.)*\])+\//g;
  return text.replace(token, (part) => {
    if (part.startsWith("//") || part.startsWith("/*")) return blank(part);
    return strings ? part : blank(part);
  });
}

const statement =
  /(?:^|[\n;])[ \t]*(?:import|export)\s+(type\s+)?(?:[\w$*{][^"'`;]*?\sfrom\s*)?["']([^"'\n]+)["']|\bimport\(\s*["']([^"'\n]+)["']\s*\)/g;

/** Every import of a file: static, re-exported, for effect, or at run time. */
export function listImports({ path, text }: SourceFile): readonly Import[] {
  const code = blankOut(text, true);
  return [...code.matchAll(statement)].map((match) => {
    const name = match[2] ?? match[3] ?? "";
    const isRelative = name.startsWith(".");
    const behind = code.slice(0, match.index + match[0].length).split("\n").length;
    return {
      from: path,
      line: behind,
      target: isRelative ? posix.join(posix.dirname(path), name) : packageOf(name),
      isRelative,
      isType: match[1] !== undefined,
    };
  });
}

function packageOf(name: string): string {
  if (name.startsWith("node:")) return name.split("/")[0] ?? name;
  const parts = name.split("/");
  return name.startsWith("@") ? parts.slice(0, 2).join("/") : (parts[0] ?? name);
}
