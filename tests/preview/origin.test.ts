import type { IncomingHttpHeaders, IncomingMessage } from "node:http";
import { describe, expect, test } from "vitest";
import { findRefusal } from "../../src/preview/origin.ts";

const refusalOf = (headers: IncomingHttpHeaders): string | undefined =>
  findRefusal({ headers } as IncomingMessage, ["192.0.2.7"]);
const host = "127.0.0.1:8642";

/** As browsers send them. Source: W3C, Fetch Metadata Request Headers, sections 2.1 to 2.4. */
const fetched = (site: string, mode: string, dest: string): IncomingHttpHeaders => ({
  host,
  "sec-fetch-site": site,
  "sec-fetch-mode": mode,
  "sec-fetch-dest": dest,
});

describe("who is answered", () => {
  test.each<[string, IncomingHttpHeaders]>([
    ["a program", { host }],
    ["this machine by its name", { host: "localhost:8642" }],
    ["this machine in IPv6", { host: "[::1]:8642" }],
    ["the host that was asked for", { host: "192.0.2.7" }],
    ["an address that was typed", fetched("none", "navigate", "document")],
    ["a link on a page of this server", fetched("same-origin", "navigate", "document")],
    ["a picture on a page of this server", fetched("same-origin", "no-cors", "image")],
    [
      "a font, which names its origin",
      { ...fetched("same-origin", "cors", "font"), origin: `http://${host}` },
    ],
    ["a link that is followed from elsewhere", fetched("cross-site", "navigate", "document")],
  ])("%s", (_, headers) => {
    expect(refusalOf(headers)).toBeUndefined();
  });
});

/** As browsers write the host of an address. Source: the WHATWG URL standard, host serializing. */
test.each([
  ["Studio-PC", "studio-pc:8642"],
  ["FD00:0:0::2", "[fd00::2]:8642"],
  ["127.1", "127.0.0.1:8642"],
])("the host %s is answered as %s", (name, host) => {
  expect(findRefusal({ headers: { host } } as IncomingMessage, [name])).toBeUndefined();
  expect(findRefusal({ headers: { host: `x${host}` } } as IncomingMessage, [name])).toBeDefined();
});

describe("who is refused", () => {
  test.each<[string, IncomingHttpHeaders]>([
    ["nobody named", {}],
    ["a name that leads here", { host: "evil.example:8642" }],
    ["a name that ends as ours", { host: "evil-localhost" }],
    ["a name with ours before it", { host: "localhost.evil.example" }],
    ["a picture on somebody else's page", fetched("cross-site", "no-cors", "image")],
    ["a script on somebody else's page", fetched("cross-site", "no-cors", "script")],
    ["the news from somebody else's page", fetched("cross-site", "cors", "empty")],
    ["a frame on somebody else's page", fetched("cross-site", "navigate", "iframe")],
    ["an object on somebody else's page", fetched("cross-site", "navigate", "object")],
    ["another port of this machine", fetched("same-site", "no-cors", "image")],
    ["a browser that sends an origin alone", { host, origin: "https://evil.example" }],
    ["a page without an origin", { host, origin: "null" }],
    ["another port as an origin", { host, origin: "http://127.0.0.1:9999" }],
  ])("%s", (_, headers) => {
    expect(refusalOf(headers)).toMatch(/^(Nothing is served|Only pages of this server)/);
  });

  test("in the same words, whatever the name: nothing of the request comes back", () => {
    expect(refusalOf({ host: "<b>evil</b>" })).not.toContain("evil");
  });
});
