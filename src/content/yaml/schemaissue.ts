// Floor 5. Issues of a schema → findings in plain words, each with what to type instead.
import type { z } from "zod";
import { findNearest } from "../../problem/knownword.ts";
import { quoteText } from "../../problem/quote.ts";
import { listPieces } from "./cutvalue.ts";
import { capital, exampleOf, type Finding, type KeyGuide, keysUnder, labelOf, wrong } from "./finding.ts";
import { describeHomeless, findHome, type Homeless, writeValue } from "./misplacedkey.ts";
import type { YamlData } from "./readyaml.ts";
import { describeKind } from "./wrongtype.ts";

/** Returns what the schema found, one finding for each wrong or missing value and each unknown key. */
export function describeIssues(
  issues: readonly z.core.$ZodIssue[],
  data: YamlData,
  guide: KeyGuide,
): Finding[] {
  const found = issues.flatMap((issue) => describeIssue(issue, data, guide));
  const findings = found.map((finding) => takeForMissing(finding, found));
  const meant = new Set(findings.flatMap(({ meant: one, settles }) => [one, ...(settles ?? [])]));
  const isConsequence = ({ rule, path }: Finding): boolean =>
    (rule === "study/missing-key" || rule === "study/no-value") && meant.has(path);
  return findings.filter((finding) => !isConsequence(finding));
}

/** The one unknown key beside the one key that is missing most likely stands for that. */
function takeForMissing(finding: Finding, all: readonly Finding[]): Finding {
  const parentOf = (path: string) => path.slice(0, Math.max(0, path.lastIndexOf(".")));
  const parent = parentOf(finding.path);
  const listOwn = (rule: string) => all.filter((one) => one.rule === rule && parentOf(one.path) === parent);
  const [missing, ...others] = listOwn("study/missing-key");
  const isAlone = others.length === 0 && listOwn("study/unknown-key").length === 1;
  const isOpen = finding.rule === "study/unknown-key" && !finding.meant && !finding.settles;
  if (!isOpen || !isAlone || missing === undefined) return finding;
  const key = missing.path.slice(parent === "" ? 0 : parent.length + 1);
  return { ...finding, hint: `Type “${key}”, if that is meant; else delete it.`, meant: missing.path };
}

function describeIssue(issue: z.core.$ZodIssue, data: YamlData, guide: KeyGuide): Finding[] {
  const path = issue.path.map(String).join(".");
  const value = findValue(data.value, issue.path);
  if (issue.code === "unrecognized_keys") return unknownKeys(path, issue.keys, data, guide);
  if (value === undefined) return missingKey(path, guide);
  if (value === null || value === "") return noValue(path, guide);
  switch (issue.code) {
    case "invalid_type":
      return [describeKind(path, issue.expected, value, data, guide)];
    case "too_small":
      if (issue.origin === "array") return noValue(path, guide);
      return outside(path, `at least ${issue.minimum}`, value, guide);
    case "too_big":
      if (issue.origin === "number") return outside(path, `at most ${issue.maximum}`, value, guide);
      return tooLong(path, Number(issue.maximum), value);
    case "invalid_value":
      // A group of keys has no text to say, and a list of one word would be told to be that word.
      if (typeof value === "object") return [describeKind(path, "string", value, data, guide)];
      return unknownWord(path, issue.values.map(String), value);
    case "invalid_union": {
      // The choice whose kind the value is; of none, the first.
      const isOfKind = (found: readonly z.core.$ZodIssue[]): boolean =>
        !found.some((inner) => inner.code === "invalid_type" && inner.path.length === 0);
      const chosen = issue.errors.find(isOfKind) ?? issue.errors[0] ?? [];
      return chosen.flatMap((inner) =>
        describeIssue({ ...inner, path: [...issue.path, ...inner.path] }, data, guide),
      );
    }
    default:
      throw new RangeError(`the schema found ${issue.code} at ${path}, which no message covers`);
  }
}

function unknownKeys(parent: string, keys: readonly string[], data: YamlData, guide: KeyGuide): Finding[] {
  const homes = parent === "" ? keys.map((key) => findHome(key, guide)) : [];
  const homeless = homes.filter((home): home is Homeless => home !== undefined);
  const pieces = new Set(listPieces(findValue(data.value, parent === "" ? [] : parent.split("."))));
  const others = keys.filter((key) => !pieces.has(key) && homeless.every(({ typed }) => typed !== key));
  return [
    ...describeHomeless(homeless, data.value),
    ...others.flatMap((key) => unknownKey(parent, key, data, guide)),
  ];
}

/** A line of `begin` put into the list as it is: the change stands in a key of its own there. */
function changeInOption(parent: string, data: YamlData): Finding[] {
  const change = (findValue(data.value, [...parent.split("."), "change"]) ?? {}) as Raw;
  const words = Object.entries(change).map(([name, value]) => `${name}: ${JSON.stringify(value)}`);
  const reason = "An item of “options” is a change by itself, without the word “change”.";
  const settles = ["replace", "with"].map((key) => `${parent}.${key}`);
  const hint = `Type: - { ${words.join(", ")} }`;
  return wrong("study/unknown-key", `${parent}.change`, { reason, hint }, { on: "key", settles });
}

