// Floor 9. Drawings that we wrote, read again as strictly as those of others, and rendered: each once for all files that show it.
import { type Problem, report } from "../../problem/problem.ts";
import type { Picture } from "../../regions/eyeblur.ts";
import { readDrawing } from "../../svg/gate/sanitise.ts";
import type { Drawing } from "../../svg/tree.ts";
import { describeDrawing, writeRoot } from "../../svg/writesvg.ts";
import type { Crop } from "../../views/edge/linepiece.ts";
import type { Size } from "./paper.ts";
import { renderDrawing } from "./pixelpicture.ts";

/** A drawing that cannot be published. */
export class RefusedError extends Error {
  readonly problem: Problem;

  constructor(problem: Problem) {
    super(problem.reason);
    this.problem = problem;
  }
}

export class Easel {
  private readonly drawings = new Map<string, Drawing>();
  private readonly pictures = new Map<string, Promise<Picture>>();

  /** Reads a drawing. Throws RefusedError where it is none that may be published. */
  read(svg: string): Drawing {
    const known = this.drawings.get(svg);
    if (known !== undefined) return known;
    const { value, problems } = readDrawing("", Buffer.from(svg, "utf8"));
    const [problem] = problems.filter(({ severity }) => severity === "error");
    if (value === undefined) throw new RefusedError(refuse(problem?.reason ?? "", problem?.hint));
    this.drawings.set(svg, value);
    return value;
  }

  /** Renders a drawing. Throws RefusedError where it cannot be read or rendered. */
  render(svg: string, size: Size): Promise<Picture> {
    const key = `${size.width} ${size.height} ${svg}`;
    const known = this.pictures.get(key) ?? guard(renderDrawing(this.read(svg), size));
    this.pictures.set(key, known);
    return known;
  }
}

/** A part of a drawing: the same shapes through a smaller window, with `note` in its metadata. */
export function cropDrawing(drawing: Drawing, { x, y, width, height }: Crop, note?: string): string {
  const { viewBox } = drawing;
  const inUnits = (heights: number) => Number((heights * viewBox.height).toPrecision(8));
  const window = [viewBox.x + inUnits(x), viewBox.y + inUnits(y), inUnits(width), inUnits(height)];
  const { root } = note === undefined ? drawing : describeDrawing(drawing, note);
  return writeRoot(root, { viewBox: window.join(" ") });
}

async function guard<T>(work: Promise<T>): Promise<T> {
  try {
    return await work;
  } catch (error) {
    throw new RefusedError(refuse(error instanceof Error ? error.message : String(error)));
  }
}

function refuse(reason: string, hint = "Simplify the drawing, and type: counterchange check"): Problem {
  return report("study/not-published", "", {
    reason: `The drawing, as it would be published, was refused. ${reason}`,
    hint,
  });
}
