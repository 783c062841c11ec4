// Floor 2, part of step 2. Filters and blends: what is measured and published is the drawing without them. Beside it stands
// the drawing with them, in one form that we wrote, so that it can be drawn once to see how much of the flag they change.

import type { Place } from "../../problem/problem.ts";
import type { Cascade } from "../style/cascade.ts";
import { effectProperties } from "../style/effectproperty.ts";
import {
  type EffectLook,
  type Effects,
  findTarget,
  mapElements,
  type SvgElement,
  walkElements,
} from "../tree.ts";
import type { XmlElement } from "../xml/xmlnode.ts";
import { svgNamespace, unshown } from "./allowlist.ts";
import { limit } from "./drawinglimit.ts";
import type { Reporter } from "./drawingreport.ts";
import { type KnownFilter, readFilter, type Standing } from "./filterform.ts";

/** The filters of a file, by id, and what is declared of what is in them. */
export interface FilterSource {
  readonly filters: ReadonlyMap<string, Standing>;
  readonly cascade: Cascade;
  /** The longer side of the flag. */
  readonly side: number;
}

const hint = "Remove the shadow, blur, glow or blend in a drawing program, or draw it as a plain shape.";
/** What filters and blends do not go into in one way: what is in it is no picture of its own. */
const apart = new Set([...unshown].filter((name) => name !== "defs" && name !== "symbol"));

/**
 * Returns the drawing without filters and blends, where they cannot be looked through undefined; and with them, where it has any.
 * An element that shows its shadow alone goes with it.
 *
 * Problems: svg/unsupported; warning svg/effect.
 */
export function takeEffects(
  root: SvgElement,
  source: FilterSource,
  ids: ReadonlyMap<string, SvgElement>,
  reporter: Reporter,
): { readonly root: SvgElement; readonly effects?: Effects } | undefined {
  const taker = new Taker(source, reporter);
  taker.check(root, false);
  if (taker.looks.size === 0 && taker.shadows.size === 0)
    return taker.isUnknown ? undefined : { root: mapElements(root, withoutEffects) };
  if (taker.isUnknown || !taker.isCheap(root, ids)) return undefined;
  const plain = mapElements(root, (element, original) =>
    taker.shadows.has(original) ? emptied(element) : withoutEffects(element),
  );
  const looks = [...taker.looks.values()];
  const place = looks[0]?.place ?? root.place;
  return {
    root: plain,
    effects: { root: taker.write(root, ids), looks: looks.map(({ look }) => look), place },
  };
}

class Taker {
  /** What the effects look like, each with the place of its first, by its name. */
  readonly looks = new Map<string, { readonly look: EffectLook; readonly place: Place }>();
  /** Elements of which a filter shows the shadow alone. */
  readonly shadows = new Set<SvgElement>();
  isUnknown = false;
  private readonly filters = new Map<string, KnownFilter>();
  private readonly source: FilterSource;
  private readonly reporter: Reporter;

  constructor(source: FilterSource, reporter: Reporter) {
    this.source = source;
    this.reporter = reporter;
  }

  check(element: SvgElement, isApart: boolean): void {
    const { attributes, attributePlaces } = element;
    const filter = filterOf(element);
    const blend = attributes["mix-blend-mode"] ?? "normal";
    const name = filter === undefined ? "mix-blend-mode" : "filter";
    const place = attributePlaces[name] ?? element.place;
    if (filter !== undefined || blend !== "normal") {
      if (isApart || element.name === "svg")
        this.refuse(place, `<${element.name}> has a ${name} where programs follow it in two ways.`);
      else this.note(element, filter, blend, place);
    }
    const within = isApart || apart.has(element.name);
    for (const child of element.children) if (child.type === "element") this.check(child, within);
  }

  private note(element: SvgElement, id: string | undefined, blend: string, place: Place): void {
    const filter = id === undefined ? undefined : this.filterOf(id, place);
    if (id !== undefined && filter === undefined) return;
    if (filter !== undefined && !filter.showsElement) this.shadows.add(element);
    const look: EffectLook = filter ? { kind: filter.look, mode: "" } : { kind: "blend", mode: blend };
    const name = nameLook(look);
    if (!this.looks.has(name)) this.looks.set(name, { look, place });
    this.reporter.warn(
      "svg/effect",
      place,
      `<${element.name}> is measured and shown without what its author gave it: ${name}.`,
      "If the flag looks right without it, there is nothing to do. Else draw it as a plain shape.",
    );
  }

