// Floor 9. The job that a child process does for publishing: recipes → bytes. All that reads or renders a drawing for the site
// runs here, where it can be stopped, and a drawing that cannot be published is a problem of its study.

import { labelsOf, renderMap } from "../../analysis/drawing/measuregeometry.ts";
import { lookAt } from "../../analysis/drawing/paintlook.ts";
import type { Jobs } from "../../analysis/jobs/job.ts";
import { runOrdered } from "../../analysis/jobs/orderedqueue.ts";
import { type Outcome, type Problem, report } from "../../problem/problem.ts";
import { blurPicture, measureBlur } from "../../regions/eyeblur.ts";
import { resolveDrawing } from "../../svg/instance.ts";
import { writeLabels } from "../../svg/labeldrawing.ts";
import { findPaints } from "../../svg/paint.ts";
import type { SiteView } from "../../views/siteview.ts";
import { hatchPicture } from "./hatchpicture.ts";
import { layLinkPicture, unpackFonts } from "./linkimage.ts";
import { layScene, writeScene } from "./paintscene.ts";
import { encodeLayout, encodePicture, joinFrames, layOut, readMatrix } from "./pixelpicture.ts";
import type { Recipe } from "./recipe.ts";
import { cropDrawing, Easel, RefusedError } from "./renderdrawing.ts";
import { laySurveyPicture } from "./surveylinkimage.ts";
import { unofficial } from "./unofficial.ts";

/** How long each flag of a swap is shown: well below three changes a second. Source: WCAG 2.2, 2.3.1. */
const swapMilliseconds = 2000;

/** What pages show, which is smaller so; what people and other programs take away is PNG, which all of them read. */
const shown = "webp";

/** Files that are made at once: a picture waits for its encoder most of the time. */
const atOnce = 2;

/** Most bytes of all files of a study together (our own judgement; the demo's studies have 0.7 MB each). */
export const mostBytes = 64 * 1024 * 1024;

type Bytes = string | Uint8Array;
type Makers = {
  readonly [K in Recipe["kind"]]: (
    recipe: Extract<Recipe, { readonly kind: K }>,
    easel: Easel,
  ) => Promise<() => Bytes | Promise<Bytes>>;
};

/** Each does what can fail for the drawing's sake, and returns what is left: encoding. */
const makers: Makers = {
  drawing: async ({ drawing }, easel) => {
    easel.read(drawing);
    return () => drawing;
  },
  labels: async ({ drawing, size: { width, height } }, easel) => {
    const text = greyCodes(writeLabels(findPaints(resolveDrawing(easel.read(drawing))), width, height));
    return () => text;
  },
  hatched: async ({ drawing, size, isRedesign, isOutline }, easel) => {
    const shapes = findPaints(resolveDrawing(easel.read(drawing)));
    const map = await renderMap(shapes, size);
    const looks = lookAt(await easel.render(drawing, size), map, shapes.paints, labelsOf(shapes));
    const hexes = looks.map(({ hex }) => hex);
    return () => encodePicture(hatchPicture(map, hexes, isOutline), shown, noteOf(isRedesign));
  },
  crop: async ({ drawing, crop, note }, easel) => {
    const text = cropDrawing(easel.read(drawing), crop, note);
    return () => text;
  },
  picture: async ({ drawing, size, note }, easel) => {
    const picture = await easel.render(drawing, size);
    return () => encodePicture(picture, "png", note);
  },
  distance: async ({ drawing, size, distance, isRedesign }, easel) => {
    const picture = await easel.render(drawing, size);
    return () =>
      encodePicture(blurPicture(picture, measureBlur(distance, picture.height)), shown, noteOf(isRedesign));
  },
  matrix:
    async ({ picture }) =>
    async () =>
      encodePicture(await readMatrix(picture), shown, unofficial),
  still: async ({ scene, note }, easel) => {
    const layout = await layScene(scene, await unpackFonts(), easel);
    return () => encodeLayout(layout, note);
  },
  swap: async ({ scenes: [before, after], note }, easel) => {
    const fonts = await unpackFonts();
    const layouts = [await layScene(before, fonts, easel), await layScene(after, fonts, easel)];
    return async () => joinFrames(await Promise.all(layouts.map(layOut)), swapMilliseconds, note);
  },
  figure: async ({ scene, title, note }, easel) => {
    const text = writeScene(scene, title, note, easel);
    return () => text;
  },
  link: async ({ words, drawings: [original, redesign], size }, easel) => {
    const flags = [await easel.render(original, size), await easel.render(redesign, size)] as const;
    const layout = await layLinkPicture(words, flags, await unpackFonts());
    return () => encodeLayout(layout, unofficial);
  },
  sheet: async ({ words, flags }, easel) => {
    const layout = await laySurveyPicture(words, flags, await unpackFonts(), easel);
    return () => encodeLayout(layout, unofficial);
  },
};

/**
 * Makes the files of one study. `file` names it in messages. In a trial nothing is encoded and nothing comes back.
 *
 * Problems: `study/not-published`, `study/too-much-output`.
 */
export async function makeFiles({
  file,
  recipes,
  isTrial,
}: Jobs["publish"]["input"]): Promise<Outcome<readonly Bytes[]>> {
  const easel = new Easel();
  const made: Bytes[] = [];
  let bytes = 0;
  try {
    // Made by drawingrecipe.ts, in the same program.
    const work = async (recipe: unknown) => {
      const encode = await prepare(recipe as Recipe, easel);
      return isTrial ? "" : encode();
    };
    await runOrdered(recipes, atOnce, work, (one) => {
      made.push(one);
      bytes += one.length;
      if (bytes > mostBytes) throw new RefusedError(tooMuch(file));
    });
    return { value: made, problems: [] };
  } catch (error) {
    if (error instanceof RefusedError) return { value: undefined, problems: [{ ...error.problem, file }] };
    throw error;
  }
}

/** Renders the pages of a view: for a gallery that is too large for the process that was called. */
export async function makePages({
  view,
  gallery,
}: Jobs["pages"]["input"]): Promise<Outcome<Jobs["pages"]["output"]>> {
  // Loaded where it is needed: whoever draws renders no pages.
  const { renderPages } = await import("../renderpages.ts");
  // Presented by siteview.ts, in the same program.
  const pages = await renderPages(view as Partial<SiteView>, gallery);
  const value = await Promise.all(
    pages.map(async ({ path, make }) => ({ path, text: String(await make()) })),
  );
  return { value, problems: [] };
}

function prepare<K extends Recipe["kind"]>(
  recipe: Extract<Recipe, { readonly kind: K }>,
  easel: Easel,
): Promise<() => Bytes | Promise<Bytes>> {
  return makers[recipe.kind as K](recipe, easel);
}

function noteOf(isRedesign: boolean): string | undefined {
  return isRedesign ? unofficial : undefined;
}

function tooMuch(file: string): Problem {
  return report("study/too-much-output", file, {
    reason: `The files of this study come to more than ${mostBytes / 2 ** 20} MB.`,
    hint: "Simplify the drawing: fewer points, fewer colours. Each edge has two drawings of its own.",
  });
}

/** Puts greys, as far apart as they can be, in the place of code colours, the first the lightest: a page has no hue but the flags'. */
function greyCodes(labels: string): string {
  const code = /#[0-9a-f]{6}/g;
  const codes = [...new Set(labels.match(code))];
  const levelOf = (hex: string) =>
    Math.round(240 - (176 * codes.indexOf(hex)) / Math.max(1, codes.length - 1));
  return labels.replace(code, (hex) => `#${levelOf(hex).toString(16).padStart(2, "0").repeat(3)}`);
}
