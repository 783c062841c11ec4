import { describe, expect, test } from "vitest";
import { checkEffects, measureEffects } from "../../../src/analysis/drawing/effectshown.ts";
import { openDrawing } from "../../../src/analysis/drawing/opendrawing.ts";
import { runners } from "../../../src/analysis/jobs/job.ts";
import { bytesOf, read } from "../../svg/drawing.ts";

const svg = (body: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 200"><rect width="300" height="200" fill="#fff"/>${body}</svg>`;
/** Multiplied with white it is what it is, with red something else: a share of the flag that is known. */
const mixed = (width: number): string =>
  svg(
    `<rect width="300" height="100" fill="#f00"/><rect y="50" width="${width}" height="100" fill="#00f" style="mix-blend-mode:multiply"/>`,
  );

describe("what is left out", () => {
  test.each([[0], [12], [100]])("%s of 300 by 50 of 200 units look otherwise", async (width) => {
    expect(await measureEffects(read(mixed(width)))).toBeCloseTo((width * 50) / 60_000, 3);
  });

  test("an offset shows where it comes from and where it goes", async () => {
    const moved = svg(
      '<filter id="f" width="3"><feOffset dx="50"/></filter><rect width="50" height="100" fill="#00f" filter="url(#f)"/>',
    );
    expect(await measureEffects(read(moved))).toBeCloseTo(10_000 / 60_000, 3);
  });

  test("up to a twentieth of the flag is measured and told, more is refused with the place", async () => {
    const options = { distance: 40 };
    const little = await openDrawing("a.svg", bytesOf(mixed(50)), options);
    expect(little.problems.map(({ rule }) => rule)).toEqual(["svg/effect"]);
    expect(little.value?.inspection.warnings).toContainEqual({
      about: "effect",
      looks: [{ kind: "blend", mode: "multiply" }],
    });
    const much = await openDrawing("a.svg", bytesOf(mixed(70)), options);
    expect(much.value).toBeUndefined();
    expect(much.problems).toMatchObject([
      { rule: "study/effect", place: { line: 1 }, reason: expect.stringContaining("5.8 %"), hint: /./ },
    ]);
    expect((await runners.sift({ bytes: bytesOf(mixed(70)) })).value).toBeUndefined();
    expect(await checkEffects(read(svg("")))).toEqual([]);
  });
});
