// Floor 2. The tree of an XML file before anything is known of SVG; readonly plain data.
import type { Place } from "../../problem/problem.ts";

export interface XmlAttribute {
  readonly uri: string;
  readonly prefix: string;
  readonly local: string;
  readonly value: string;
  readonly place: Place;
}

export interface XmlElement {
  readonly kind: "element";
  readonly uri: string;
  readonly prefix: string;
  readonly local: string;
  readonly attributes: readonly XmlAttribute[];
  readonly children: XmlNode[];
  readonly place: Place;
  /** From 1, among the elements of its parent. */
  readonly index: number;
}

export interface XmlText {
  readonly kind: "text";
  readonly text: string;
  /** Where it begins. */
  readonly place: Place;
}

export type XmlNode = XmlElement | XmlText;

/** Visits `element` and all elements below it in document order. */
export function* walkXml(element: XmlElement): Generator<XmlElement> {
  yield element;
  for (const child of element.children) if (child.kind === "element") yield* walkXml(child);
}
