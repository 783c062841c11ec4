// Floor 5. The rules of a study that no type can say: colours, dates, file names, and keys that need each other.
import { isOwnName } from "../../colour/colourname.ts";
import { parseColour } from "../../colour/colourtext.ts";
import { quoteText } from "../../problem/quote.ts";
import { checkCurly } from "../yaml/curlyquote.ts";
import { isCutOff } from "../yaml/cutvalue.ts";
import { capital, type Finding, labelOf, wrong } from "../yaml/finding.ts";
import { checkAnswerLink } from "./answerkey.ts";
import { findDateFault } from "./date.ts";
import { checkDecision } from "./decisionrule.ts";
import { checkInvisible } from "./invisiblevalue.ts";
import { checkLanguage } from "./languagetag.ts";
import { findLicenceFault } from "./licence.ts";
import { checkNames, checkPart } from "./namerule.ts";
import { checkMeant, checkScripts } from "./namesense.ts";
import { parseOriginal } from "./original.ts";
import { checkPlaceholders } from "./placeholder.ts";
import { checkShow } from "./showstep.ts";
import { describeUnknownColour } from "./unknowncolour.ts";

type Raw = Readonly<Record<string, unknown>>;

/**
 * Returns what is wrong with the values of a study's front matter, as read from YAML. Values of the wrong type are
 * passed over: the schema reports them.
 */
export function checkStudy(raw: Raw, palette: ReadonlyMap<string, string>): Finding[] {
  const changes = [
    ["change", raw.change] as const,
    ...listOf(raw.options).map((item, i) => [`options.${i}`, item] as const),
  ];
  const own = isRaw(raw.names) ? Object.values(raw.names).filter(isText) : [];
  const words = [...own.map((name) => name.trim()), ...palette.keys()];
  return [
    ...checkInvisible(raw),
    ...checkScripts(raw),
    ...checkCurly(raw),
    ...checkPlaceholders(raw),
    ...(isRaw(raw.names) ? checkNamed(raw.names) : []),
    ...checkOriginal(raw.original),
    ...changes.flatMap(([path, change]) => checkChange(path, change, words)),
    ...checkRepeated(raw),
    ...checkFocus(raw.focus),
    ...checkDecision(raw),
    ...listOf(raw.answers).flatMap((answer, index) =>
      isRaw(answer) ? checkAnswer(answer, `answers.${index}.`) : [],
    ),
    ...checkDate(raw.date),
    ...(isText(raw.language) ? checkLanguage(raw.language) : []),
    ...listOf(raw.revised).flatMap((one, index) =>
      isRaw(one) ? checkDate(one.date, `revised.${index}.date`) : [],
    ),
    ...(isRaw(raw.decided) ? checkDate(raw.decided.date, "decided.date") : []),
    ...checkShow(raw.show, listOf(raw.options).length),
    ...checkLicence(raw.credit),
    ...listOf(raw.tags).flatMap((tag, index) => checkTag(`tags.${index}`, tag)),
    ...listOf(raw.authors).flatMap((author, index) => checkAuthor(`authors.${index}`, author)),
  ];
}

/**
 * Returns what is wrong with a colour that has to be one: a CSS colour without transparency. `names` are allowed
 * too, where there are any.
 */
export function checkColour(path: string, text: string, names: readonly string[] = []): Finding[] {
  if (names.some((name) => name.toLowerCase() === text.toLowerCase())) return [];
  const colour = parseColour(text);
  const key = path.split(".").at(-1) ?? "";
  if (colour && colour.alpha01 === 1) return [];
  if (colour) {
    const reason = `${capital(labelOf(path))} is ${quoteText(text)}, which is translucent; a flag's colour is opaque.`;
    return wrong("study/wrong-colour", path, {
      reason,
      hint: `Type the opaque colour: ${key}: "${colour.hex}"`,
    });
  }
  if (isCutOff(text)) {
    const reason = `${quoteText(text)} is the beginning of a colour: in braces, YAML goes on to another key at the comma.`;
    const hint = `Put the whole colour in quotes, for example: ${key}: "rgb(230, 180, 54)"`;
    return wrong("study/wrong-colour", path, { reason, hint });
  }
  return wrong("study/wrong-colour", path, describeUnknownColour(text, names));
}

/** What ends in a word of ours (`dark yellow`, `lighter red`) may be what `try` offers: only the drawing can tell. */
function checkChange(path: string, change: unknown, words: readonly string[]): Finding[] {
  if (!isRaw(change)) return [];
  const { replace, with: next } = change;
  const isOurs = isText(next) && isOwnName(next.trim().toLowerCase());
  return [
    ...checkDrawingColour(`${path}.replace`, replace),
    ...(isText(next) && !isOurs ? checkColour(`${path}.with`, next, words) : []),
    ...checkPart(path, change),
  ];
}

