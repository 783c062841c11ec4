import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { expect, test } from "vitest";
import { pack } from "../../../src/analysis/jobs/pack.ts";
import { studyResult } from "../../publish/sample.ts";

test("what is packed says what it said, to whoever reads, copies or writes it down", () => {
  const { drawings } = studyResult;
  // One more than are kept open, read in turn and again.
  const parts = Array.from({ length: 6 }, (_, index) => ({ ...drawings, original: `${index}` }));
  const packed = parts.map(pack);
  expect(packed).toEqual(parts);
  expect(packed.map(({ original }) => original)).toEqual(["0", "1", "2", "3", "4", "5"]);
  expect(structuredClone({ ...packed[0] })).toEqual(parts[0]);
  expect(JSON.stringify(packed)).toBe(JSON.stringify(parts));
  expect(Object.keys(pack({ report: 1 }))).toEqual(["report"]);
});

test("the drawings of thirty studies, 40 MB of text, take less than one", async () => {
  setFlagsFromString("--expose-gc");
  const collect: () => void = runInNewContext("gc");
  const hold = async (): Promise<number> => {
    collect();
    // What compressing took is given back a moment later.
    await new Promise((resolve) => setTimeout(resolve, 100));
    collect();
    const { heapUsed, external } = process.memoryUsage();
    return (heapUsed + external) / 2 ** 20;
  };
  const shapes = '<path d="M1 2h3v4z"/>'.repeat(5000);
  const draw = (index: number, colour: number) => `${shapes}<path id="${index}" fill="#${colour}"/>`;
  const before = await hold();
  const packed = Array.from({ length: 30 }, (_, index) =>
    pack(Array.from({ length: 12 }, (_, colour) => Buffer.from(draw(index, 100 + colour)).toString())),
  );
  expect((await hold()) - before).toBeLessThan(1);
  expect(packed[29]?.[11]).toBe(draw(29, 111));
});
