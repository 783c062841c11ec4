import { posix, win32 } from "node:path";
import { describe, expect, test } from "vitest";
import { findWay, isInside, withSlashes } from "../../../src/content/disk/pathname.ts";

describe("on Windows", () => {
  test.each([
    ["studies\\ferry\\study.md", "studies/ferry/study.md"],
    ["studies/ferry\\study.md", "studies/ferry/study.md"],
    ["C:\\flags\\a.svg", "C:/flags/a.svg"],
    ["\\\\server\\share\\flags", "//server/share/flags"],
  ])("%s is told as %s", (path, told) => {
    expect(withSlashes(path, win32)).toBe(told);
  });

  // A drive has a letter in any case, and so have names; another drive and another share are elsewhere.
  test.each([
    ["C:\\flags\\content\\studies\\a", "C:\\flags\\content", "studies/a"],
    ["c:/Flags/content/studies/a", "C:\\flags\\Content", "studies/a"],
    ["C:\\flags", "C:\\flags\\", ""],
    ["C:\\flags-old\\a", "C:\\flags", undefined],
    ["C:\\", "C:\\flags", undefined],
    ["D:\\flags\\a", "C:\\flags", undefined],
    ["C:\\flags\\a", "C:\\", "flags/a"],
    ["C:\\flags\\..a\\b", "C:\\flags", "..a/b"],
    ["\\\\server\\share\\flags\\a.svg", "\\\\server\\share", "flags/a.svg"],
    ["\\\\server\\other\\a.svg", "\\\\server\\share", undefined],
    ["flags\\a.svg", "flags", "a.svg"],
  ])("%s, seen from %s", (inner, outer, way) => {
    expect([findWay(inner, outer, win32), isInside(inner, outer, win32)]).toEqual([way, way !== undefined]);
  });
});

describe("elsewhere", () => {
  test("a backslash is a letter of a name", () => {
    expect(withSlashes("a\\b/c.svg", posix)).toBe("a\\b/c.svg");
    expect(findWay("/flags/a\\b/c.svg", "/flags", posix)).toBe("a\\b/c.svg");
  });

  test.each([
    ["/flags/content/a", "/flags/content", "a"],
    ["/flags/content", "/flags/content/", ""],
    ["/flags/contents/a", "/flags/content", undefined],
    ["/flags/Content/a", "/flags/content", undefined],
    ["/flags", "/flags/content", undefined],
    ["/flags/..a/b", "/flags", "..a/b"],
    ["/a", "/", "a"],
  ])("%s, seen from %s", (inner, outer, way) => {
    expect([findWay(inner, outer, posix), isInside(inner, outer, posix)]).toEqual([way, way !== undefined]);
  });
});
