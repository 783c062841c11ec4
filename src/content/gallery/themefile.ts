// Floor 5. theme.yaml → how the pages of a gallery look, within limits.
import type { Outcome } from "../../problem/problem.ts";
import { readOptional } from "../text/textsource.ts";
import { type Finding, placeFindings } from "../yaml/finding.ts";
import { parseYaml } from "../yaml/readyaml.ts";
import { describeIssues } from "../yaml/schemaissue.ts";
import { type Theme, themeGuide, themeSchema } from "./themekey.ts";

const themeFile = "theme.yaml";

/**
 * Reads theme.yaml of the content folder `root`, shown as `shown`; none where there is no such file. A value that is wrong is
 * left out alone.
 *
 * Problems: those of `readOptional` and `parseYaml`, `study/unknown-key`, `study/wrong-type`, `study/no-value`,
 * `study/unknown-word`, `study/out-of-range`.
 */
export async function loadTheme(root: string, shown: string): Promise<Outcome<Theme>> {
  const { value: source, problems } = await readOptional(root, themeFile, shown);
  if (source === undefined) return { value: undefined, problems };
  const yaml = parseYaml(source, source.text, themeGuide.examples["measure"]);
  if (yaml.value === undefined) return { value: undefined, problems: yaml.problems };
  const { value: raw, unread } = yaml.value;
  const checked = themeSchema.safeParse(raw);
  const findings = checked.success
    ? []
    : describeIssues(checked.error.issues, yaml.value, themeGuide).map(explainMat);
  const bad = new Set([...findings.map(({ path }) => path), ...unread].map((path) => path.split(".")[0]));
  return {
    value: themeSchema.parse(Object.fromEntries(Object.entries(raw).filter(([key]) => !bad.has(key)))),
    problems: [...yaml.problems, ...placeFindings(source, yaml.value, source.lines.length, findings)],
  };
}

/** Why a limit is none of taste. */
function explainMat(finding: Finding): Finding {
  if (finding.path !== "mat" || finding.rule !== "study/out-of-range") return finding;
  const why = "On a lighter or darker ground the same colours look otherwise, and the page would swallow it.";
  return { ...finding, reason: `${finding.reason} ${why}` };
}
