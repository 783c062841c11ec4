// Floor 11. How the command was called, so that what it tells somebody to type works when it is typed.
import path, { type PlatformPath } from "node:path";
import { withSlashes } from "../../content/disk/pathname.ts";

/** What is known of how we were started. `script` is the second word of the process, `folder` the working folder. */
export interface Start {
  readonly script: string;
  readonly folder: string;
  readonly env: Readonly<Record<string, string | undefined>>;
}

/**
 * Returns the words that start the command: `counterchange` where it is installed, `npx counterchange` where it is a part of
 * the folder's own packages, `npm run -s cli --` in a checkout, `node path/start.mjs` else.
 *
 * Source: npm's documentation of scripts, for `npm_command` and `npm_lifecycle_event`; npm 10 says `run-script`, npm 11.19 `run`
 * (seen).
 */
export function nameInvocation({ script, folder, env }: Start, flavour: PlatformPath = path): string {
  // The path decides first: variables of npm are passed on to whatever a script of another package starts.
  if (withSlashes(script, flavour).split("/").includes("node_modules")) return "npx counterchange";
  if (flavour.basename(script) !== "start.mjs") return "counterchange";
  const isScript = /^run(?:-script)?$/.test(env["npm_command"] ?? "");
  if (isScript && env["npm_lifecycle_event"] === "cli") return "npm run -s cli --";
  const near = flavour.relative(folder, script);
  return `node ${quoteWord(near.length < script.length ? near : script, flavour)}`;
}

/**
 * Returns `text` with every command of ours that it tells somebody to type, which stands behind a colon, begun as `start`
 * says, `npx counterchange`.
 */
export function spellCommands(text: string, start = nameOwnInvocation()): string {
  return text.replace(/(?<=: )counterchange (?=[a-z]|--help)/g, () => `${start} `);
}

/** Returns the words that started this process. */
export function nameOwnInvocation(): string {
  return nameInvocation({ script: process.argv[1] ?? "", folder: process.cwd(), env: process.env });
}

/** Returns `word` as a shell takes it for one word; those of Windows both know double quotes, and `\` before one as a part of it. */
export function quoteWord(word: string, flavour: PlatformPath = path): string {
  if (flavour.sep === "\\")
    return /^[\w@+=:,./\\-]+$/.test(word)
      ? word
      : `"${word.replaceAll('"', '""').replace(/(?<!\\)\\+$/, "$&$&")}"`;
  return /^[\w@%+=:,./-]+$/.test(word) ? word : `'${word.replace(/'/g, "'\\''")}'`;
}
