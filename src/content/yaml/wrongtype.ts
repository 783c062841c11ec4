// Floor 5. A value of the wrong kind, text where a list belongs and the like: what it is, what it must be, what to type.

import { parseColour } from "../../colour/colourtext.ts";
import type { Advice } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";
import { findDateFault } from "../study/date.ts";
import { findSlip, itemMark, writeItem } from "./brokenline.ts";
import { capital, exampleOf, type Finding, type KeyGuide, keysUnder, labelOf } from "./finding.ts";
import { writeValue } from "./misplacedkey.ts";
import type { YamlData } from "./readyaml.ts";

/** Returns the finding for `value` at `path` where the schema `expected` another kind, by the name that zod has for it. */
export function describeKind(
  path: string,
  expected: string,
  value: unknown,
  data: YamlData,
  guide: KeyGuide,
): Finding {
  const typed = data.typed.get(path);
  const found = { rule: "study/wrong-type", path, on: "value", isWhole: true } as const;
  if (path === "date" && typed !== undefined)
    return { ...found, rule: "study/wrong-date", ...findDateFault(typed), reason: reasonOfDate(typed) };
  const colour = typed === undefined ? undefined : asColour(path, typed);
  if (colour !== undefined) {
    const reason = `${capital(labelOf(path))} is ${quoteText(typed ?? "")}, which YAML reads as a number; a hex colour begins with # and stands in quotes.`;
    return { ...found, reason, hint: `Type: ${lineOf(path, JSON.stringify(colour))}` };
  }
  const slip = expected === "array" && typeof value === "string" ? findItemSlip(value) : undefined;
  if (slip !== undefined) return { ...found, reason: slip.reason, hint: slip.hint };
  const reason = `${capital(labelOf(path))} is ${nameValue(value, typed)}; it must be ${nameExpected(path, expected, guide)}.`;
  const hint = proposeValue(path, expected, value, typed) ?? proposeExample(path, guide);
  return { ...found, reason, ...(hint === undefined ? {} : { hint }) };
}

function reasonOfDate(typed: string): string {
  return findDateFault(typed)?.reason ?? `“date” is ${quoteText(typed)}, which YAML does not read as a date.`;
}

/** Returns what to type, made of the author's own value, where it says what is meant. */
function proposeValue(
  path: string,
  expected: string,
  value: unknown,
  typed: string | undefined,
): string | undefined {
  if (expected === "string" && typed !== undefined)
    return `Put it in quotes: ${lineOf(path, JSON.stringify(typed))}`;
  if (path === "change" && Array.isArray(value)) return proposeChange(value);
  const [only] = Array.isArray(value) && value.length === 1 ? value : [];
  if (expected === "string" && typeof only === "string") return `Type: ${lineOf(path, writeValue(only))}`;
  if (typeof value !== "string") return undefined;
  if (expected === "array") {
    const items = value.split(/[,;]|\s(?:and|&)\s/).map((item) => item.trim());
    return `Put it in brackets: ${lineOf(path, writeValue(items.filter((item) => item !== "")))}`;
  }
  const number = /^\D*(\d+(?:\.\d+)?)\D*$/.exec(value)?.[1];
  if (expected === "number" && number !== undefined) return `Type the number alone: ${lineOf(path, number)}`;
  if (path !== "focus") return undefined;
  const isColour = parseColour(value) !== undefined;
  return `Type: focus: { ${isColour ? "colour" : "select"}: ${JSON.stringify(value)} }`;
}

/** A list of changes: the first is the study's. */
function proposeChange(changes: readonly unknown[]): string | undefined {
  const [first] = changes;
  if (typeof first !== "object" || first === null || Array.isArray(first)) return undefined;
  const words = Object.entries(first).map(([key, value]) => `${key}: ${writeValue(value)}`);
  const typed = `Type: change: { ${words.join(", ")} }`;
  if (changes.length === 1) return typed;
  const others = changes.length === 2 ? "the other" : "the others";
  return `A study makes one change; put ${others} under options:, or in a study of its own.\n${typed}`;
}

/** Items of a list whose hyphens are none come as one text. What is wrong with the first is said, and all are typed. */
function findItemSlip(value: string): Advice | undefined {
  const items = value.split(new RegExp(`(?<!\\s)\\s+(?=${itemMark})`));
  const slip = findSlip(items[0] ?? "");
  if (slip === undefined || !new RegExp(`^${itemMark}`).test(value)) return undefined;
  const plain = items.map((item) => writeItem(item.slice(1)));
  return { reason: slip.reason, hint: plain.length === 1 ? slip.hint : ["Type:", ...plain].join("\n") };
}

function proposeExample(path: string, guide: KeyGuide): string | undefined {
  const example = exampleOf(guide, path);
  return example === undefined ? undefined : `Type, for example: ${example}`;
}

/** `title: A wheel`; in a list the value alone. */
function lineOf(path: string, value: string): string {
  const key = path.split(".").at(-1) ?? "";
  if (/^\d+$/.test(key)) return value;
  return `${key.startsWith("#") ? JSON.stringify(key) : key}: ${value}`;
}

/** Returns the colour somebody meant with digits that YAML reads as a number, or undefined. */
function asColour(path: string, typed: string): string | undefined {
  const digits = /^(?:0x)?([0-9a-f]{3}|[0-9a-f]{6})$/i.exec(typed)?.[1];
  const isColour = /(?:^|\.)(?:replace|with|colour|palette\.[^.]*)$/.test(path);
  return digits === undefined || !isColour ? undefined : `#${digits.toLowerCase()}`;
}

function nameValue(value: unknown, typed: string | undefined): string {
  if (Array.isArray(value)) return "a list";
  if (typeof value === "object") return "a group of keys";
  if (typeof value === "string") return `the text ${quoteText(value)}`;
  if (typeof value === "number" && !Number.isFinite(value))
    return `${quoteText(typed ?? "")}, which YAML reads as a number without end`;
  const kind = typeof value === "number" ? "a number" : "true or false";
  return `${quoteText(typed ?? String(value))}, which YAML reads as ${kind}`;
}

function nameExpected(path: string, expected: string, guide: KeyGuide): string {
  if (expected === "array") return "a list";
  if (expected === "record")
    return path === "names" ? "colours, each with its name" : "names, each with its colour";
  if (expected === "object") return `a group of keys: ${keysUnder(guide, path).join(", ")}`;
  return expected === "string" ? "text" : `a ${expected}`;
}