  private filterOf(id: string, place: Place): KnownFilter | undefined {
    const known = this.filters.get(id);
    if (known !== undefined) return known;
    const node = this.source.filters.get(id);
    const read = node === undefined ? "" : readFilter(node, this.source.cascade, this.source.side);
    if (typeof read !== "string") {
      this.filters.set(id, read);
      return read;
    }
    this.refuse(
      place,
      node === undefined
        ? `filter points at #${id}, which is no filter of the drawing.`
        : `The filter #${id} has ${read}, so what it shows cannot be known.`,
    );
    return undefined;
  }

  private refuse(place: Place, reason: string): void {
    this.isUnknown = true;
    this.reporter.error("svg/unsupported", place, reason, hint);
  }

  /** Whether few enough effects are drawn, with all repetitions, and nothing else needs what goes with a shadow. */
  isCheap(root: SvgElement, ids: ReadonlyMap<string, SvgElement>): boolean {
    const counts = new Map<SvgElement, number>();
    const count = (element: SvgElement): number => {
      const known = counts.get(element);
      if (known !== undefined) return known;
      const used = element.name === "use" ? findTarget(element, ids) : undefined;
      const inside = [...element.children, ...(used === undefined ? [] : [used])];
      const own = effectOf(element) ? 1 : 0;
      const sum = inside.reduce((all, child) => all + (child.type === "element" ? count(child) : 0), own);
      counts.set(element, sum);
      return sum;
    };
    const total = count(root);
    if (total > limit.effects)
      this.refuse(
        root.place,
        `Filters and blends come to ${total}; at most ${limit.effects} can be looked through.`,
      );
    for (const shadow of this.shadows)
      for (const element of walkElements(shadow))
        if (element !== shadow && element.attributes["id"] !== undefined)
          this.refuse(element.place, `<${element.name}> with an id is inside what shows as a shadow alone.`);
    return !this.isUnknown;
  }

  /** Returns the drawing with its effects, filters as they were read. */
  write(root: SvgElement, ids: ReadonlyMap<string, SvgElement>): SvgElement {
    const names = new Map<string, string>();
    for (const id of this.filters.keys()) {
      let name = `effect-${names.size + 1}`;
      while (ids.has(name)) name += "-";
      names.set(id, name);
    }
    const shown = mapElements(root, (element) => withEffects(element, names));
    const defs: SvgElement = {
      ...root,
      name: "defs",
      attributes: {},
      children: [...this.filters].map(([id, { element }]) => ({
        ...element,
        attributes: { id: names.get(id) ?? "", ...element.attributes },
      })),
    };
    return { ...shown, children: [defs, ...shown.children] };
  }
}

const lookNames = {
  shadow: "a shadow",
  blur: "a blur",
  colours: "a change of colours",
  blend: "colours mixed with what is below them",
  other: "an effect",
} as const satisfies Record<EffectLook["kind"], string>;

/** What an effect looks like, for a problem: `colours mixed with what is below them (multiply)`. */
export function nameLook({ kind, mode }: EffectLook): string {
  return mode === "" ? lookNames[kind] : `${lookNames[kind]} (${mode})`;
}

/** The id of the filter of an element, or undefined. */
function filterOf({ attributes }: SvgElement): string | undefined {
  return /^url\(#(.*)\)$/.exec(attributes["filter"] ?? "")?.[1];
}

function effectOf(element: SvgElement): boolean {
  return filterOf(element) !== undefined || (element.attributes["mix-blend-mode"] ?? "normal") !== "normal";
}

function withoutEffects(element: SvgElement): SvgElement {
  if (!Object.keys(element.attributes).some((name) => effectProperties.has(name))) return element;
  const kept = Object.entries(element.attributes).filter(([name]) => !effectProperties.has(name));
  return { ...element, attributes: Object.fromEntries(kept) };
}

function withEffects(element: SvgElement, names: ReadonlyMap<string, string>): SvgElement {
  const { "mix-blend-mode": blend, isolation } = element.attributes;
  const filter = names.get(filterOf(element) ?? "");
  const style = [
    ...(blend === undefined ? [] : [`mix-blend-mode:${blend}`]),
    ...(isolation === undefined ? [] : [`isolation:${isolation}`]),
  ].join(";");
  const plain = withoutEffects(element);
  if (filter === undefined && style === "") return plain;
  const added = {
    ...(filter === undefined ? {} : { filter: `url(#${filter})` }),
    ...(style === "" ? {} : { style }),
  };
  return { ...plain, attributes: { ...plain.attributes, ...added } };
}

/** What stays of an element that shows its shadow alone, for what points at it. */
function emptied(element: SvgElement): SvgElement {
  const { id } = element.attributes;
  return { ...element, name: "g", attributes: id === undefined ? {} : { id }, children: [] };
}

/** Whether an element of the file is a filter. */
export function isFilter({ uri, local }: XmlElement): boolean {
  return uri === svgNamespace && local === "filter";
}
