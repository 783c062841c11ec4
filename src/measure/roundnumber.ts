// Floor 4. Figures as files and programs get them: rounded in this one place, so that each version of the engine writes the
// same digits.

/** What arithmetic leaves of a whole number. */
const noise = 1e-11;
/** Significant digits of a figure, and of one that so few would make whole. Far more than what is measured is good for. */
const [digits, mostDigits] = [8, 12];

/**
 * Returns a figure with eight significant digits, or twelve where eight would make a whole number of one that is none: grades
 * begin at whole numbers. What is whole but for 1e-11 is whole.
 *
 * The engine's `**`, `Math.atan2`, `Math.log` and the like are approximations that may differ in their last digit from one
 * version to the next. Source: ECMAScript 2024, section 21.3, Note 1.
 */
export function roundFigure(value: number): number {
  const whole = Math.round(value) + 0; // No −0.
  if (!Number.isFinite(value) || Math.abs(value - whole) <= noise) return whole;
  const rounded = Number(value.toPrecision(digits));
  return Number.isInteger(rounded) ? Number(value.toPrecision(mostDigits)) : rounded;
}

/** Returns `value` as JSON, two spaces a level, every figure rounded. */
export function formatJson(value: unknown): string {
  return JSON.stringify(
    value,
    (_, part: unknown) => (typeof part === "number" ? roundFigure(part) : part),
    2,
  );
}
