// The server as a browser meets it: what it sends, under which policy, and what it refuses.
import { request } from "node:http";
import { expect, test, vi } from "vitest";
import { pagePolicy } from "../../../src/site/policy.ts";
import { harbour, makeFolder } from "../../study/folder.ts";
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
  const png = new Uint8Array(await (await served.get("/studies/ferry/from-40-original.png")).arrayBuffer());
  expect([...png.subarray(1, 4)]).toEqual([0x50, 0x4e, 0x47]);

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
