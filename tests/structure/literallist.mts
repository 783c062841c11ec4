// Prints the words that stand in code instead of the catalogue: `node --import tsx tests/structure/literallist.mts [FOLDER…]`.
import { listLiterals } from "./literal.ts";
import { readSources } from "./source.ts";

const folders = process.argv.slice(2);
for (const file of readSources(folders.length > 0 ? folders : ["src/views", "src/words", "templates"], [
  ".ts",
  ".tsx",
]))
  if (!/^src\/words\/([a-z]{2}\/|catalogue)/.test(file.path))
    for (const { path, line, text } of listLiterals(file)) process.stdout.write(`${path}:${line}: ${text}\n`);
