import { expect, test } from "vitest";
import { parse } from "yaml";
import { seriesGuide, seriesSchema } from "../../../src/content/series/serieskey.ts";

test("every example is a line that would be right", () => {
  const right = { title: "A", studies: ["ferry"] };
  for (const [path, line] of Object.entries(seriesGuide.examples)) {
    const read: unknown = parse(line);
    const isInFlag = path.startsWith("studies.*.");
    const studies = path === "studies.*" ? read : [{ flag: "/flags/a.svg", ...(read as object) }];
    const way = path.startsWith("show.") ? path.split(".").slice(0, -1) : [];
    const nested = way.reduceRight<unknown>((inner, key) => ({ [key]: inner }), read);
    const whole =
      isInFlag || path === "studies.*" ? { ...right, studies } : { ...right, ...(nested as object) };
    expect(seriesSchema.safeParse(whole).success, path).toBe(true);
  }
});

test("every key has an example", () => {
  const known = Object.keys(seriesGuide.examples).filter((path) => !path.includes("."));
  expect(Object.keys(seriesSchema.shape).sort()).toEqual(known.sort());
});
