// The caps leave every drawing of two open collections room: at least twice what the largest of them needs.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { limit } from "../../../src/svg/gate/drawinglimit.ts";

const folders = ["flag-icons/flags/4x3", "flag-icons/flags/1x1", "svg-country-flags/svg"];

test("twice the largest of 798 real drawings", () => {
  const largest = { files: 0, bytes: 0, elements: 0, depth: 0 };
  for (const folder of folders) {
    const path = join(import.meta.dirname, "../../../node_modules", folder);
    for (const name of readdirSync(path).filter((file) => file.endsWith(".svg"))) {
      const text = readFileSync(join(path, name), "utf8");
      largest.files += 1;
      largest.bytes = Math.max(largest.bytes, Buffer.byteLength(text));
      largest.elements = Math.max(largest.elements, text.match(/<[A-Za-z]/g)?.length ?? 0);
      let depth = 0;
      // Good enough for files that are known to be well-formed and have no markup in comments.
      for (const [tag] of text.matchAll(/<\/?[A-Za-z][^>]*>/g)) {
        if (tag.startsWith("</")) depth -= 1;
        else if (!tag.endsWith("/>")) depth += 1;
        largest.depth = Math.max(largest.depth, depth);
      }
    }
  }
  expect(largest.files).toBeGreaterThan(700);
  expect(2 * largest.bytes).toBeLessThanOrEqual(limit.fileBytes);
  expect(2 * largest.elements).toBeLessThanOrEqual(limit.elements);
  expect(2 * largest.depth).toBeLessThanOrEqual(limit.depth);
});
