// Floor 5. What a setting of gallery.yaml has to be beyond its type: an address, a language, a folder inside.
import { quoteText } from "../../problem/quote.ts";
import { checkInvisible } from "../study/invisiblevalue.ts";
import { checkLanguage } from "../study/languagetag.ts";
import { findLicenceFault } from "../study/licence.ts";
import { checkScripts } from "../study/namesense.ts";
import { checkColour, isRaw, isText } from "../study/studyrule.ts";
import { type Finding, wrong } from "../yaml/finding.ts";
import { parseAnswer } from "./answerlink.ts";
import { galleryGuide } from "./gallerykey.ts";

/**
 * Returns what is wrong with the settings of `raw`, the YAML as it was read. A setting of the wrong type, or empty, is
 * the schema's to report.
 */
export function checkSettings(raw: Readonly<Record<string, unknown>>): Finding[] {
  const { address, language, cloth, palette, compareWith, answer, nominate, licence } = raw;
  return [
    ...checkInvisible(raw),
    ...checkScripts(raw),
    ...(isText(address) ? checkAddress(address) : []),
    ...(isText(language) ? checkLanguage(language) : []),
    ...(isRaw(cloth) ? checkCloth(cloth) : []),
    ...(isText(compareWith) ? checkFolder(compareWith) : []),
    ...(isText(answer) ? checkAnswer(answer, "answer") : []),
    ...(isText(nominate) ? checkAnswer(nominate, "nominate") : []),
    ...(isText(licence) ? checkLicence(licence) : []),
    ...(isRaw(palette) ? checkPalette(palette) : []),
  ];
}

function checkAddress(address: string): Finding[] {
  if (isWebAddress(address)) return /[?#]/.test(address) ? refuseQuery(address) : [];
  const reason = `“address” is ${quoteText(address)}, which is not a web address.`;
  const example =
    !/:\/\//.test(address) && isWebAddress(`https://${address}`)
      ? `https://${address}`
      : "https://flags.example/";
  const hint = `Type the whole address of the front page: address: ${example}`;
  return wrong("study/wrong-address", "address", { reason, hint });
}

/** Pages stand below the address: nothing can follow a query or a fragment. */
function refuseQuery(address: string): Finding[] {
  const reason = `“address” is ${quoteText(address)}; pages cannot stand behind a ? or a #.`;
  const hint = `Type: address: ${address.replace(/[?#].*/s, "")}`;
  return wrong("study/wrong-address", "address", { reason, hint });
}

function checkCloth({ black, white }: Readonly<Record<string, unknown>>): Finding[] {
  if (typeof black !== "number" || typeof white !== "number" || black < white) return [];
  const reason = `Black cloth (${black} %) must reflect less than white cloth (${white} %).`;
  const turned = black > white ? `black: ${white}, white: ${black}` : "black: 5, white: 85";
  return wrong("study/wrong-cloth", "cloth", { reason, hint: `Type: cloth: { ${turned} }` });
}

function checkFolder(folder: string): Finding[] {
  if (isInnerFolder(folder)) return [];
  const reason = `“compareWith” is ${quoteText(folder)}; it must name a folder inside the content folder.`;
  const hint = `Put the drawings there and type: ${galleryGuide.examples.compareWith}`;
  return wrong("study/wrong-folder", "compareWith", { reason, hint });
}

function checkAnswer(answer: string, key: "answer" | "nominate"): Finding[] {
  const read = parseAnswer(answer, key);
  return "reason" in read ? wrong("study/wrong-answer", key, read) : [];
}

function checkLicence(licence: string): Finding[] {
  const fault = findLicenceFault(licence);
  return fault === undefined ? [] : wrong("study/licence", "licence", fault, { severity: "warning" });
}

function checkPalette(palette: Readonly<Record<string, unknown>>): Finding[] {
  const entries = Object.entries(palette);
  if (entries.length > 0) return entries.flatMap(([name, colour]) => checkPaletteEntry(name, colour));
  const hint = "Add colours, or delete the line to get the usual ones.";
  return wrong("study/wrong-palette", "palette", { reason: "“palette” has no colour.", hint });
}

function checkPaletteEntry(name: string, colour: unknown): Finding[] {
  const path = `palette.${name}`;
  if (/^\p{L}[\p{L}\p{M}\p{N} '’-]{0,39}$/u.test(name)) {
    return typeof colour === "string" && colour !== "" ? checkColour(path, colour) : [];
  }
  const reason = `${quoteText(name)} cannot be the name of a colour.`;
  const hint =
    "A name begins with a letter and has letters, digits, spaces and hyphens, at most 40: sea green";
  return wrong("study/wrong-palette", path, { reason, hint }, { on: "key" });
}

function isWebAddress(text: string): boolean {
  return URL.canParse(text) && /^https?:\/\/[^\s\\]+$/i.test(text) && new URL(text).username === "";
}

/** Names of folders with slashes between them: nothing that climbs, is hidden or is a path of the whole computer. */
function isInnerFolder(text: string): boolean {
  return /^[\p{L}\p{N}][\p{L}\p{N} _.-]*(?:\/[\p{L}\p{N}][\p{L}\p{N} _.-]*)*\/?$/u.test(text);
}
