// Floor 7. A name → the part of an address that stands for it, the same at every build.
import { createHash } from "node:crypto";
import { describeDevice } from "../content/study/slug.ts";

/**
 * Returns a slug for the name of an author or a tag. One of plain letters, digits, spaces and hyphens becomes itself
 * in lower case, hyphens for spaces; any other, one that ends as such digits do and one that Windows keeps for a device get
 * sixteen digits of its own behind it. No address depends on which other names there are, none can be made to meet another's, and names that differ in
 * case, or in a hyphen for a space, are one.
 *
 * Example: `Ines Valcourt` is `ines-valcourt`, `Zoë` is `zoe-` and sixteen digits.
 */
export function slugOf(name: string): string {
  const clean = name.normalize("NFC").trim();
  const plain = clean
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "")
    .slice(0, 60);
  const isPlain = clean.length <= 60 && /^[a-z0-9]+(?:[ -][a-z0-9]+)*$/i.test(clean);
  if (isPlain && !/-[0-9a-f]{16}$/.test(plain) && describeDevice(plain) === undefined) return plain;
  const digits = createHash("sha256").update(clean.toLowerCase()).digest("hex").slice(0, 16);
  return plain === "" ? `name-${digits}` : `${plain}-${digits}`;
}
