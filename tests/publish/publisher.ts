// Test support. Stands for makefiles.ts in a child process, and does what a bad renderer would for a drawing that asks for it.

import type { Jobs } from "../../src/analysis/jobs/job.ts";
import { makeFiles as make } from "../../src/publish/pictures/makefiles.ts";

/** What a drawing asks for by an id that it has. */
export const misdeeds = ["throws", "hangs", "eats", "ends", "refused"] as const;

export async function makeFiles(input: Jobs["publish"]["input"]): ReturnType<typeof make> {
  const text = Buffer.from(input.bytes).toString();
  const misdeed = misdeeds.find((one) => text.includes(`id="${one}"`));
  const hoard: Buffer[] = [];
  if (misdeed === "throws") throw new Error("a renderer that throws");
  if (misdeed === "ends") process.exit(3);
  // As a renderer that is stuck at work: nothing else is heard meanwhile.
  while (misdeed === "hangs");
  while (misdeed === "eats") {
    hoard.push(Buffer.alloc(2 ** 24, hoard.length));
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
  if (misdeed === "refused") return make({ ...input, recipes: [{ kind: "drawing", drawing: "<svg" }] });
  return make(input);
}
