// The server as a browser meets it: what it sends, under which policy, and what it refuses.
import { request } from "node:http";
import { connect } from "node:net";
import { expect, onTestFinished, test, vi } from "vitest";
import { News } from "../../src/preview/eventstream.ts";
import { listenFrom } from "../../src/preview/port.ts";
import type { ServedSite } from "../../src/preview/servedsite.ts";
import { createSiteServer } from "../../src/preview/server.ts";
import { pagePolicy } from "../../src/views/pagepolicy.ts";
import { writeStudy } from "../analysis/fixture.ts";
import { drawing, harbour, makeFolder } from "../content/folder.ts";
import { openNews, type Served, serve } from "./serving.ts";

vi.setConfig({ testTimeout: 120_000 });

/** A request that no browser would make: the path and the Host are sent as they are. */
function ask(served: Served, path: string, host?: string): Promise<{ status: number; body: string }> {
  const { port } = new URL(served.address);
  return new Promise((resolve, reject) => {
    const headers = host === undefined ? {} : { Host: host };
    request({ host: "127.0.0.1", port, path, headers }, (response) => {
      let body = "";
      response.on("data", (data: Buffer) => {
        body += data.toString();
      });
      response.on("end", () => resolve({ status: response.statusCode ?? 0, body }));
    })
      .on("error", reject)
      .end();
  });
}

test("pages, files, what is missing, and what is refused", async () => {
  const served = await serve(await makeFolder(harbour));
  const page = await served.get("/studies/ferry/");
  expect([page.status, page.headers.get("content-type")]).toEqual([200, "text/html; charset=utf-8"]);
  expect(page.headers.get("content-security-policy")).toBe(`${pagePolicy} renewal; frame-ancestors 'none'`);
  expect(page.headers.get("x-content-type-options")).toBe("nosniff");
  expect(await page.text()).toContain("A lighter ferry wheel");

  const drawing = await served.get("/studies/ferry/original.svg");
  expect(drawing.headers.get("content-type")).toBe("image/svg+xml");
  expect(drawing.headers.get("content-security-policy")).toContain("sandbox");
  expect((await served.get("/assets/site.css")).headers.get("content-type")).toBe("text/css; charset=utf-8");
  expect((await served.get("/assets/fonts/source-serif-4-latin-400-normal.woff2")).status).toBe(200);
  const afar = await served.get("/studies/ferry/from-20-original.webp");
  expect(afar.headers.get("content-type")).toBe("image/webp");
  expect(Buffer.from(await afar.arrayBuffer()).toString("latin1", 8, 12)).toBe("WEBP");

  const missing = await served.get("/studies/none/");
  expect([missing.status, (await missing.text()).includes("No page here")]).toEqual([404, true]);
  const short = await served.get("/studies/ferry");
  expect([short.status, short.headers.get("location")]).toEqual([301, "/studies/ferry/"]);

  const tag = page.headers.get("etag") ?? "";
  expect((await served.get("/studies/ferry/", { headers: { "If-None-Match": tag } })).status).toBe(304);
  const head = await served.get("/studies/ferry/", { method: "HEAD" });
  expect([head.status, await head.text()]).toEqual([200, ""]);
  expect((await served.get("/", { method: "POST" })).status).toBe(405);

  for (const path of [
    "/../package.json",
    "/..%2fpackage.json",
    "/%2e%2e/package.json",
    "/_serve/..%2fserver.ts",
    "/_serve/server.ts",
    "//example.org/",
  ]) {
    const { status, body } = await ask(served, path);
    expect([path, status]).toEqual([path, 404]);
    expect(body).not.toMatch(/"name"|import /);
  }
  expect((await ask(served, "/%E0%A4%A")).status).toBe(400);
  expect((await ask(served, "/%00")).status).toBe(404);
  // A name of somebody else's that leads to this machine.
  expect((await ask(served, "/", "evil.example:80")).status).toBe(403);
  expect((await ask(served, "/", "localhost:80")).status).toBe(200);
  expect((await ask(served, "/_serve/news", "evil.example")).status).toBe(403);
});

test("a page that is not there says so, and hears when it is", async () => {
  const served = await serve(await makeFolder(harbour));
  const html = await served.text("/studies/later/");
  const mark = /data-mark="([^"]+)"/.exec(html)?.[1] ?? "";
  const { next } = await openNews(served.address, "/studies/later/", mark);
  // Not told to show itself anew for nothing: the first it hears is from a page whose mark is another.
  const other = await openNews(served.address, "/studies/later/", "another");
  expect(await other.next()).toMatchObject({ event: "changed" });
  const first = await Promise.race([next(), served.text("/").then(() => "nothing yet")]);
  expect(first).toBe("nothing yet");
});

/** What a browser of any version reads as: for this origin alone. The sources stand in origin.ts. */
const guards = [
  /^cross-origin-resource-policy: same-origin$/im,
  /^x-content-type-options: nosniff$/im,
  /^x-frame-options: deny$/im,
  /^content-security-policy: .*(frame-ancestors 'none'|sandbox)/im,
];

/** Sends bytes as they are and returns all that comes back within `patience` milliseconds. */
function sendRaw(served: Served, bytes: string | Uint8Array, patience = 2_000): Promise<string> {
  const { port } = new URL(served.address);
  return new Promise((resolve) => {
    let text = "";
    const socket = connect(Number(port), "127.0.0.1", () => socket.write(bytes));
    const timer = setTimeout(() => socket.destroy(), patience);
    socket
      .on("data", (data: Buffer) => {
        text += data.toString("latin1");
      })
      .on("error", () => undefined)
      .on("close", () => {
        clearTimeout(timer);
        resolve(text);
      });
  });
}

