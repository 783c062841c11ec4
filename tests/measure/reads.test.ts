import { describe, expect, test } from "vitest";
import { distanceSteps, measureReadsTo } from "../../src/measure/reads.ts";
import type { FocusStep, TableFocus } from "../../src/measure/table.ts";

/** A focus with what is left of it at 10, 20, 40 …, and at each step edges of these lengths beside it. */
const focusOf = (
	remaining: readonly number[],
	lengths: readonly number[] = [1],
): TableFocus => ({
	source: "found",
	share: 0.1,
	steps: remaining.map(
		(left, index): FocusStep => ({
			distance: distanceSteps[index] ?? 0,
			remaining: left,
			edges: lengths.map((length, at) => ({
				a: 0,
				b: at + 1,
				length,
				focusLength: length,
			})),
		}),
	),
});

const strong = (): number => 80;

describe("measureReadsTo", () => {
	test("steps double from 10 to 320", () => {
		expect(distanceSteps).toEqual([10, 20, 40, 80, 160, 320]);
	});

	test.each([
		["all the way", [1, 1, 1, 1, 1, 1], 320],
		["exactly half is left", [1, 1, 0.5, 0.49], 40],
		["gone from 20 on", [1, 0.2], 10],
		["gone at once", [0.49], null],
		// The first failure counts, whatever comes after.
		["back again further away", [1, 0.4, 1, 1, 1, 1], 10],
	])("%s", (_, remaining, readsTo) => {
		expect(measureReadsTo(focusOf(remaining), strong)).toBe(readsTo);
	});

	test("two thirds of the length must be clear", () => {
		const all = [1, 1, 1, 1, 1, 1];
		// 2 of 3 is two thirds; 1.9 of 3 is less.
		expect(
			measureReadsTo(focusOf(all, [2, 1]), ({ b }) => (b === 1 ? 45 : 44)),
		).toBe(320);
		expect(
			measureReadsTo(focusOf(all, [1.9, 1.1]), ({ b }) => (b === 1 ? 45 : 44)),
		).toBeNull();
	});

	test("a merged edge counts as 0, two paints that are one have no edge", () => {
		const all = [1, 1, 1, 1, 1, 1];
		expect(
			measureReadsTo(focusOf(all, [2, 2]), ({ b }) => (b === 1 ? 80 : 0)),
		).toBeNull();
		expect(
			measureReadsTo(focusOf(all, [2, 2]), ({ b }) => (b === 1 ? 80 : null)),
		).toBe(320);
	});

	test("no focus, nothing to read", () => {
		expect(
			measureReadsTo({ source: "none", share: 0, steps: [] }, strong),
		).toBeNull();
	});
});
