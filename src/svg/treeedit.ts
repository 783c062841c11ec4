// Floor 2. Edits of a tree: attributes are set, elements replaced; nothing is moved and nothing else is touched.
import { mapElements, type SvgElement } from "./tree.ts";

/** Collects edits and applies them all at once. Editing the same place twice keeps the first edit. */
export class EditList {
  private readonly attributes = new Map<SvgElement, Map<string, string>>();
  private readonly replacements = new Map<SvgElement, SvgElement>();

  /** Sets an attribute of `element`. */
  set(element: SvgElement, name: string, value: string): void {
    const map = this.attributes.get(element) ?? new Map<string, string>();
    if (!map.has(name)) map.set(name, value);
    this.attributes.set(element, map);
  }

  /** Puts `next` in the place of `element`; other edits of the element and of what is in it are dropped. */
  replace(element: SvgElement, next: SvgElement): void {
    this.replacements.set(element, next);
  }

  get isEmpty(): boolean {
    return this.attributes.size + this.replacements.size === 0;
  }

  apply(root: SvgElement): SvgElement {
    return this.isEmpty ? root : mapElements(root, (element, original) => this.applyTo(element, original));
  }

  private applyTo(element: SvgElement, original: SvgElement): SvgElement {
    const replacement = this.replacements.get(original);
    if (replacement !== undefined) return replacement;
    const set = this.attributes.get(original);
    if (set === undefined) return element;
    const attributes: Record<string, string> = Object.create(null);
    Object.assign(attributes, element.attributes, Object.fromEntries(set));
    return { ...element, attributes };
  }
}
