// Floor 6. What an author wrote about a drawing (a change, a focus) → the colours and shapes that are meant.
import type { Hex } from "../colour/colour.ts";
import type { NamedColour } from "../colour/colourname.ts";
import { keyed, resolveReplace, resolveWith, type Vocabulary } from "../content/study/colourword.ts";
import type { Change, Focus } from "../content/study/study.ts";
import { hasError, type Outcome, report } from "../problem/problem.ts";
import type { Instance, ResolvedDrawing } from "../svg/instance.ts";
import { mapColours } from "../svg/recolour.ts";
import type { Inspection } from "./drawing/inspect.ts";
import type { NamedFocus } from "./drawing/viewing.ts";
import { resolveSelector } from "./resolveselector.ts";

export interface PlannedChange {
  readonly replace: Hex;
  readonly with: Hex;
  /** What the author calls the colour of `with`, where that is no code. */
  readonly called?: string;
  readonly only?: ReadonlySet<Instance>;
}

/**
 * Resolves a change. `colours` are those of the drawing.
 *
 * Problems: those of resolveReplace, resolveWith and resolveSelector; study/nothing-changes.
 */
export function planChange(
  resolved: ResolvedDrawing,
  colours: readonly NamedColour[],
  change: Change,
  words: Vocabulary,
): Outcome<PlannedChange> {
  const replace = resolveReplace(
    change.replace,
    colours,
    keyed("change.replace"),
    words.palette,
    change.with,
  );
  const others = colours.filter(({ hex }) => hex !== replace.hex);
  const next = resolveWith(change.with, words, keyed("change.with"), others, replace.hex);
  const only =
    change.only === undefined
      ? {}
      : resolveSelector(resolved, change.only, keyed("change.only"), replace.hex);
  const problems = [replace.problem, next.problem, only.problem].filter((problem) => problem !== undefined);
  if (replace.hex === undefined || next.hex === undefined || hasError(problems))
    return { value: undefined, problems };
  if (replace.hex === next.hex) {
    problems.push(
      report("study/nothing-changes", keyed("change.with"), {
        reason: `The change replaces ${replace.hex} by itself, so nothing would change.`,
        hint: "Choose another colour to put in its place.",
      }),
    );
    return { value: undefined, problems };
  }
  return {
    value: {
      replace: replace.hex,
      with: next.hex,
      ...(next.called === undefined ? {} : { called: next.called }),
      ...(only.instances === undefined ? {} : { only: only.instances }),
    },
    problems,
  };
}

/** Resolves a named focus. Problems: those of resolveReplace and resolveSelector. */
export function planFocus(
  resolved: ResolvedDrawing,
  colours: readonly NamedColour[],
  focus: Focus,
  palette: Vocabulary["palette"],
): Outcome<NamedFocus> {
  if ("colour" in focus) {
    const { hex, problem } = resolveReplace(focus.colour, colours, keyed("focus.colour"), palette);
    return {
      value: hex === undefined ? undefined : { colour: hex },
      problems: problem === undefined ? [] : [problem],
    };
  }
  const { instances, problem } = resolveSelector(resolved, focus.select, keyed("focus.select"));
  return {
    value: instances === undefined ? undefined : { select: instances },
    problems: problem === undefined ? [] : [problem],
  };
}

/**
 * Colours that can be replaced, with all names that they have: those the drawing declares, the colours of gradient stops
 * among them. A colour that is also drawn translucent has a second name for that.
 */
export function listColours(resolved: ResolvedDrawing, whole: Inspection): readonly NamedColour[] {
  const listed: NamedColour[] = [];
  const isListed = (hex: Hex, name?: string): boolean =>
    listed.some((one) => one.hex === hex && (name === undefined || one.name === name));
  for (const [index, paint] of whole.paints.entries()) {
    const name = whole.looks[index]?.name ?? "";
    if (paint.declared !== null && !isListed(paint.declared, name))
      listed.push({ hex: paint.declared, name });
  }
  for (const hex of declaredColours(resolved))
    if (!isListed(hex)) listed.push({ hex, name: "in a gradient or pattern" });
  return listed;
}

/** Colours that the drawing declares anywhere, but for black, which stands for what is declared nowhere. */
export function declaredColours(resolved: ResolvedDrawing): ReadonlySet<Hex> {
  const found = new Set<Hex>();
  mapColours(resolved, (hex) => {
    found.add(hex);
    return hex;
  });
  found.delete("#000000");
  return found;
}
