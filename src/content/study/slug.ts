// Floor 5. Names of folders and files that become addresses: small letters, digits, single hyphens.

/** Returns whether `name` can stand in an address as it is. */
export function isSlug(name: string): boolean {
  return /^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(name);
}

/**
 * Returns the slug nearest to `name`, or undefined where no letter or digit of a to z, 0 to 9 is left.
 *
 * Example: `proposeSlug("Café du Port")` is `cafe-du-port`.
 */
export function proposeSlug(name: string): string | undefined {
  const plain = name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
  return plain === "" ? undefined : plain;
}

/** Returns `name` as a file system that ignores case and normalises Unicode would see it. */
export function foldName(name: string): string {
  return name.normalize("NFC").toUpperCase().toLowerCase().normalize("NFC");
}
