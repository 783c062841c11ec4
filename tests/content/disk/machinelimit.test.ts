import { open } from "node:fs/promises";
import { expect, test } from "vitest";
import {
  describeRefusal,
  findRefusal,
  isScarce,
  refusalProblem,
} from "../../../src/content/disk/machinelimit.ts";
import { systemError } from "../../faults/disk.ts";

test("an error of the system is told from one of a program", async () => {
  const error: unknown = await open("/nowhere/file").catch((found: unknown) => found);
  expect(findRefusal(error)).toEqual({ code: "ENOENT", path: "/nowhere/file" });
  expect(findRefusal(new RangeError("ENOSPC"))).toBeUndefined();
  expect(findRefusal(Object.assign(new Error("x"), { code: "ERR_INVALID_ARG_TYPE" }))).toBeUndefined();
  expect(findRefusal("ENOSPC")).toBeUndefined();
});

test("what was refused, where, and what to do", () => {
  expect(describeRefusal({ code: "EMFILE", path: "a.svg" })).toEqual({
    reason: "The computer could not do the work: too many files are open (EMFILE at “a.svg”).",
    hint: "Raise the limit, as with: ulimit -n 4096",
  });
  expect(describeRefusal({ code: "EUCLEAN" }).reason).toContain("the system refused it (EUCLEAN)");
  const refusal = findRefusal(systemError("ENOSPC", "write", "a.svg")) ?? { code: "" };
  expect(refusalProblem("a.svg", refusal)).toMatchObject({ rule: "study/machine", severity: "error" });
});

test("what files want for together is not a fault of one", () => {
  expect(["EMFILE", "ENFILE", "EACCES", "EIO"].map(isScarce)).toEqual([true, true, false, false]);
});
