import { readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { expect, test, vi } from "vitest";
import { run, start } from "./run.ts";

vi.setConfig({ testTimeout: 60_000 });

test("the command starts from any working folder", async () => {
  expect((await run(tmpdir(), "--help")).status).toBe(0);
});

test("the first line lets a shell start it", () => {
  expect(readFileSync(start, "utf8").split("\n")[0]).toBe("#!/usr/bin/env node");
});
