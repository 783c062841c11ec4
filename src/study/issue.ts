// Floor 5. Issues of a schema → findings in plain words, each with what to type instead.
import type { z } from "zod";
import { findNearest } from "../problem/nearest.ts";
import { quoteText } from "../problem/quote.ts";
import { capital, exampleOf, type Finding, type KeyGuide, labelOf } from "./finding.ts";
import type { YamlData } from "./yaml.ts";

/** Returns what the schema found, one finding for each wrong or missing value and each unknown key. */
export function describeIssues(
  issues: readonly z.core.$ZodIssue[],
  data: YamlData,
  guide: KeyGuide,
): Finding[] {
  const findings = issues.flatMap((issue) => describeIssue(issue, data, guide));
  const meant = new Set(findings.map((finding) => finding.meant));
  return findings.filter(({ rule, path }) => rule !== "study/missing-key" || !meant.has(path));
}

function describeIssue(issue: z.core.$ZodIssue, data: YamlData, guide: KeyGuide): Finding[] {
  const path = issue.path.map(String).join(".");
  const value = findValue(data.value, issue.path);
  if (issue.code === "unrecognized_keys") return issue.keys.map((key) => unknownKey(path, key, data, guide));
  if (value === undefined) return [missingKey(path, guide)];
  if (value === null || value === "") return [noValue(path, guide)];
  switch (issue.code) {
    case "invalid_type":
      return [wrongType(path, issue.expected, value, data, guide)];
    case "too_small":
      return [outside(path, `at least ${issue.minimum}`, value, guide)];
    case "too_big":
      if (issue.origin === "number") return [outside(path, `at most ${issue.maximum}`, value, guide)];
      return [tooLong(path, Number(issue.maximum), value)];
    case "invalid_value":
      return [unknownWord(path, issue.values.map(String), value)];
    default:
      throw new RangeError(`the schema found ${issue.code} at ${path}, which no message covers`);
  }
}

function unknownKey(parent: string, key: string, data: YamlData, guide: KeyGuide): Finding {
  const path = parent === "" ? key : `${parent}.${key}`;
  const known = keysUnder(guide, parent);
  const present = new Set(
    Object.keys((findValue(data.value, parent === "" ? [] : parent.split(".")) ?? {}) as object),
  );
  const near = findNearest(key, known);
  const home = parent === "" ? findHome(key, guide) : undefined;
  const hint =
    near !== undefined
      ? present.has(near)
        ? `“${near}” is there already; keep one of the two.`
        : `Type “${near}”.`
      : (home ?? `The keys here are: ${known.join(", ")}.`);
  const owner = parent === "" ? guide.whole : capital(labelOf(parent));
  return {
    rule: "study/unknown-key",
    path,
    on: "key",
    reason: `${owner} has no key ${quoteText(key)}.`,
    hint,
    ...(near === undefined ? {} : { meant: parent === "" ? near : `${parent}.${near}` }),
  };
}

/** Returns where a key belongs that stands at the top and should stand further in, or undefined. */
function findHome(key: string, guide: KeyGuide): string | undefined {
  const inner = Object.keys(guide.examples).filter((path) => /^[^.]+\.[^.*]+$/.test(path));
  const leaf = findNearest(
    key,
    inner.map((path) => path.split(".")[1] ?? ""),
  );
  const home = inner.find((path) => path.endsWith(`.${leaf}`));
  return home === undefined ? undefined : `Type “${leaf}”, under ${quoteText(home.split(".")[0] ?? "")}.`;
}

function keysUnder(guide: KeyGuide, parent: string): string[] {
  const prefix = parent === "" ? "" : `${parent.replace(/(^|\.)\d+(?=\.|$)/g, "$1*")}.`;
  return Object.keys(guide.examples)
    .filter((path) => path.startsWith(prefix))
    .map((path) => path.slice(prefix.length))
    .filter((name) => !name.includes(".") && name !== "*" && name !== "");
}

function missingKey(path: string, guide: KeyGuide): Finding {
  const parent = path.includes(".") ? capital(labelOf(path.slice(0, path.lastIndexOf(".")))) : guide.whole;
  const example = exampleOf(guide, path);
  return {
    rule: "study/missing-key",
    path,
    on: "parent",
    reason: `${parent} needs ${labelOf(path)}, and it is not there.`,
    ...(example === undefined ? {} : { hint: `Add a line, for example: ${example}` }),
  };
}

function noValue(path: string, guide: KeyGuide): Finding {
  const example = exampleOf(guide, path);
  return {
    rule: "study/no-value",
    path,
    on: "key",
    reason: `${capital(labelOf(path))} is empty.`,
    hint:
      example === undefined
        ? "Fill it in, or delete the line."
        : `Fill it in, or delete the line. For example: ${example}`,
  };
}

function wrongType(path: string, expected: string, value: unknown, data: YamlData, guide: KeyGuide): Finding {
  const typed = data.typed.get(path);
  const key = path.split(".").at(-1) ?? "";
  const example = exampleOf(guide, path);
  let hint = example === undefined ? undefined : `Type, for example: ${example}`;
  if (expected === "string" && typed !== undefined) {
    const lead = /^\d+$/.test(key) ? "" : `${key}: `;
    if (key !== "date") hint = `Put it in quotes: ${lead}"${asColour(path, typed) ?? typed}"`;
  }
  if (expected === "array" && typeof value === "string") hint = `Put it in brackets: ${key}: [${value}]`;
  return {
    rule: "study/wrong-type",
    path,
    on: "value",
    reason: `${capital(labelOf(path))} is ${nameValue(value, typed)}; it must be ${nameExpected(expected)}.`,
    ...(hint === undefined ? {} : { hint }),
  };
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

function nameExpected(expected: string): string {
  if (expected === "array") return "a list";
  if (expected === "object" || expected === "record") return "a group of keys";
  return expected === "string" ? "text" : `a ${expected}`;
}

function outside(path: string, bound: string, value: unknown, guide: KeyGuide): Finding {
  const example = exampleOf(guide, path);
  const reason = `${capital(labelOf(path))} is ${String(value)}; it must be ${bound}.`;
  const hint = example === undefined ? {} : { hint: `Type, for example: ${example}` };
  return { rule: "study/out-of-range", path, on: "value", reason, ...hint };
}

function tooLong(path: string, maximum: number, value: unknown): Finding {
  const isList = Array.isArray(value);
  const size = isList ? value.length : String(value).length;
  const unit = isList ? "items" : "characters";
  const reason = `${capital(labelOf(path))} has ${size} ${unit}; it may have ${maximum}.`;
  return {
    rule: "study/too-long",
    path,
    on: "value",
    reason,
    hint: isList ? "Keep the most telling ones." : "Shorten it; the prose has room for more.",
  };
}

function unknownWord(path: string, words: readonly string[], value: unknown): Finding {
  const near = findNearest(String(value), words);
  const reason = `${capital(labelOf(path))} is ${quoteText(String(value))}; it must be one of: ${words.join(", ")}.`;
  const hint = near === undefined ? {} : { hint: `Type “${near}”.` };
  return { rule: "study/unknown-word", path, on: "value", reason, ...hint };
}

function findValue(value: unknown, path: readonly PropertyKey[]): unknown {
  let found = value;
  for (const key of path) {
    if (typeof found !== "object" || found === null || !Object.hasOwn(found, key)) return undefined;
    found = (found as Record<PropertyKey, unknown>)[key];
  }
  return found;
}
