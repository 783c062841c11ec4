// Test support. An empty folder for one test, removed afterwards.
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { onTestFinished } from "vitest";

export async function makeRoom(): Promise<string> {
  const room = await mkdtemp(path.join(tmpdir(), "counterchange-room-"));
  onTestFinished(() => rm(room, { recursive: true, force: true }));
  return room;
}
