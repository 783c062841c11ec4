import { expect, test } from "vitest";
import { parse } from "yaml";
import { galleryGuide, gallerySchema } from "../../../src/content/gallery/gallerykey.ts";

test("every key has an example, and every example is a value of its key", () => {
  const examples = Object.entries(galleryGuide.examples);
  expect(examples.map(([path]) => path).filter((path) => !path.includes("."))).toEqual(
    Object.keys(gallerySchema.shape),
  );
  for (const [path, example] of examples) {
    const key = path.split(".").at(-1) ?? "";
    expect(Object.keys(parse(example))).toEqual([key]);
    if (path === key) expect(gallerySchema.safeParse(parse(example)).error).toBeUndefined();
  }
});
