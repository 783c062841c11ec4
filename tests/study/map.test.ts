import { expect, test } from "vitest";
import { labelsOf, renderMap, toSeenLines } from "../../src/study/map.ts";
import { readDrawing } from "../../src/svg/gate.ts";
import { resolveDrawing } from "../../src/svg/instance.ts";
import { findPaints } from "../../src/svg/paint.ts";

test("renderMap: labels are the paints in their order, from 1", async () => {
	const text =
		'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 3 2"><rect width="2" height="2" fill="red"/><rect x="1" width="1" height="2" fill="blue"/></svg>';
	const { value } = readDrawing("a.svg", new TextEncoder().encode(text));
	if (value === undefined) throw new Error("the drawing must be right");
	const map = await renderMap(findPaints(resolveDrawing(value)), {
		width: 3,
		height: 2,
	});
	expect([...map.labels]).toEqual([1, 2, 0, 1, 2, 0]);
});

test("labels and paints count from 1 and from 0", () => {
	expect(
		toSeenLines([{ a: 1, b: 3, points: [], length: 7, focusShare: 0.5 }]),
	).toEqual([{ a: 0, b: 2, length: 7, focusShare: 0.5 }]);
	expect(labelsOf([0, 0, 2])).toEqual([0, 1, 1, 3]);
});
