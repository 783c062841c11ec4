// Floor 5. flags/nominations.yaml → flags that readers say need a study, each with who says so and why.
import { z } from "zod";
import { findNearest } from "../../problem/knownword.ts";
import { hasError, type Outcome } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { readFolder } from "../disk/readfile.ts";
import { listNames } from "../folder/absent.ts";
import { nominationFile } from "../folder/flagfiles.ts";
import { checkInvisible } from "../study/invisiblevalue.ts";
import { checkScripts } from "../study/namesense.ts";
import { isDrawingName } from "../study/original.ts";
import { isRaw, isText, listOf } from "../study/studyrule.ts";
import { readOptional } from "../text/textsource.ts";
import { type Finding, type KeyGuide, placeFindings, wrong } from "../yaml/finding.ts";
import { parseYaml } from "../yaml/readyaml.ts";
import { describeIssues } from "../yaml/schemaissue.ts";
import { line } from "../yaml/textvalue.ts";

/** One flag that a reader named. `flag` is its path in the content folder: `flags/a.svg`. */
export interface Nomination {
  readonly flag: string;
  readonly by?: string;
  readonly reason: string;
}

/** The keys of flags/nominations.yaml. */
const nominationSchema = z.strictObject({
  nominations: z
    .array(z.strictObject({ flag: line(200), by: line(100).exactOptional(), reason: line(500) }))
    .max(500),
});

const guide: KeyGuide = {
  whole: nominationFile,
  examples: {
    nominations: 'nominations: [{ flag: /flags/harbour.svg, by: Ines Valcourt, reason: "Dark on dark." }]',
    "nominations.*": '{ flag: /flags/harbour.svg, by: Ines Valcourt, reason: "Dark on dark." }',
    "nominations.*.flag": "flag: /flags/harbour.svg",
    "nominations.*.by": "by: Ines Valcourt",
    "nominations.*.reason": "reason: Dark on dark.",
  },
};

/**
 * Reads the nominations of the content folder `root`, shown as `shown`; none where there is no such file. With a key or a
 * value of another kind none is read; one of an unknown flag, or that stands twice, is left out alone.
 *
 * Problems: those of `readOptional`, `parseYaml`, `checkInvisible` and `checkScripts`, of the schema as in a study;
 * `nomination/unknown-flag`, `nomination/twice`.
 */
export async function loadNominations(root: string, shown: string): Promise<Outcome<readonly Nomination[]>> {
  const { value: source, problems } = await readOptional(root, `flags/${nominationFile}`, shown);
  if (source === undefined) return { value: [], problems };
  const yaml = parseYaml(source, source.text, "nominations:");
  if (yaml.value === undefined) return { value: [], problems: yaml.problems };
  const data = yaml.value;
  const checked = nominationSchema.safeParse(data.value);
  const issues = checked.success ? [] : describeIssues(checked.error.issues, data, guide);
  const drawings = await listDrawings(root);
  const items = listOf(data.value["nominations"]);
  const own = items.map((_, index) => [...checkFlag(items, index, drawings), ...checkTwice(items, index)]);
  const findings = [...issues, ...checkInvisible(data.value), ...checkScripts(data.value), ...own.flat()];
  const placed = [...yaml.problems, ...placeFindings(source, data, source.lines.length, findings)];
  if (!checked.success || hasError(yaml.problems)) return { value: [], problems: placed };
  const good = checked.data.nominations.filter((_, index) => own[index]?.length === 0);
  return { value: good.map((one) => ({ ...one, flag: one.flag.slice(1) })), problems: placed };
}

async function listDrawings(root: string): Promise<readonly string[]> {
  const entries = await readFolder(root, "flags");
  return "kind" in entries ? [] : entries.map(({ name }) => name).filter(isDrawingName);
}

const flagOf = (item: unknown): string => (isRaw(item) && isText(item["flag"]) ? item["flag"] : "");

function checkFlag(items: readonly unknown[], index: number, drawings: readonly string[]): Finding[] {
  const flag = flagOf(items[index]);
  const name = flag.replace(/^\/flags\//, "");
  if (flag === "" || (flag.startsWith("/flags/") && drawings.includes(name))) return [];
  const near = drawings.includes(name) ? name : findNearest(name, drawings);
  const reason = `“flag” is ${quoteText(flag)}, and names no drawing of the folder flags.`;
  const hint =
    near === undefined ? `The drawings there are: ${listNames(drawings)}` : `Type: flag: /flags/${near}`;
  return wrong("nomination/unknown-flag", `nominations.${index}.flag`, { reason, hint });
}

/** Several may name one flag, each once. Who says so may be anything yet: a map makes no text of itself. */
function checkTwice(items: readonly unknown[], index: number): Finding[] {
  const keyOf = (item: unknown): string => JSON.stringify([flagOf(item), isRaw(item) ? item["by"] : ""]);
  const item = items[index];
  if (flagOf(item) === "" || items.map(keyOf).indexOf(keyOf(item)) === index) return [];
  const reason = `${quoteText(flagOf(item))} is named by the same a second time.`;
  return wrong("nomination/twice", `nominations.${index}`, { reason, hint: "Delete one of the two." });
}
