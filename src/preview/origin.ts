// Floor 10. Who may read what is served: pages of this server, and nobody else's that are open in the same browser.
import type { IncomingMessage } from "node:http";

/** The names under which a machine speaks to itself. Source: RFC 6761, section 6.3; RFC 4291, section 2.5.3. */
const ownNames = ["localhost", "127.0.0.1", "[::1]"];

/**
 * What every answer says, whatever it holds: no page of another origin reads it, frames it or keeps hold of its window.
 *
 * Sources: the WHATWG Fetch standard, Cross-Origin-Resource-Policy and X-Content-Type-Options; the WHATWG HTML standard,
 * Cross-Origin-Opener-Policy; RFC 7034, X-Frame-Options; W3C, Content Security Policy 3, frame-ancestors.
 */
export const guardHeaders: Readonly<Record<string, string>> = {
  "Cross-Origin-Resource-Policy": "same-origin",
  "Cross-Origin-Opener-Policy": "same-origin",
  "X-Content-Type-Options": "nosniff",
  "X-Frame-Options": "DENY",
  "Content-Security-Policy": "default-src 'none'; frame-ancestors 'none'",
  "Referrer-Policy": "no-referrer",
  "Cache-Control": "no-cache",
};

/**
 * Returns why a request is refused, or undefined. It has to name a host of this machine or one of `names`, or a name of
 * somebody else's that leads here could read a draft; and it has to come from a page of this server, or from somebody who
 * follows a link or types the address. The answer is decided before anything is looked up: it tells of no file.
 *
 * Sources: RFC 9110, section 7.2, Host; W3C, Fetch Metadata Request Headers; RFC 6454, section 7, Origin.
 */
export function findRefusal(request: IncomingMessage, names: readonly string[]): string | undefined {
  const { host = "", origin } = request.headers;
  const name = host.replace(/:\d{1,5}$/, "").toLowerCase();
  if (![...ownNames, ...names.map(writeHost)].includes(name)) return "Nothing is served under this name.";
  const site = request.headers["sec-fetch-site"] ?? "none";
  const isFollowed =
    request.headers["sec-fetch-mode"] === "navigate" && request.headers["sec-fetch-dest"] === "document";
  const isOurs = (site === "same-origin" || site === "none" || isFollowed) && isOwn(origin, host);
  return isOurs ? undefined : "Only pages of this server may ask.";
}

/** Writes a host as browsers name it: small letters, IPv6 at its shortest and in brackets. Source: the WHATWG URL standard. */
function writeHost(name: string): string {
  const address = `http://${name.includes(":") ? `[${name}]` : name}`;
  return URL.canParse(address) ? new URL(address).hostname : name;
}

function isOwn(origin: string | undefined, host: string): boolean {
  return origin === undefined || origin.toLowerCase() === `http://${host}`.toLowerCase();
}
