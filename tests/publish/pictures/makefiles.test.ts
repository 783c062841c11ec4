import { expect, test } from "vitest";
import { listDrawn } from "../../../src/publish/pictures/drawingrecipe.ts";
import { makeFiles, mostBytes } from "../../../src/publish/pictures/makefiles.ts";
import { gallery, studyResult } from "../sample.ts";

const ask = (recipes: readonly unknown[], isTrial = false) =>
  makeFiles({ file: "a.md", bytes: Buffer.from(""), recipes, isTrial });
const rulesOf = ({ problems }: Awaited<ReturnType<typeof ask>>) => problems.map(({ rule }) => rule);
const drawing = studyResult.drawings.original;

test("every kind of file is made, and a trial of the same makes nothing and finds nothing", async () => {
  const recipes = listDrawn(studyResult, gallery).map(({ recipe }) => recipe);
  const made = await ask(recipes);
  expect(made.value?.every((bytes) => bytes.length > 0)).toBe(true);
  expect(await ask(recipes, true)).toEqual({ value: recipes.map(() => ""), problems: [] });
});

test.each([true, false])(
  "a refused drawing is refused in every kind of file, in a trial too (%s)",
  async (isTrial) => {
    const size = { width: 30, height: 20 };
    const bad = drawing.replace("</svg>", "");
    const recipes = [
      { kind: "drawing", drawing: bad },
      { kind: "labels", drawing: bad, size },
      { kind: "crop", drawing: bad, crop: { x: 0, y: 0, width: 0.3, height: 0.2 } },
      { kind: "picture", drawing: bad, size },
      { kind: "distance", drawing: bad, size, distance: 40, isRedesign: false },
      { kind: "link", words: {}, drawings: [drawing, bad], size },
    ];
    for (const recipe of recipes) {
      const refused = await ask([recipe], isTrial);
      expect(refused.value, recipe.kind).toBeUndefined();
      expect(refused.problems).toMatchObject(
        [
          {
            rule: "study/not-published",
            severity: "error",
            file: "a.md",
            reason: /^The drawing, as it would be/,
          },
        ].map(({ reason, ...rest }) => ({ ...rest, reason: expect.stringMatching(reason) })),
      );
    }
  },
);

test("a fault of ours is no problem of the drawing: it is thrown", async () => {
  await expect(ask([{ kind: "nothing that is made" }])).rejects.toThrow(TypeError);
});

test("the bytes of a study are counted together", async () => {
  const one = drawing.replace("</svg>", `<desc>${"a".repeat(400 * 1024)}</desc></svg>`);
  const count = Math.floor(mostBytes / one.length);
  const recipes = new Array(count).fill({ kind: "drawing", drawing: one });
  expect(rulesOf(await ask(recipes))).toEqual([]);
  expect(rulesOf(await ask([...recipes, recipes[0]]))).toEqual(["study/too-much-output"]);
});
