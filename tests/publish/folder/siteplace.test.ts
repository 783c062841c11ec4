import { expect, test } from "vitest";
import { findPlace, nameIn } from "../../../src/publish/folder/siteplace.ts";

test("the hidden folder lies beside the target", () => {
  const secret = new Uint8Array(32);
  const place = findPlace("/a/b/", secret);
  expect(place).toEqual({ target: "/a/b", parent: "/a", workshop: "/a/.counterchange-b", secret });
  expect(nameIn(place, "fresh")).toMatch(/^\/a\/\.counterchange-b\/fresh-[0-9a-f]{12}$/);
  expect(nameIn(place, "fresh")).not.toBe(nameIn(place, "fresh"));
});
