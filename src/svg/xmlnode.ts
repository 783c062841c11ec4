// Floor 2. The tree of an XML file before anything is known of SVG; readonly plain data.
import type { Place } from "../problem/problem.ts";

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
}

export interface XmlText {
  readonly kind: "text";
  readonly text: string;
  readonly place: Place;
}

export type XmlNode = XmlElement | XmlText;
