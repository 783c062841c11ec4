import { expect, test } from "vitest";
import { explainAll, explainFailure, OutputError } from "../../../src/publish/folder/diskfailure.ts";
import { disk } from "../../../src/publish/folder/writedisk.ts";
import { disks, failingDisk, systemError } from "../../faults/disk.ts";

test.each([
  ["ENOSPC", "the disk is full", "Free some space"],
  ["EACCES", "you have no permission to write there", "Give yourself permission"],
  ["EROFS", "the disk can be read and not written", "another disk"],
  ["EIO", "the disk reports a fault", "Look after the disk"],
  ["EMFILE", "too many files are open", "ulimit"],
  ["EBUSY", "a disk is mounted on it", "inside it"],
  ["E2BIG", "the system says E2BIG", "Mend that"],
])("%s becomes what, where and what to do", (code, why, hint) => {
  const error = explainFailure(systemError(code, "open", "/x/y"), "my-site", "/x/y");
  if (!(error instanceof OutputError)) throw new Error("not explained");
  expect(error.message).toContain("The site cannot be written to my-site: ");
  expect(error.message).toContain(why);
  expect(error.message).toContain(`(${code} at /x/y). What is published is as it was.`);
  expect(error.hint).toContain(hint);
  expect(error.code).toBe(code);
});

test("what is no error of the system stays what it is", () => {
  const own = new Error("ours");
  expect(explainFailure(own, "out", "/x")).toBe(own);
  expect(explainFailure("text", "out", "/x")).toBe("text");
  const explained = new OutputError("once", "hint", { code: "EIO" });
  expect(explainFailure(explained, "out", "/x")).toBe(explained);
});

test("every call of a disk is explained, with the path that was to be written", async () => {
  const broken = explainAll(failingDisk(1, "EIO", { forGood: true }).disk, "out");
  const calls = {
    makeFolder: broken.makeFolder("/a"),
    write: broken.write("/a", "x"),
    read: broken.read("/a"),
    flush: broken.flush("/a"),
    rename: broken.rename("/b", "/a"),
    exchange: broken.exchange("/b", "/a"),
    link: broken.link("b", "/a"),
    remove: broken.remove("/a"),
  };
  expect(Object.keys(calls).sort()).toEqual(Object.keys(disk).sort());
  for (const call of Object.values(calls)) await expect(call).rejects.toThrow(/\(EIO at \/a\)/);
  await expect(explainAll(disks.move, "out").exchange("/a", "/b")).rejects.toMatchObject({ code: "ENOTSUP" });
});
