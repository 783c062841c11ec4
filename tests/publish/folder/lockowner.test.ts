import { spawn } from "node:child_process";
import { expect, test } from "vitest";
import { formatHolder, lookAtHolder, nameSelf, parseHolder } from "../../../src/publish/folder/lockowner.ts";

test("a name holds everything, and can be read back", async () => {
  const self = await nameSelf();
  expect(self.pid).toBe(process.pid);
  const name = formatHolder(self);
  expect(name).toMatch(/^lock\.\d+\.\d+\.[0-9a-f]{8}\.[\w-]+\.[0-9a-f]{12}$/);
  expect(parseHolder(name)).toEqual(self);
  expect((await nameSelf()).id).not.toBe(self.id);
});

test.each(["lock", "lock.1.2.3", ".gitignore", "previous", "lock.x.0.00000000.host.000000000000"])(
  "%s is no lock",
  (name) => {
    expect(parseHolder(name)).toBeUndefined();
  },
);

test("this process runs; one that has ended is gone", async () => {
  const self = await nameSelf();
  expect(await lookAtHolder(self)).toBe(process.platform === "linux" ? "runs" : "unknown");
  const child = spawn(process.execPath, ["-e", ""]);
  await new Promise((resolve) => child.once("exit", resolve));
  if (child.pid === undefined) throw new Error("no process");
  expect(await lookAtHolder({ ...self, pid: child.pid })).toBe("gone");
});

test.runIf(process.platform === "linux")(
  "the same number in another process is not the same holder",
  async () => {
    const self = await nameSelf();
    expect(await lookAtHolder({ ...self, began: self.began - 1 })).toBe("gone");
  },
);

test("of another machine nothing is known, nor where the system does not say when a process began", async () => {
  const self = await nameSelf();
  expect(await lookAtHolder({ ...self, place: "00000000" })).toBe("unknown");
  expect(await lookAtHolder({ ...self, began: 0 })).toBe("unknown");
});
