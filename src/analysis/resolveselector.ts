// Floor 6. A CSS selector as an author writes it → the showings in the drawing that it names, or what is wrong with it.
import type { Hex } from "../colour/colour.ts";
import type { Whereabouts } from "../content/study/colourword.ts";
import { findNearest } from "../problem/knownword.ts";
import { type Problem, report } from "../problem/problem.ts";
import { quoteText } from "../problem/quote.ts";
import type { Instance, ResolvedDrawing } from "../svg/instance.ts";
import { selectInstances } from "../svg/limitedchange.ts";
import { readAttribute } from "../svg/style/selector.ts";

/** The showings, or the problem. */
export interface Selected {
  readonly instances?: ReadonlySet<Instance>;
  readonly problem?: Problem;
}

/** Most names that a message lists. */
const mostNames = 12;

/**
 * Finds what `selector` names. With `replace`, something of it must have that colour.
 *
 * Problems: study/wrong-selector, study/selects-nothing.
 */
export function resolveSelector(
  resolved: ResolvedDrawing,
  selector: string,
  at: Whereabouts,
  replace?: Hex,
): Selected {
  const instances = selectInstances(resolved, selector);
  const refuse = (rule: string, reason: string, hint: string): Selected => ({
    problem: report(rule, at, { reason, hint }),
  });
  if (typeof instances === "string") {
    const isNone = instances.startsWith('"');
    const reason = `${quoteText(selector)} ${isNone ? "is not a CSS selector" : `uses ${instances}, which is not supported`}.`;
    const hint =
      'Type a selector such as "#wheel", "g.star path", "use:nth-child(2)" or "path:not(.ground)".';
    return refuse("study/wrong-selector", reason, hint);
  }
  if (instances.size === 0) {
    const reason = `${quoteText(selector)} matches nothing in the drawing.`;
    return refuse("study/selects-nothing", reason, proposeSelector(resolved, selector));
  }
  if (replace !== undefined && ![...instances].some((instance) => hasColour(instance, replace))) {
    const reason = `${quoteText(selector)} matches nothing that has the colour ${replace}.`;
    return refuse("study/selects-nothing", reason, proposeCarriers(resolved, replace));
  }
  return { instances };
}

/** What the drawing can be selected by: its ids and classes, as selectors. */
function listSelectors(resolved: ResolvedDrawing): readonly string[] {
  const ids = [...resolved.ids.keys()].map((id) => `#${id}`);
  const classes = resolved.instances.flatMap(({ author }) =>
    author === undefined
      ? []
      : (readAttribute(author, "class") ?? "").split(/\s+/).filter((name) => name !== ""),
  );
  return [...ids, ...new Set(classes.map((name) => `.${name}`))];
}

function proposeSelector(resolved: ResolvedDrawing, selector: string): string {
  const there = listSelectors(resolved);
  if (there.length === 0)
    return 'The drawing has no ids: give the element one in the SVG file, such as id="wheel".';
  const bare = selector.trim().replace(/^[#.]/, "");
  const bareNames = there.map((each) => each.slice(1));
  const near = there[bareNames.indexOf(bare)] ?? there[bareNames.indexOf(findNearest(bare, bareNames) ?? "")];
  const list = `The drawing has: ${listNames(there)}.`;
  return near === undefined ? list : `Type ${JSON.stringify(near)}, if that is meant.\n${list}`;
}

/** Says which elements have the colour, by their ids. */
function proposeCarriers(resolved: ResolvedDrawing, hex: Hex): string {
  const otherwise = "leave “only” out to change the colour everywhere";
  const carriers = resolved.instances.filter((instance) => instance.shown && declaresColour(instance, hex));
  const ids = [...new Set(carriers.flatMap(({ element }) => element.attributes["id"] ?? []))];
  if (ids.length === 0) return `Select the elements that have it, or ${otherwise}.`;
  return `These have it: ${listNames(ids.map((id) => `#${id}`))}. Type, for example, ${JSON.stringify(`#${ids[0]}`)}, or ${otherwise}.`;
}

function listNames(names: readonly string[]): string {
  const more = names.length > mostNames ? ` and ${names.length - mostNames} more` : "";
  return names.slice(0, mostNames).join(", ") + more;
}

/** Whether a change of `hex` may change the showing: gradients and stops are not looked into. */
function hasColour(instance: Instance, hex: Hex): boolean {
  if (instance.element.name === "stop") return true;
  return (
    declaresColour(instance, hex) ||
    [instance.fill, instance.stroke].some((source) => source.kind === "server")
  );
}

function declaresColour(instance: Instance, hex: Hex): boolean {
  return [instance.fill, instance.stroke].some((source) => source.kind === "colour" && source.hex === hex);
}
