// Floor 5. logo.svg of a content folder → its bytes. What is in them is judged in a child, as of any drawing.
import { compareText, type Outcome, type Problem, report } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { describeDrawingFailure, drawingBytes } from "../disk/filefailure.ts";
import { readFolder, readRegular } from "../disk/readfile.ts";

/** Its name beside gallery.yaml. */
export const logoName = "logo.svg";

/** A logo that was read. `file` is its path as shown in messages. */
export interface LogoFile {
  readonly file: string;
  readonly bytes: Uint8Array;
}

/**
 * Reads logo.svg of the content folder `root`, shown as `shown`; none where there is no such file.
 *
 * Problems: those of `describeDrawingFailure`; the warning `site/logo-name` of a logo under another name.
 */
export async function loadLogo(root: string, shown: string): Promise<Outcome<LogoFile>> {
  const entries = await readFolder(root);
  const names = "kind" in entries ? [] : entries.map(({ name }) => name).sort(compareText);
  if (!names.includes(logoName)) {
    const others = names.filter((name) => /^logo\.[a-z]{3,4}$/i.test(name));
    return { value: undefined, problems: others.map((name) => describeName(`${shown}/${name}`, name)) };
  }
  const file = `${shown}/${logoName}`;
  const read = await readRegular(root, logoName, drawingBytes);
  if ("bytes" in read) return { value: { file, bytes: read.bytes }, problems: [] };
  return { value: undefined, problems: [describeDrawingFailure(file, read, `${root}/${logoName}`)] };
}

function describeName(file: string, name: string): Problem {
  const reason = `${quoteText(name)} is not shown: the logo of a gallery is an SVG file called ${logoName}.`;
  const hint = /\.svg$/i.test(name)
    ? `Rename it to: ${logoName}`
    : `Save the logo as SVG beside gallery.yaml: ${logoName}`;
  return report("site/logo-name", file, { reason, hint }, "warning");
}
