// Floor 5. The licence of a drawing: whether its name is one that others know, and which one is most likely meant.

import deprecated from "spdx-license-ids/deprecated.json" with { type: "json" };
import ids from "spdx-license-ids/index.json" with { type: "json" };
import { findNearest } from "../../problem/knownword.ts";
import type { Advice } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";

/** What is no licence of the list and still says plainly what may be done. */
const plainNames = ["public domain", "all rights reserved", "by permission"];

/** Addresses of licences that are named by their SPDX identifiers. Source: creativecommons.org, the canonical URLs. */
const addresses: Readonly<Record<string, string>> = {
  "CC0-1.0": "https://creativecommons.org/publicdomain/zero/1.0/",
  "CC-BY-4.0": "https://creativecommons.org/licenses/by/4.0/",
  "CC-BY-SA-4.0": "https://creativecommons.org/licenses/by-sa/4.0/",
  "CC-BY-3.0": "https://creativecommons.org/licenses/by/3.0/",
  "CC-BY-SA-3.0": "https://creativecommons.org/licenses/by-sa/3.0/",
};

const known = new Map([...ids, ...deprecated].map((id) => [id.toLowerCase(), id]));

/**
 * Returns what is wrong with `text` as a licence, or undefined where others know it: an SPDX identifier, in any letter
 * case, or several joined by AND, OR and WITH; a `LicenseRef-`; the address of a licence; public domain and the like.
 *
 * Source: SPDX licence list, as packaged in `spdx-license-ids` (CC0); SPDX 2.3, annex D, for expressions.
 */
export function findLicenceFault(text: string): Advice | undefined {
  const plain = text.trim().toLowerCase();
  if (plainNames.includes(plain) || /^https?:\/\/\S+$/.test(plain) || isExpression(plain)) return undefined;
  const near = findLicence(plain);
  const reason = `${quoteText(text)} is not a name by which a licence can be looked up.`;
  return {
    reason,
    hint:
      near === undefined
        ? `Type its short name, such as licence: CC0-1.0, or the address of its text; where there is none, type one of: ${plainNames.join(", ")}.`
        : `If that is meant, type: licence: ${near}`,
  };
}

/** Returns the address of a licence, by its short name or where it is one; undefined of one whose address we do not know. */
export function findLicenceAddress(licence: string): string | undefined {
  if (/^https?:\/\/\S+$/i.test(licence)) return licence;
  return Object.hasOwn(addresses, licence) ? addresses[licence] : undefined;
}

function isExpression(text: string): boolean {
  const words = text.replace(/[()]/g, " ").trim().split(/\s+/);
  const parts = words.join(" ").split(/ (?:and|or) /);
  return parts.every((part) => {
    const [id = ""] = part.split(" with ");
    return known.has(id.replace(/\+$/, "")) || /^licenseref-[\w.-]+$/.test(id);
  });
}

/** Licences that drawings are under: the others of the list are for programs, and none is proposed. */
const usual = ids.filter((id) =>
  /^CC-?(?:0|BY|PDM|PDDC)|^(?:GFDL|GPL|LGPL|OFL|ODbL|Apache)-|^(?:MIT|Unlicense)$/.test(id),
);

/** Returns the identifier that is most likely meant; where no version is said, or none that there is, the newest. */
function findLicence(text: string): string | undefined {
  const words = shorten(text);
  const version = /(?<!\d)\d+(?:\.\d+)?$/.exec(words)?.[0] ?? "";
  const base = version === "" ? "" : words.slice(0, -version.length).replace(/-?v?$/, "");
  const named = [
    words,
    `${base}-${version}`,
    `${base}-${version}.0`,
    `${base}-${version}-only`,
    `${base}-${version}.0-only`,
  ];
  return (
    usual.find((id) => named.includes(id.toLowerCase())) ??
    findNewest(words) ??
    findNewest(base) ??
    (text.length < 3 ? undefined : findNearest(text, [...plainNames, "cc0", ...usual]))?.replace(
      /^cc0$/,
      "CC0-1.0",
    )
  );
}

function findNewest(base: string): string | undefined {
  const versions = usual.filter((id) => {
    const rest = id.toLowerCase().startsWith(`${base}-`) ? id.slice(base.length + 1) : "";
    return /^\d+\.\d+(?:-only)?$/.test(rest);
  });
  return versions.sort().at(-1);
}

/** `Creative Commons Attribution 4.0` becomes `cc-by-4.0`. */
function shorten(text: string): string {
  return text
    .replace(/creative commons/g, "cc")
    .replace(
      /\b(?:universal|international|unported|generic|the|licen[cs]es?|version|deed|dedication)\b/g,
      " ",
    )
    .replace(/\bzero\b/g, "0")
    .replace(/attribution/g, "by")
    .replace(/share[- ]?alike/g, "sa")
    .replace(/non[- ]?commercial/g, "nc")
    .replace(/no[- ]?deriv\w*/g, "nd")
    .replace(/[^a-z0-9.]+/g, "-")
    .replace(/^-|-$/g, "")
    .replace(/^cc-0/, "cc0")
    .replace(/^by\b/, "cc-by");
}
