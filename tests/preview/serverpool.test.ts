// The child processes of a server, as they are before anything is asked of them.
import { expect, onTestFinished, test, vi } from "vitest";
import { openLine } from "../../src/preview/serverpool.ts";
import { listWorkers } from "../analysis/children.ts";

test("one child starts at once, before any work is there, and is gone when the line is closed", async () => {
  const pool = openLine(undefined);
  onTestFinished(() => pool.close());
  expect(listWorkers()).toHaveLength(1);
  pool.close();
  await vi.waitFor(() => expect(listWorkers()).toEqual([]), { timeout: 10_000 });
});
