// Content folders on disk for the tests of loading, made afresh and removed afterwards.
import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { onTestFinished } from "vitest";
import { writeStudy } from "../analysis/fixture.ts";

export const drawing =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><path fill="#7a1020" d="M0 0h3v2H0z"/><circle id="wheel" cx="1.5" cy="1" r=".5" fill="#ffffff"/></svg>';

export const settings = "title: Flags of the Sound\naddress: https://flags.example/\n";

/** A right gallery of one study. */
export const harbour: Readonly<Record<string, string>> = {
  "gallery.yaml": settings,
  "studies/ferry/study.md": writeStudy(),
  "studies/ferry/original.svg": drawing,
};

/** Writes files (path → text or bytes) into a new folder, which is removed after the test. Returns its path. */
export async function makeFolder(files: Readonly<Record<string, string | Uint8Array>>): Promise<string> {
  const root = await mkdtemp(join(tmpdir(), "counterchange-test-"));
  onTestFinished(() => rm(root, { recursive: true, force: true }));
  for (const [path, content] of Object.entries(files)) {
    await mkdir(dirname(join(root, path)), { recursive: true });
    await writeFile(join(root, path), content);
  }
  return root;
}