function unknownKey(parent: string, key: string, data: YamlData, guide: KeyGuide): Finding[] {
  const path = parent === "" ? key : `${parent}.${key}`;
  if (/^options\.\d+$/.test(parent) && key === "change") return changeInOption(parent, data);
  const known = keysUnder(guide, parent);
  const siblings = (findValue(data.value, parent === "" ? [] : parent.split(".")) ?? {}) as Raw;
  const near = findNearest(key, known);
  const owner = parent === "" ? guide.whole : capital(labelOf(parent));
  const reason = `${owner} has no key ${quoteText(key)}.`;
  const told = (hint: string, more = {}) =>
    wrong("study/unknown-key", path, { reason, hint }, { on: "key", ...more });
  if (near === undefined) return told(`Delete it, or use one of the keys there are: ${known.join(", ")}.`);
  const meant = parent === "" ? near : `${parent}.${near}`;
  return Object.hasOwn(siblings, near)
    ? told(`“${near}” is there already; keep one of the two.`, { meant })
    : told(proposeKey(near, siblings[key], exampleOf(guide, meant)), { meant });
}

type Raw = Readonly<Record<string, unknown>>;

/** One text where a list belongs comes back in brackets, or the next message would ask for them. */
function proposeKey(near: string, value: unknown, example: string | undefined): string {
  const isList = example?.startsWith(`${near}: [`) === true;
  return isList && typeof value === "string" ? `Type: ${near}: ${writeValue([value])}` : `Type “${near}”.`;
}

function missingKey(path: string, guide: KeyGuide): Finding[] {
  const parent = path.includes(".") ? capital(labelOf(path.slice(0, path.lastIndexOf(".")))) : guide.whole;
  const example = exampleOf(guide, path);
  const reason = `${parent} needs ${labelOf(path)}, and it is not there.`;
  const hint = example === undefined ? {} : { hint: addExample(path, example) };
  return wrong("study/missing-key", path, { reason, ...hint }, { on: "parent" });
}

function addExample(path: string, example: string): string {
  const parent = path.includes(".") ? path.slice(0, path.lastIndexOf(".")) : undefined;
  return parent === undefined
    ? `Add a line, for example: ${example}`
    : `Add to ${labelOf(parent)}, for example: ${example}`;
}

function noValue(path: string, guide: KeyGuide): Finding[] {
  const example = exampleOf(guide, path);
  const hint = `Fill it in, or delete the line.${example === undefined ? "" : ` For example: ${example}`}`;
  return wrong(
    "study/no-value",
    path,
    { reason: `${capital(labelOf(path))} is empty.`, hint },
    { on: "key" },
  );
}

function outside(path: string, bound: string, value: unknown, guide: KeyGuide): Finding[] {
  const example = exampleOf(guide, path);
  const reason = `${capital(labelOf(path))} is ${String(value)}; it must be ${bound}.`;
  const hint = example === undefined ? {} : { hint: `Type, for example: ${example}` };
  return wrong("study/out-of-range", path, { reason, ...hint });
}

function tooLong(path: string, maximum: number, value: unknown): Finding[] {
  const isList = Array.isArray(value);
  const size = isList ? value.length : String(value).length;
  const unit = isList ? "items" : "characters";
  const reason = `${capital(labelOf(path))} has ${size} ${unit}; it may have ${maximum}.`;
  const hint = isList ? "Keep the most telling ones." : "Shorten it; the prose has room for more.";
  return wrong("study/too-long", path, { reason, hint });
}

function unknownWord(path: string, words: readonly string[], value: unknown): Finding[] {
  const text = String(value);
  const near = findNearest(text, words) ?? words.find((word) => word === meanings.get(text.toLowerCase()));
  const key = path.split(".").at(-1) ?? "";
  const reason = `${capital(labelOf(path))} is ${quoteText(text)}; it must be one of: ${words.join(", ")}.`;
  const hint =
    near === undefined ? `Type one of them, for example: ${key}: ${words[1] ?? ""}` : `Type: ${key}: ${near}`;
  return wrong("study/unknown-word", path, { reason, hint });
}

/** What people say for the words of `status`. */
const meanings: ReadonlyMap<string, string> = new Map([
  ["accepted", "adopted"],
  ["approved", "adopted"],
  ["chosen", "adopted"],
  ["rejected", "declined"],
  ["refused", "declined"],
  ["proposed", "open"],
  ["published", "open"],
  ["final", "open"],
  ["retracted", "withdrawn"],
  ["unfinished", "draft"],
  ["wip", "draft"],
]);

function findValue(value: unknown, path: readonly PropertyKey[]): unknown {
  let found = value;
  for (const key of path) {
    if (typeof found !== "object" || found === null || !Object.hasOwn(found, key)) return undefined;
    found = (found as Record<PropertyKey, unknown>)[key];
  }
  return found;
}
