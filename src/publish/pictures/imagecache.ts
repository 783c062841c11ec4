// Floor 9. Pictures that were made before, kept beside the measurements. One is found by all that it is made from and by
// the code that makes it: a picture that was kept has the bytes that making it again would give.
import { createHash } from "node:crypto";
import path from "node:path";
import { findSiteEdition } from "../../analysis/store/edition.ts";
import type { Store } from "../../analysis/store/resultstore.ts";
import { readOwn } from "../../content/disk/packagefile.ts";
import { findFontFolder } from "../../views/fontface.ts";
import { once, type SiteFile } from "../folder/sitefile.ts";
import type { Recipe } from "./recipe.ts";

/** The fonts that words on pictures are set in. */
export const letteringFonts = ["source-serif-4", "source-sans-3"] as const;

/**
 * Letters that both fonts have. For any other the renderer takes a font of the machine, and what that looks like is known
 * nowhere: such a picture is made anew each time.
 */
const ownLetters = /^[ -~\u00a0-\u00ff\u2013\u2014\u2018-\u201a\u201c-\u201e\u2022\u2026\u2212]*$/u;

/** The file of a family as it comes with the package. */
export function findLetteringFile(family: (typeof letteringFonts)[number]): string {
  return path.join(findFontFolder(family), "files", `${family}-latin-400-normal.woff`);
}

/**
 * Returns the question under which the bytes of a recipe are kept, or undefined where they are made anew each time. All that
 * goes into them is in the recipe, but for the fonts.
 */
export async function questionOf(recipe: Recipe): Promise<unknown> {
  if (!("words" in recipe)) return asQuestion(recipe);
  const isOwn = Object.values(recipe.words)
    .flat(2)
    .every((text) => ownLetters.test(String(text)));
  return isOwn ? asQuestion({ recipe, fonts: await digestFonts() }) : undefined;
}

function asQuestion(recipe: unknown): object {
  return { kind: "picture", edition: findSiteEdition(), recipe };
}

/**
 * Returns the files, of which fonts that the store has are not made again. One that cannot be made gives way
 * to its spare, which is not kept: what failed may have failed for want of memory.
 */
export function keepFonts(files: readonly SiteFile[], store: Store | undefined): readonly SiteFile[] {
  return files.map((file) => {
    const { findRecipe, spare } = file;
    const isKept = findRecipe !== undefined && store !== undefined;
    const make = isKept ? () => recall(file, findRecipe, store) : () => file.make();
    return { ...file, make: spare === undefined ? make : () => make().catch(spare) };
  });
}

async function recall(
  file: SiteFile,
  findRecipe: () => Promise<unknown>,
  store: Store,
): Promise<string | Uint8Array> {
  const recipe = await findRecipe();
  if (recipe === undefined) return file.make();
  const { value } = await store.recall(asQuestion(recipe), async () => ({
    value: await file.make(),
    problems: [],
  }));
  return value ?? file.make();
}

const digestFonts = once(async () => {
  const hash = createHash("sha256");
  for (const family of letteringFonts) hash.update(await readOwn(findLetteringFile(family)));
  return hash.digest("hex");
});
