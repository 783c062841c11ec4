// Floor 5. Names of folders and files that become addresses: small letters, digits, single hyphens.
import type { Advice } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";

/** Names of published files begin with it and go on, up to the 255 bytes that file systems take. */
const mostLetters = 100;

/** Returns whether `name` can stand in an address as it is. */
export function isSlug(name: string): boolean {
  return name.length <= mostLetters && /^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(name);
}

/**
 * Returns the slug nearest to `name`, or undefined where no letter or digit of a to z, 0 to 9 is left.
 *
 * Example: `proposeSlug("Café du Port")` is `cafe-du-port`, and `proposeSlug("Con")` is `con-flag`.
 */
export function proposeSlug(name: string): string | undefined {
  const plain = name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-/, "")
    .slice(0, mostLetters - "-flag".length)
    .replace(/-$/, "");
  if (plain === "") return undefined;
  return device.test(plain) ? `${plain}-flag` : plain;
}

/** Source: Microsoft, “Naming Files, Paths, and Namespaces”, naming conventions; with any ending they are the same. */
const device = /^(?:con|prn|aux|nul|(?:com|lpt)[1-9])(?:\.|$)/i;

/** Returns what is wrong with a name that Windows keeps for a device, `aux` or `nul.svg`, or undefined for another. */
export function describeDevice(name: string): Advice | undefined {
  if (!device.test(name)) return undefined;
  const reason = `${quoteText(name)} is a name that Windows keeps for a device, so nothing called so can be copied to such a computer.`;
  return { reason, hint: `Rename it, for example: ${name.replace(/^[^.]+/, "$&-flag").toLowerCase()}` };
}

/** Returns `name` as a file system that ignores case and normalises Unicode would see it. */
export function foldName(name: string): string {
  return name.normalize("NFC").toUpperCase().toLowerCase().normalize("NFC");
}
