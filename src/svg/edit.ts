// Floor 2. Edits of a tree: a value is changed where it is declared; nothing is moved and nothing else is touched.
import type { Site } from "./cascade.ts";
import { type Splice, splice } from "./cut.ts";
import { mapElements, type SvgElement, textOf } from "./tree.ts";

/** Collects edits and applies them all at once. Editing the same place twice keeps the first edit. */
export class EditList {
  private readonly attributes = new Map<SvgElement, Map<string, string>>();
  private readonly splices = new Map<SvgElement, Splice[]>();
  private readonly styles = new Map<SvgElement, string[]>();
  private readonly replacements = new Map<SvgElement, SvgElement>();

  /** Puts `value` where the declaration at `site` has its value. */
  set(site: Site, value: string): void {
    if (site.kind === "attribute") {
      this.add(site.element, site.name, value);
      return;
    }
    const list = this.splices.get(site.element) ?? [];
    if (!list.some((other) => other.start === site.start))
      list.push({ start: site.start, end: site.end, text: value });
    this.splices.set(site.element, list);
  }

  /** Sets an attribute of `element`. */
  add(element: SvgElement, name: string, value: string): void {
    const map = this.attributes.get(element) ?? new Map<string, string>();
    if (!map.has(name)) map.set(name, value);
    this.attributes.set(element, map);
  }

  /** Adds a declaration at the end of the element's `style`, where it wins over every sheet. */
  addStyle(element: SvgElement, declaration: string): void {
    const list = this.styles.get(element) ?? [];
    if (!list.includes(declaration)) list.push(declaration);
    this.styles.set(element, list);
  }

  /** Puts `next` in the place of `element`; other edits of the element and of what is in it are dropped. */
  replace(element: SvgElement, next: SvgElement): void {
    this.replacements.set(element, next);
  }

  get isEmpty(): boolean {
    return this.attributes.size + this.splices.size + this.styles.size + this.replacements.size === 0;
  }

  apply(root: SvgElement): SvgElement {
    return this.isEmpty ? root : mapElements(root, (element, original) => this.applyTo(element, original));
  }

  private applyTo(element: SvgElement, original: SvgElement): SvgElement {
    const replacement = this.replacements.get(original);
    if (replacement !== undefined) return replacement;
    const splices = this.splices.get(original) ?? [];
    const added = this.attributes.get(original) ?? new Map<string, string>();
    const styles = this.styles.get(original) ?? [];
    if (splices.length + added.size + styles.length === 0) return element;
    if (element.name === "style") {
      const text = splice(textOf(element), splices);
      return {
        ...element,
        children: [
          { type: "text", name: "", value: text, attributes: {}, children: [], place: element.place },
        ],
      };
    }
    const attributes: Record<string, string> = Object.create(null);
    Object.assign(attributes, element.attributes);
    for (const [name, value] of added) attributes[name] = value;
    const style = splice(attributes["style"] ?? "", splices);
    const parts = [style.replace(/;\s*$/, ""), ...styles].filter((part) => part !== "");
    if (splices.length + styles.length > 0)
      attributes["style"] = styles.length === 0 ? style : parts.join(";");
    return { ...element, attributes };
  }
}