const get = (path: string, ...headers: readonly string[]): string =>
  `${[`GET ${path} HTTP/1.1`, "Host: localhost", "Connection: close", ...headers].join("\r\n")}\r\n\r\n`;

test("no request ends it, each answer is guarded, and none tells of the program", async () => {
  const drafted = {
    ...harbour,
    "studies/secret/study.md": writeStudy("status: draft", "title: Not yet told"),
  };
  const served = await serve(await makeFolder({ ...drafted, "studies/secret/original.svg": drawing }), {
    drafts: true,
  });
  const escapes = [
    "%",
    "%25",
    "%2525",
    "%E0%A4%A",
    "%00",
    "%0d%0aX: y",
    "%ff",
    "%c0%ae",
    "%ED%A0%80",
    "\u00ff",
  ];
  const paths = [
    ...escapes.flatMap((sign) => [`/${sign}`, `/studies/${sign}/`, `/_serve/${sign}`, `/?${sign}`]),
    ...escapes.flatMap((sign) => [`/_serve/news?path=${sign}`, `/_serve/news?mark=${sign}`]),
    ...["__proto__", "constructor", "toString", "..", ".", "//", "*", "http://evil.example/", "?", "#"],
    ...[
      "/__proto__",
      "/studies/__proto__/",
      "/_serve/constructor",
      "/_serve/news/",
      "/_serve/news?path=/a&path=%",
    ],
    `/${"a".repeat(10_000)}`,
    `/${"../".repeat(2_000)}`,
    `/_serve/news?path=${"%25".repeat(3_000)}`,
  ];
  const requests: readonly (string | Uint8Array)[] = [
    ...paths.map((path) => get(path)),
    ...["HEAD", "POST", "PUT", "OPTIONS", "TRACE", "CONNECT", "PROPFIND", "G\0T", "get"].map((method) =>
      get("/").replace("GET", method),
    ),
    ...[
      "Expect: 100-continue",
      "Expect: x",
      "Upgrade: websocket",
      "Upgrade: h2c",
      'If-None-Match: "',
      "Range: x",
    ].map((header) => get("/", header)),
    get("/", "Content-Length: 5", "Transfer-Encoding: chunked"),
    get("/", "Content-Length: -1"),
    get("/", `X: ${"y".repeat(100_000)}`),
    get("/", ...Array.from({ length: 3_000 }, (_, index) => `x${index}: y`)),
    get("/").replace("Host: localhost", "Host: ["),
    get("/").replace("Host: localhost\r\n", ""),
    get("/").replace("HTTP/1.1", "HTTP/9.9"),
    "GET",
    "GET / HTTP/1.1\r\nHost: localhost",
    "\r\n\r\n",
    "\0\0\0\0",
    new Uint8Array([0x16, 0x03, 0x01, 0x02, 0x00, 0x01]),
    Uint8Array.from({ length: 4_096 }, (_, index) => (index * 97) % 256),
  ];
  const answers = await Promise.all(requests.map((bytes) => sendRaw(served, bytes)));
  const answered = answers.filter((answer) => answer !== "");
  expect(answered.length).toBeGreaterThan(100);
  for (const answer of answered) {
    for (const guard of guards) expect(answer.slice(0, 600)).toMatch(guard);
    expect(answer).not.toMatch(/server\.ts|node:internal|\n\s+at /);
    expect(answer).not.toMatch(/^HTTP\/1\.1 5/);
  }
  // Connections that begin and never go on, and streams whose reader goes.
  await Promise.all(Array.from({ length: 20 }, () => sendRaw(served, get("/_serve/news?path=/"), 50)));
  await Promise.all(Array.from({ length: 20 }, () => sendRaw(served, "GET / HTTP/1.1\r\nHo", 50)));
  expect((await served.get("/studies/ferry/")).status).toBe(200);
  expect((await served.get("/studies/secret/")).status).toBe(200);

  // Asked for by a page of somebody else's, what is there and what is not cannot be told apart.
  const foreign = ["Sec-Fetch-Site: cross-site", "Sec-Fetch-Mode: no-cors", "Sec-Fetch-Dest: image"];
  const told = await Promise.all(
    ["/studies/secret/original.svg", "/studies/none/original.svg", "/_serve/news?path=%25", "/%"].map(
      async (path) => (await sendRaw(served, get(path, ...foreign))).replace(/^Date: .*$/m, ""),
    ),
  );
  expect(new Set(told).size).toBe(1);
  expect(told[0]).toMatch(/^HTTP\/1\.1 403/);
});

test("a page that cannot be made is a 500 without a trace; the trace goes to who serves", async () => {
  const faults: unknown[] = [];
  const broken = {
    askFor: () => Promise.reject(new Error("in /home/somebody/src")),
  } as unknown as ServedSite;
  const server = createSiteServer(broken, new News(), [], (error) => faults.push(error));
  onTestFinished(() => void server.close());
  const port = await listenFrom(server, { host: "127.0.0.1", port: 0, isFixed: true });
  for (const path of ["/", "/_serve/news?path=/"]) {
    const answer = await fetch(`http://127.0.0.1:${port}${path}`);
    expect(answer.status).toBe(500);
    expect(await answer.text()).toBe("This could not be answered. The terminal says why.\n");
  }
  expect(faults).toHaveLength(2);
});
