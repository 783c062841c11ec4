// What the script for slices asks of the shell and of programs that may not be there.
import { spawn, spawnSync } from "node:child_process";

/** Asks programs for their versions. `asked`: the word that each is asked by. */
export function findVersions(asked: Readonly<Record<string, string>>): {
  readonly found: readonly string[];
  readonly missing: readonly string[];
} {
  const answers = Object.entries(asked).map(([program, word]) => {
    // Clients of Slurm say nothing where no cluster is configured.
    const { stdout, error } = spawnSync(program, [word], { encoding: "utf8" });
    return { program, version: error === undefined ? (stdout.split("\n")[0] ?? "") : undefined };
  });
  return {
    found: [...new Set(answers.flatMap(({ version }) => version || []))],
    missing: answers.flatMap(({ program, version }) => (version === undefined ? [program] : [])),
  };
}

/** Runs lines of a shell in `folder`, and returns what they printed. Throws, with all that was said, where one fails. */
export function runLines(
  folder: string,
  lines: string,
  environment: Readonly<Record<string, string>> = {},
): Promise<string> {
  return new Promise((resolve, reject) => {
    const env = { ...process.env, ...environment };
    const child = spawn("sh", ["-e", "-c", lines], { cwd: folder, env, stdio: ["ignore", "pipe", "pipe"] });
    const said = { data: "", all: "" };
    child.stdout.on("data", (text) => {
      said.data += text;
      said.all += text;
    });
    child.stderr.on("data", (text) => {
      said.all += text;
    });
    child.once("error", reject);
    child.once("close", (code) =>
      code === 0
        ? resolve(said.data.trimEnd())
        : reject(new Error(`${lines}\nended with ${code}\n${said.all}`)),
    );
  });
}
