import { expect, test } from "vitest";
import { fileOf, once } from "../../../src/publish/folder/sitefile.ts";

test("a file is made when it is asked for, and its path has no slash before it", async () => {
  let made = 0;
  const file = fileOf("/studies/a/original.svg", () => {
    made += 1;
    return "<svg/>";
  });
  expect([file.path, made]).toEqual(["studies/a/original.svg", 0]);
  expect(await file.make()).toBe("<svg/>");
  expect(made).toBe(1);
});

test("what files share is made once, by whoever asks first", async () => {
  let made = 0;
  const share = once(async () => {
    made += 1;
    return made;
  });
  expect(await Promise.all([share(), share()])).toEqual([1, 1]);
});

test("a file whose making throws rejects", async () => {
  const file = fileOf("a", () => {
    throw new Error("no such part");
  });
  await expect(file.make()).rejects.toThrow("no such part");
});