/** What is no name, or is one twice, says nothing of its colour either. */
function checkNamed(names: Raw): Finding[] {
  const wrong = checkNames(names);
  return [
    ...wrong,
    ...checkMeant(names).filter(({ path }) => wrong.every((finding) => finding.path !== path)),
  ];
}

/** An option is another change than the study's. */
function checkRepeated(raw: Raw): Finding[] {
  const own = isRaw(raw.change) ? nameChange(raw.change) : undefined;
  return listOf(raw.options).flatMap((option, index): Finding[] =>
    own !== undefined && isRaw(option) && nameChange(option) === own
      ? wrong(
          "study/option-repeated",
          `options.${index}`,
          {
            reason: `${capital(labelOf(`options.${index}`))} is the change of the study itself.`,
            hint: "Delete it, or type another colour.",
          },
          { severity: "warning" },
        )
      : [],
  );
}

/** Two changes of one name do the same. Undefined where a colour is missing or of the wrong type. */
function nameChange({ replace, with: next, only = "" }: Raw): string | undefined {
  if (!isText(replace) || !isText(next)) return undefined;
  const colours = [replace, next].map((text) => parseColour(text)?.hex ?? text.toLowerCase());
  return JSON.stringify([...colours, only]);
}

/** A colour of the drawing may be a name that only the drawing knows, so only what is clearly a code is checked. */
function checkDrawingColour(path: string, value: unknown): Finding[] {
  return isText(value) && /^#|[(]|^(?:[0-9a-f]{3}|[0-9a-f]{6})$/i.test(value) ? checkColour(path, value) : [];
}

function checkFocus(focus: unknown): Finding[] {
  if (!isRaw(focus)) return [];
  const has = ["colour", "select"].filter((key) => focus[key] !== undefined);
  if (has.length === 0 && Object.keys(focus).length > 0) return []; // The schema names the wrong key.
  if (has.length === 1) return checkDrawingColour("focus.colour", focus.colour);
  const reason =
    has.length === 0
      ? "“focus” names neither a colour nor a selector."
      : "“focus” has both “colour” and “select”, and only one of them can be followed.";
  const [select, colour] = [focus.select, focus.colour].map((value, index) =>
    JSON.stringify(isText(value) ? value : ["#wheel", "#7a1020"][index]),
  );
  return wrong(
    "study/focus",
    "focus",
    { reason, hint: `Type one of them: focus: { select: ${select} } or focus: { colour: ${colour} }` },
    { on: "key" },
  );
}

/** Returns what is wrong with an answer: in a study under its path with a dot behind, else in a file of its own. */
export function checkAnswer({ by, date, link, reply }: Raw, under = ""): Finding[] {
  return [
    ...checkAuthor(`${under}by`, by),
    ...checkDate(date, `${under}date`),
    ...(isRaw(reply) ? checkDate(reply.date, `${under}reply.date`) : []),
    ...checkAnswerLink(`${under}link`, link),
  ];
}

/** Returns what is wrong with a date, where it is text. */
export function checkDate(date: unknown, path = "date"): Finding[] {
  const fault = isText(date) ? findDateFault(date) : undefined;
  return fault === undefined ? [] : wrong("study/wrong-date", path, fault);
}

function checkLicence(credit: unknown): Finding[] {
  if (!isRaw(credit) || !isText(credit.licence)) return [];
  const fault = findLicenceFault(credit.licence);
  const path = "credit.licence";
  return fault === undefined ? [] : wrong("study/licence", path, fault, { severity: "warning" });
}

function checkOriginal(original: unknown): Finding[] {
  if (!isText(original)) return [];
  const parsed = parseOriginal(original);
  return "reason" in parsed ? wrong("study/original-path", "original", parsed) : [];
}

function checkTag(path: string, tag: unknown): Finding[] {
  if (!isText(tag) || /^[\p{L}\p{N}][\p{L}\p{M}\p{N} '’-]*$/u.test(tag)) return [];
  const plain = tag.replace(/[^\p{L}\p{M}\p{N} '’-]+/gu, " ").trim();
  const reason = `The tag ${quoteText(tag)} has characters that a tag cannot have.`;
  const hint =
    plain === ""
      ? "Use letters, digits, spaces and hyphens."
      : `Use letters, digits, spaces and hyphens: ${plain}`;
  return wrong("study/wrong-tag", path, { reason, hint });
}

/** Returns what is wrong with the name of a person, where it is text. */
export function checkAuthor(path: string, author: unknown): Finding[] {
  if (!isText(author) || /[\p{L}\p{N}]/u.test(author)) return [];
  const reason = `The author ${quoteText(author)} has no letter in the name.`;
  return wrong("study/wrong-author", path, { reason, hint: "Type the name: authors: [Ines Valcourt]" });
}

/** Whether something is written there. */
export function isText(value: unknown): value is string {
  return typeof value === "string" && value !== "";
}

/** Whether it has keys of its own. */
export function isRaw(value: unknown): value is Raw {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** Returns the items of a list, none of anything else. */
export function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}
