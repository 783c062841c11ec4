// Floor 5. One line of addresses.txt: an address of the site, and what becomes of it once no page is there.
import type { Advice } from "../../problem/problem.ts";
import { quoteText, showText } from "../../problem/quote.ts";
import { describeDevice } from "../study/slug.ts";

/** What is said of an address, for when no page is there any more. */
export interface AddressNote {
  /** The address that it leads to then. */
  readonly to?: string;
  /** The society's words on what was withdrawn, when and why; may be empty. */
  readonly withdrawn?: string;
}

/** A line as it was read. `part` is the piece of it that is wrong, `at` the characters before it. */
export type AddressLine =
  | { readonly address: string; readonly note: AddressNote }
  | ({ readonly part: string; readonly at: number } & Advice);

/** Longest address, step of one, and words on a line, in characters. */
const most = { address: 600, step: 200, words: 300 };

const likeThis =
  "Type an address like /studies/ferry-wheel/, alone or with “-> /studies/new-name/” or “withdrawn” and why behind it; or delete the line.";

/** Returns whether `text` is the path of a page of a site: nothing that could lead out of it. */
export function isAddress(text: string): boolean {
  return (
    text.length <= most.address &&
    /^\/(?:[a-z0-9]+(?:-[a-z0-9]+)*\/)*$/.test(text) &&
    text.split("/").every((step) => step.length <= most.step && describeDevice(step) === undefined)
  );
}

/** Returns what a line says, or what is wrong with it; undefined for an empty one and a remark. */
export function readAddressLine(line: string): AddressLine | undefined {
  const [address = "", sign, ...rest] = line.trim().split(/\s+/);
  if (address === "" || address.startsWith("#")) return undefined;
  const wrong = (part: string, reason: string, hint = likeThis, at = line.indexOf(part)) => {
    return { part, at: Math.max(0, at), reason, hint };
  };
  if (!isAddress(address)) {
    const hint = isAddress(`${address}/`)
      ? `Type: ${[`${address}/`, sign, ...rest].join(" ").trim()}`
      : likeThis;
    return wrong(address, `${quoteText(address)} is no address of a page.`, hint);
  }
  if (sign === undefined) return { address, note: {} };
  const words = rest.join(" ");
  if (sign === "->") {
    if (isAddress(words) && words !== address) return { address, note: { to: words } };
    const part = words || sign;
    const reason = `${quoteText(part)} is no other page of this site to lead to.`;
    return wrong(part, reason, likeThis, line.lastIndexOf(part));
  }
  if (sign !== "withdrawn") return wrong(sign, `${quoteText(sign)} stands behind the address.`);
  if (showText(words) === words && words.length <= most.words) return { address, note: { withdrawn: words } };
  const reason = `The words behind “withdrawn” have over ${most.words} letters, or some that nobody sees.`;
  return wrong(sign, reason, "Type them again by hand, shorter if they are long.");
}
