import { expect, test } from "vitest";
import {
  describeDrawingFailure,
  describeFailure,
  describeFolderFailure,
  type FileFailure,
} from "../../../src/content/disk/filefailure.ts";
import { formatProblem } from "../../../src/problem/problemtext.ts";

test.each<[FileFailure, string]>([
  [
    { kind: "missing" },
    `\
a.svg  error  There is no such file.  study/drawing-missing
    Looked for /x/a.svg`,
  ],
  [
    { kind: "too large", size: 600_000 },
    `\
a.svg  error  The drawing has 586 KB; a drawing may have 512 KB.  study/drawing-size
    Export it again with fewer points: a flag rarely needs more than 50 KB.`,
  ],
  [
    { kind: "folder" },
    `\
a.svg  error  This is a folder; a file of that name belongs here.  study/not-a-file
    Rename or remove it, and put the file in its place.`,
  ],
  [
    { kind: "unreadable", code: "EACCES" },
    `\
a.svg  error  The file could not be read: permission denied.  study/unreadable
    Check that you may read it, and that it has not moved.`,
  ],
])("%j", (failure, report) => {
  expect(formatProblem(describeDrawingFailure("a.svg", failure, "/x/a.svg"))).toBe(report);
});

test("what is scarce for all files together is no fault of this one", () => {
  const scarce = { kind: "unreadable", code: "EMFILE" } as const;
  expect(describeFailure("a", scarce).rule).toBe("study/machine");
  expect(describeFolderFailure("a", scarce).rule).toBe("study/machine");
});

test.each([
  ["EIO", "the disk reports an error"],
  ["EPERM", "permission denied"],
  ["ENXIO", "error ENXIO"],
])("%s is said as: %s", (code, words) => {
  expect(describeFailure("a", { kind: "unreadable", code }).reason).toBe(
    `The file could not be read: ${words}.`,
  );
});
