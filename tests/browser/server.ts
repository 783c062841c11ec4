// Test support. A loopback server for a built site, with the headers a host that reads `_headers` would send.
import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { mediaTypeOf } from "../../src/preview/mediatype.ts";
import { pagePolicy } from "../../src/views/pagepolicy.ts";

export interface SiteServer {
  /** Without a slash at the end. */
  readonly address: string;
  close(): Promise<void>;
}

/** Serves `folder` under `base` (begins and ends with `/`) on a free port of 127.0.0.1. */
export async function serveSite(folder: string, base = "/"): Promise<SiteServer> {
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url ?? "/", "http://127.0.0.1");
    const inside = pathname.startsWith(base) ? pathname.slice(base.length) : undefined;
    const file =
      inside === undefined
        ? undefined
        : path.join(folder, inside.endsWith("/") || inside === "" ? `${inside}index.html` : inside);
    const found = file?.startsWith(folder) ? await readFile(file).catch(() => undefined) : undefined;
    const body = found ?? (await readFile(path.join(folder, "404.html")));
    const sent = found && file ? file : "404.html";
    const extension = path.extname(sent);
    const headers: Record<string, string> = {
      "content-type": mediaTypeOf(sent),
      "x-content-type-options": "nosniff",
    };
    if (extension === ".html") headers["content-security-policy"] = `${pagePolicy}; frame-ancestors 'none'`;
    const isText = !/\.(?:png|woff2)$/.test(extension);
    if (isText) headers["content-encoding"] = "gzip";
    response.writeHead(found ? 200 : 404, headers).end(isText ? gzipSync(body) : body);
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("the server has no port");
  return {
    address: `http://127.0.0.1:${address.port}`,
    close: () =>
      new Promise((resolve, reject) => server.close((error) => (error ? reject(error) : resolve()))),
  };
}
