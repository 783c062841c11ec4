// Test support. What the guide and the README tell to type: their fenced blocks, and the commands in them.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const root = join(import.meta.dirname, "../..");

/** The README and the pages of the guide, by path, with their text. */
export const texts: ReadonlyMap<string, string> = new Map(
  [
    "README.md",
    "content/pages/guide.md",
    ...readdirSync(join(root, "content/pages/guide")).map((name) => `content/pages/guide/${name}`),
  ].map((path) => [path, readFileSync(join(root, path), "utf8")]),
);

/** A fenced block. `info` is what stands behind its fence: a language, and what the block is, or the file it belongs in. */
export interface Block {
  readonly file: string;
  readonly info: string;
  readonly text: string;
}

export const blocks: readonly Block[] = [...texts].flatMap(([file, text]) =>
  [...text.matchAll(/^(`{3,})(.*)\n([\s\S]*?)^\1$/gm)].map(([, , info = "", inner = ""]) => ({
    file,
    info,
    text: inner,
  })),
);

/** The text of the one block with this `info`. Throws where there is none, or more than one. */
export function textOf(info: string): string {
  const [found, ...more] = blocks.filter((block) => block.info === info);
  if (found === undefined || more.length > 0) throw new Error(`not one block: ${info}`);
  return found.text;
}

/** The texts of all blocks with this `info`, in the order of the pages. */
export function textsOf(info: string): readonly string[] {
  return blocks.filter((block) => block.info === info).map(({ text }) => text);
}

/** Every line that calls the program, as the words behind it; what the shell does with its output is left out. */
export function listCalls(text: string): readonly (readonly string[])[] {
  return [...text.matchAll(/(?:npm run -s cli --|npx counterchange) (?!COMMAND)([^\n`]+)/g)].map(
    ([, line = ""]) => {
      const call = line.replace(/\s+(?:#\s|\|\||&&|>).*$/, "");
      return [...call.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain ?? "");
    },
  );
}
