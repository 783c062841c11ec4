// Floor 11, for the command begin. What a new gallery gets beside its first study: a text for its authors, what git leaves out,
// and the workflows of a host.
import { join, relative } from "node:path";
import { readOwn } from "../../content/disk/packagefile.ts";
import { findWay } from "../../content/disk/pathname.ts";
import { quoteText } from "../../problem/quote.ts";
import { UsageError } from "../command.ts";
import type { Piece } from "./layout.ts";

/** Where a host reads its workflows from, and of which of ours each file is made. */
const hosts: Readonly<
  Record<string, readonly { readonly path: string; readonly parts: readonly string[] }[]>
> = {
  github: [
    { path: ".github/workflows/review.yml", parts: ["github/review.yml"] },
    { path: ".github/workflows/publish.yml", parts: ["github/publish.yml"] },
  ],
  gitlab: [{ path: ".gitlab-ci.yml", parts: ["gitlab/review.yml", "gitlab/publish.yml"] }],
};

/** The hosts whose workflows are written. */
export const hostNames: readonly string[] = Object.keys(hosts);

const folder = join(import.meta.dirname, "host");

/** Returns the files of a new gallery in `content`, with paths from there; what is there already stays. */
export function listFirstFiles(content: string): readonly Piece[] {
  return [shared("README.md", readme), shared(join(findTop(content) ?? "", ".gitignore"), ignored)];
}

/**
 * Returns the workflows of `host`, one of {@link hostNames}, for a gallery in `content`; none where no host is named. Throws
 * UsageError for another, and where the host would not find the gallery.
 */
export async function listWorkflows(content: string, host: string | undefined): Promise<readonly Piece[]> {
  if (host === undefined) return [];
  const files = hosts[host];
  if (files === undefined)
    throw new UsageError(
      `--host is ${quoteText(host)}; it can be ${hostNames.join(" or ")}.`,
      `Type: --host ${hostNames[0]}`,
    );
  const top = findTop(content);
  if (top !== "" && top !== "..")
    throw new UsageError(
      "The workflows of a host are for a gallery in the current folder, or in a folder of it.",
      "Call begin in the folder that goes to the host.",
    );
  return Promise.all(
    files.map(async ({ path, parts }) => {
      const texts = await Promise.all(parts.map(async (part) => String(await readOwn(join(folder, part)))));
      // They have the gallery in content/.
      const place = top === "" ? "" : `/${findWay(content, "")}`;
      return shared(join(top, path), texts.join("\n").replaceAll("/content", place));
    }),
  );
}

/** The way from `content` to the folder that the command is called in, where git and hosts look; undefined where it is not in it. */
function findTop(content: string): string | undefined {
  const way = relative(content, "");
  return /^(?:\.\.(?:[\\/]\.\.)*)?$/.test(way) ? way : undefined;
}

function shared(path: string, content: string): Piece {
  return { path, content, isShared: true };
}

const ignored = `node_modules/
published/
.cache/
.counterchange-*/
`;

const readme = `# A gallery of flag redesign studies

Each study is a folder in \`studies/\`: an original drawing (SVG) and a text with one colour change. The gallery recolours it,
measures every edge where two colours meet, and shows the flag before and after. It is published with Counterchange.

## Propose a study

    npx counterchange begin a-short-name --original drawing.svg --title "What it is about"

Write your argument in \`studies/a-short-name/study.md\`: what is hard to see, what the change makes better, and what it costs.

    npx counterchange preview     # shows the gallery in a browser while you write
    npx counterchange check       # every problem, with what to type instead

Send the folder when \`check\` finds no error. Name who drew the flag, and under which licence, under \`credit:\`.

A redesign is an unofficial proposal. Laws on the use of flags differ: the local ones go first.

## Keep the gallery

    npx counterchange publish     # the site, in published/

Keep \`addresses.txt\` with the gallery once it is there: it lists every address that was published, so that each goes on
answering. Settings are in \`gallery.yaml\`; \`npx counterchange --help\` lists all commands. Workflows that check contributions on
a host (\`begin --host\`) take the program from \`package.json\` and \`package-lock.json\`: keep both here.
`;
