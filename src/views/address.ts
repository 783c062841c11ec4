// Floor 8. Addresses: every link is relative to the page it stands on, so the site works under any base and from a disk.

/** Returns the address of one site path as a page writes it. */
export type Linker = (to: string) => string;

/**
 * Returns the relative address of `to` as seen from the page at `from`. Both are site paths that begin with `/`;
 * one that ends with `/` is a page in a folder of its own.
 *
 * Example: from `/studies/a-wheel/` to `/method/` is `../../method/`; to itself `./`.
 */
export function formatRelative(from: string, to: string): string {
  const here = from.split("/").slice(1, -1);
  const [path = "", fragment] = to.split("#");
  const there = path.split("/").slice(1);
  const name = there.pop() ?? "";
  let shared = 0;
  while (shared < here.length && shared < there.length && here[shared] === there[shared]) shared += 1;
  const up = "../".repeat(here.length - shared);
  const down = there.slice(shared).map((part) => `${part}/`);
  const address = `${up}${down.join("")}${name}` || "./";
  return fragment === undefined ? address : `${address}#${fragment}`;
}

/** Returns a linker for the page at `from`. */
export function linkFrom(from: string): Linker {
  return (to) => formatRelative(from, to);
}

/**
 * Returns a linker that writes whole paths under `base`: for the page of a missing address, which a host shows at any
 * depth.
 */
export function linkUnder(base: string): Linker {
  return (to) => `${base.replace(/\/$/, "")}${to}`;
}

/**
 * Returns the base path of the site: `base` if there is one, else the path of the gallery's `address`. It begins and
 * ends with `/`.
 */
export function resolveBase(base: string | undefined, address: string): string {
  const path = base ?? (URL.canParse(address) ? new URL(address).pathname : "/");
  const inner = path.replace(/^\/+|(?<!\/)\/+$/g, "");
  return inner === "" ? "/" : `/${inner}/`;
}

/**
 * Returns the absolute address of a site path, or undefined where the gallery's `address` is none that others could
 * follow: no absolute one, or one of the reader's own machine, as it is where gallery.yaml says nothing. The site then
 * claims no address: no canonical ones, no feeds, no sitemap, and links in data are relative to their file.
 */
export function formatCanonical(address: string, path: string): string | undefined {
  if (!URL.canParse(address) || isOwnMachine(new URL(address).hostname)) return undefined;
  return `${address.replace(/(?<!\/)\/+$/, "")}${path}`;
}

/** Returns what the file at `from` writes for `to`: absolute where the gallery has an address, else relative to the file. */
export function locate(address: string, from: string, to: string): string {
  return formatCanonical(address, to) ?? formatRelative(from, to);
}

/** Source: RFC 6761, section 6.3, localhost; RFC 1122, section 3.2.1.3, 127.0.0.0/8 and 0.0.0.0; RFC 4291, ::1. */
function isOwnMachine(host: string): boolean {
  return /^(?:(?:.+\.)?localhost\.?|127(?:\.\d+){3}|0\.0\.0\.0|\[::1?\])$/.test(host);
}
