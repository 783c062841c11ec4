import { expect, test } from "vitest";
import type { JobKind } from "../../../src/analysis/jobs/job.ts";
import { nameAnswer } from "../../../src/analysis/jobs/nameanswer.ts";
import { defaultCloth } from "../../../src/colour/cloth.ts";
import { drawing } from "../../content/folder.ts";
import { here } from "../here.ts";

const options = { cloth: defaultCloth, distance: 40, palette: new Map<string, string>() };
const bytes = new TextEncoder().encode(drawing.replace("<circle", "<text>a</text><circle"));

/** Every text under a key `file`, at any depth. */
function listFiles(value: unknown): readonly unknown[] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => (key === "file" ? [inner] : listFiles(inner)));
}

test.each<[JobKind, number]>([
  ["measure", 1],
  ["options", 1],
  ["survey", 1],
  ["flag", 2],
  ["compare", 2],
  ["sift", 0],
  ["logo", 0],
  ["grid", 0],
])(
  "the answer of %s has the drawing's name wherever one stands, %i times, and in its problems",
  async (kind, count) => {
    const change = { replace: "#7a1020", with: "#f4c430" };
    const input = { bytes, options, change, cloth: defaultCloth };
    const { value, problems } = await here.run(kind, "flags/a.svg", input as never);
    expect(value).toBeDefined();
    expect(listFiles(value)).toEqual(Array.from({ length: count }, () => "flags/a.svg"));
    expect(problems).toMatchObject([{ rule: "svg/text", file: "flags/a.svg" }]);
  },
);

test("where a drawing alone is asked about, a problem has no path into a study", () => {
  const problem = { rule: "study/colour-absent", severity: "error", file: "", reason: "x" } as const;
  const { problems } = nameAnswer("compare", "a.svg", {
    value: undefined,
    problems: [{ ...problem, at: "change.with" }],
  });
  expect(problems).toEqual([{ ...problem, file: "a.svg" }]);
});
