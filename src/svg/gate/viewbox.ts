// Floor 2, part of step 2. The size of a drawing: from viewBox, else from width and height in pixels.

import { readNumber } from "../style/attributevalue.ts";
import { readAttribute } from "../style/selector.ts";
import type { SvgElement, ViewBox } from "../tree.ts";
import { limit } from "./drawinglimit.ts";
import type { Reporter } from "./drawingreport.ts";
import { readViewBox } from "./geometry.ts";

/**
 * Returns the drawing's rectangle in user units.
 *
 * Problems: svg/viewbox (missing, not four numbers, not positive, out of range, longer than 20 to 1).
 */
export function findViewBox(root: SvgElement, reporter: Reporter): ViewBox | undefined {
  const written = root.attributes["viewBox"];
  const place = root.attributePlaces["viewBox"] ?? root.place;
  const refuse = (reason: string, hint: string): undefined => {
    reporter.error("svg/viewbox", place, reason, hint);
    return undefined;
  };
  const found = written === undefined ? fromSize(root) : readViewBox(written);
  if (found === undefined) {
    return written === undefined
      ? refuse(
          "The drawing does not say how large it is: <svg> has no viewBox, and no width and height in pixels.",
          'Write on <svg> the width and height that the shapes fill, such as viewBox="0 0 900 600".',
        )
      : refuse(
          `viewBox=${JSON.stringify(written.slice(0, 60))} is not four numbers.`,
          'Write four plain numbers, such as viewBox="0 0 900 600".',
        );
  }
  const { width, height } = found;
  if (width <= 0 || height <= 0)
    return refuse(
      "The drawing has no area: its viewBox is empty or negative.",
      "Give viewBox a positive width and height.",
    );
  if (Math.min(width, height) < limit.viewBoxSideMin || Math.max(width, height) > limit.viewBoxSideMax) {
    return refuse(
      `The viewBox is ${width} by ${height}; sides from ${limit.viewBoxSideMin} to ${limit.viewBoxSideMax} can be drawn.`,
      "Scale the drawing to a usual size, such as 900 by 600.",
    );
  }
  if (Math.max(width / height, height / width) > limit.aspect) {
    return refuse(
      `The drawing is more than ${limit.aspect} times as long as it is wide.`,
      "Check the viewBox: no flag is this long.",
    );
  }
  return found;
}

function fromSize(root: SvgElement): ViewBox | undefined {
  // As they are written: who gives millimetres has rarely drawn in pixels.
  const [width, height] = ["width", "height"].map((name) =>
    parsePixels(root.author === undefined ? undefined : readAttribute(root.author, name)),
  );
  return width === undefined || height === undefined ? undefined : { x: 0, y: 0, width, height };
}

function parsePixels(text: string | undefined): number | undefined {
  const number = readNumber(text?.trim().replace(/px$/, "") ?? "");
  return number === undefined ? undefined : Number(number);
}
