// Test support. HTML and XML read by a parser that is none of ours. Nothing in them is run or fetched.
// jsdom brings no types of its own; a document is all that is asked of it.
// @ts-expect-error TS7016
import { JSDOM } from "jsdom";

/** Parses XML; throws where it is not well-formed. */
export function readXml(text: string): Document {
  return new JSDOM(text, { contentType: "application/xml" }).window.document;
}

const { window } = new JSDOM("");

/** Parses HTML as a browser without script does. One window serves all: to make one takes as long as to parse a page. */
export function readHtml(text: string): Document {
  return new window.DOMParser().parseFromString(text, "text/html");
}
