// Floor 5. A date as an author types it → nothing to say, or what is wrong with it and how it is written here.
import type { Advice } from "../../problem/problem.ts";
import { quoteText } from "../../problem/quote.ts";

const months = [
  "january",
  "february",
  "march",
  "april",
  "may",
  "june",
  "july",
  "august",
  "september",
  "october",
  "november",
  "december",
];

/** No clock that is right says less: one that was never set must not refuse the dates of today. */
const leastNow = Date.UTC(2026, 0, 1);
/** A leap year, in milliseconds: a day more than most years, for clocks on both sides of the date line. */
const longestYear = 366 * 24 * 3600 * 1000;

/**
 * Returns what is wrong with `text` as a date, or undefined where it is a day of the calendar as `2026-04-02`, at most a year
 * after `now` (milliseconds since 1970).
 *
 * The clock decides nothing else: once a date is accepted it always is, and the pages of a gallery stay the same.
 *
 * What is written otherwise comes back turned round: `02.04.2026` is day, month, year wherever points stand between; with
 * slashes both readings are offered, unless the calendar leaves only one.
 */
export function findDateFault(text: string, now = Date.now()): Advice | undefined {
  const [, typedYear, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? [];
  if (typedYear === undefined || month === undefined || day === undefined) {
    const proposed = proposeDates(text).map((date) => `date: ${date}`);
    return {
      reason: `“date” is ${quoteText(text)}; a date is year, month and day with hyphens between.`,
      hint: proposed.length === 0 ? "Type, for example: date: 2026-04-02" : `Type: ${proposed.join(" or ")}`,
    };
  }
  if (isDay(Number(typedYear), Number(month), Number(day))) return findLate(text, now);
  return {
    reason: `“date” is ${quoteText(text)}, and the calendar has no such day.`,
    hint: describeMonth(Number(typedYear), Number(month)),
  };
}

/** A day far ahead would lead every list and feed for as long. */
function findLate(text: string, now: number): Advice | undefined {
  if (Date.parse(`${text}T00:00:00Z`) <= Math.max(now, leastNow) + longestYear) return undefined;
  return {
    reason: `“date” is ${quoteText(text)}, which is more than a year ahead.`,
    hint: "Type the day on which the study was proposed, for example: date: 2026-04-02",
  };
}

/** Returns the days that `text` may mean, as they are written here: none, one or two. */
function proposeDates(text: string): readonly string[] {
  const numbers = text.match(/\d+/g) ?? [];
  const word = /\p{L}{3,}/u.exec(text)?.[0]?.toLowerCase();
  const named = word === undefined ? 0 : months.findIndex((month) => month.startsWith(word)) + 1;
  const year = numbers.find((each) => each.length === 4);
  const rest = numbers.filter((each) => each !== year).map(Number);
  const [first, second] = rest;
  if (year === undefined || first === undefined || rest.length > 2) return [];
  if (named > 0) return rest.length === 1 ? write(year, [[named, first]]) : [];
  if (word !== undefined || second === undefined) return [];
  if (numbers[0] === year) return write(year, [[first, second]]);
  if (text.includes(".")) return write(year, [[second, first]]);
  return write(year, [
    [first, second],
    [second, first],
  ]);
}

function write(year: string, days: readonly (readonly [month: number, day: number])[]): readonly string[] {
  const two = (number: number): string => String(number).padStart(2, "0");
  const real = days.filter(([month, day]) => isDay(Number(year), month, day));
  return [...new Set(real.map(([month, day]) => `${year}-${two(month)}-${two(day)}`))];
}

function isDay(year: number, month: number, day: number): boolean {
  const date = new Date(Date.UTC(year, month - 1, day));
  return year >= 1000 && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
}

function describeMonth(year: number, month: number): string {
  const name = months[month - 1];
  if (name === undefined || year < 1000) return "Type year, month and day, for example: date: 2026-04-02";
  const days = new Date(Date.UTC(year, month, 0)).getUTCDate();
  return `${name.charAt(0).toUpperCase()}${name.slice(1)} ${year} has ${days} days: the month is the number in the middle.`;
}
