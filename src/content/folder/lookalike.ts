// Floor 5. Names that look the same → one text by which they are found to.
import unhomoglyph from "unhomoglyph";

/**
 * Returns the skeletons of `name`, as it is and in small letters, without regard to case, spaces and hyphens: two names
 * that share one are easily taken for each other. They are no text to show. The direction of writing is left out of account.
 *
 * Example: `modern` and `modem` share one, and so do `Ines` and `lnes`.
 *
 * Source: UTS 39, section 4, skeleton, with the data of Unicode 13 (confusables.txt).
 */
export function skeletonsOf(name: string): readonly string[] {
  const plain = name
    .replace(/\p{Default_Ignorable_Code_Point}/gu, "")
    .replace(/[\s-]+/g, " ")
    .trim();
  const all = [plain, plain.toLowerCase()].map((text) =>
    unhomoglyph(text.normalize("NFD")).normalize("NFD").toLowerCase(),
  );
  return [...new Set(all)];
}
