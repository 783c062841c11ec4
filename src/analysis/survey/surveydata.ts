// Floor 6. A survey as JSON, for programs: the same from the command and from the site.
import { formatJson } from "../../measure/roundnumber.ts";
import { plainProblem } from "../../problem/problemjson.ts";
import type { Survey } from "./surveyflags.ts";

/** The version of the form, as src/cli/schema/survey.schema.json has it: it changes when a field changes or goes. */
const schemaVersion = 2;

/**
 * Returns a survey as JSON, two spaces a level, broken drawings with their problem as `check --json` prints it. `schema` is
 * the address of its schema, where it is published.
 */
export function formatSurveyData({ flags, failed }: Survey, schema?: string): string {
  const plain = failed.map(({ file, problem }) => ({ file, problem: plainProblem(problem) }));
  const data = { schemaVersion, ...(schema === undefined ? {} : { schema }), flags, failed: plain };
  return formatJson(data);
}
