// Floor 5. What may stand under `names` and in `part`: a colour, and a name of its own that pages and figures can carry.
import { parseColour } from "../../colour/colourtext.ts";
import { quoteText } from "../../problem/quote.ts";
import { type Finding, wrong } from "../yaml/finding.ts";
import { describeUnknownColour } from "./unknowncolour.ts";

type Raw = Readonly<Record<string, unknown>>;

/** A name begins with a letter; a stroke would part it in the name of an edge. */
const name = /^\p{L}[\p{L}\p{M}\p{N} '’-]*$/u;

/**
 * Returns what is wrong with `names`, as read from YAML. Values of the wrong type are the schema's to report.
 *
 * Problems: study/wrong-colour, study/wrong-name, study/name-twice.
 */
export function checkNames(names: Raw): Finding[] {
  return [
    ...Object.entries(names).flatMap(([colour, value]) => checkEntry(colour, value)),
    ...checkTwice(names),
  ];
}

/** Returns what is wrong with the `part` of a change at `path`. Problems: study/wrong-name, study/part-alone. */
export function checkPart(path: string, { part, only }: Raw): Finding[] {
  if (typeof part !== "string" || part === "") return [];
  const findings = checkName(`${path}.part`, part);
  if (only !== undefined) return findings;
  const reason = `“part” says what ${quoteText(part)} is called, and no “only” says which part of the drawing that is.`;
  const hint = `Add the shapes: only: "#wheel"\nOr, for a colour of the whole flag: names: { "#7a1020": ${part} }`;
  return [...findings, { rule: "study/part-alone", path: `${path}.part`, on: "key", reason, hint }];
}

/** What a page calls a colour moves with the drawing; its hex is the colour itself. */
const askForHex = 'Type the colour itself, in hex and in quotes: names: { "#1b2a5c": navy }';

function checkEntry(key: string, value: unknown): Finding[] {
  const path = `names.${key}`;
  const turned = typeof value === "string" ? parseColour(value)?.hex : undefined;
  if (turned !== undefined && typeof value === "string" && value.startsWith("#")) {
    const reason = `${quoteText(value)} is a colour and no name.`;
    return wrong("study/wrong-name", path, {
      reason,
      hint: `Turn them round: ${JSON.stringify(turned)}: ${key}`,
    });
  }
  const colour = parseColour(key);
  const findings = typeof value === "string" && value !== "" ? checkName(path, value) : [];
  if (colour?.alpha01 === 1) return findings;
  const { reason, hint } =
    colour === undefined
      ? { ...describeUnknownColour(key, []), ...(key.startsWith("#") ? {} : { hint: askForHex }) }
      : {
          reason: `${quoteText(key)} is translucent; a flag's colour is opaque.`,
          hint: `Type: ${JSON.stringify(colour.hex)}`,
        };
  return [{ rule: "study/wrong-colour", path, on: "key", reason, hint }, ...findings];
}

function checkName(path: string, text: string): Finding[] {
  if (name.test(text.trim())) return [];
  const reason = `${quoteText(text)} cannot be the name of a colour or a part.`;
  const hint = "A name begins with a letter and has letters, digits, spaces and hyphens: navy";
  return [{ rule: "study/wrong-name", path, on: "value", reason, hint }];
}

/** Two colours of one name could not be told apart; two names of one colour would not agree. */
function checkTwice(names: Raw): Finding[] {
  const said = new Map<string, string>();
  return Object.entries(names).flatMap(([key, value]): Finding[] => {
    const hex = parseColour(key)?.hex;
    if (hex === undefined || typeof value !== "string" || value === "") return [];
    const word = `called ${value.trim().toLowerCase()}`;
    const [other, before] = [said.get(hex), said.get(word)];
    said.set(hex, value).set(word, key);
    const base = { rule: "study/name-twice", path: `names.${key}` } as const;
    if (other !== undefined)
      return [
        {
          ...base,
          on: "key",
          reason: `${hex} has two names, ${quoteText(other)} and ${quoteText(value)}.`,
          hint: "Keep one of them.",
        },
      ];
    if (before === undefined) return [];
    const reason = `${quoteText(before)} and ${quoteText(key)} are both called ${quoteText(value)}.`;
    return [{ ...base, on: "value", reason, hint: `Give each a name of its own: dark ${value.trim()}` }];
  });
}
