// Floor 6. A site over HTTP: on this machine alone unless told otherwise, read only, under the policy that a host would send.
import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import path from "node:path";
import { drawingPolicy } from "../policy.ts";
import { dressPage, formatFailure, ownFolder, servedPolicy } from "./dress.ts";
import { mediaTypeOf } from "./media.ts";
import type { News } from "./news.ts";
import type { ServedSite } from "./site.ts";
import type { Version } from "./version.ts";

/** What answers a request. */
interface Reply {
  readonly status: number;
  readonly type: string;
  readonly body: string | Uint8Array;
  readonly policy?: string;
}

/** The names under which a machine speaks to itself. Source: RFC 6761, section 6.3; RFC 4291, section 2.5.3. */
const ownNames = ["localhost", "127.0.0.1", "[::1]"];

/**
 * Makes the server of `site`; it listens when it is told to. Asked under a name that is neither this machine's own nor one
 * of `names`, it refuses: a page of somebody else's that a name of theirs leads here must not read a draft.
 */
export function createSiteServer(site: ServedSite, news: News, names: readonly string[]): Server {
  const allowed = new Set([...ownNames, ...names]);
  return createServer((request, response) => {
    const host = (request.headers.host ?? "").replace(/:\d+$/, "").toLowerCase();
    if (!allowed.has(host)) return refuse(response, 403, `Nothing is served under the name ${host}.`);
    if (request.method !== "GET" && request.method !== "HEAD")
      return refuse(response, 405, "This server is read only.");
    const url = URL.canParse(`http://a${request.url}`) ? new URL(`http://a${request.url}`) : undefined;
    if (url === undefined) return refuse(response, 400, "This is no address.");
    if (url.pathname === `${ownFolder}news`) return void listen(url, response, site, news);
    respond(url, request, response, site).catch((error: unknown) =>
      refuse(response, 500, error instanceof Error ? (error.stack ?? error.message) : String(error)),
    );
  });
}

/** Returns the path of the file that an address names: `studies/a-wheel/index.html`. Throws URIError. */
function pathOf(pathname: string): string {
  const plain = decodeURIComponent(pathname).replace(/^\/+/, "");
  return plain === "" || plain.endsWith("/") ? `${plain}index.html` : plain;
}

async function listen(url: URL, response: ServerResponse, site: ServedSite, news: News): Promise<void> {
  const file = pathOf(url.searchParams.get("path") ?? "/");
  const listener = { path: file, mark: url.searchParams.get("mark") ?? "", response };
  const version = await site.askFor(file);
  if (!response.destroyed) news.add(listener, (asked) => version.markPage(asked));
}

async function respond(
  url: URL,
  request: IncomingMessage,
  response: ServerResponse,
  site: ServedSite,
): Promise<void> {
  let file: string;
  try {
    file = pathOf(url.pathname);
  } catch {
    return refuse(response, 400, "This is no address.");
  }
  if (url.pathname.startsWith(ownFolder)) return send(request, response, await replyOwn(file));
  const version = await site.askFor(file);
  if (!version.hasPage(file) && version.hasPage(`${file}/index.html`)) {
    response.writeHead(301, { Location: `/${encodeURI(file)}/${url.search}` }).end();
    return;
  }
  send(request, response, await replyWith(version, file));
}

async function replyWith(version: Version, file: string): Promise<Reply> {
  const mark = version.markPage(file);
  if (version.hasPage(file)) return replyPage(version, file, 200, mark);
  const body = await version.make(file);
  if (body === undefined) return replyPage(version, "404.html", 404, mark);
  const policy = path.extname(file) === ".svg" ? { policy: drawingPolicy } : {};
  return { status: 200, type: mediaTypeOf(file), body, ...policy };
}

/** `mark` is of the page that was asked for, so that one that is missing shows itself when it is there. */
function replyPage(version: Version, file: string, status: number, mark: string): Reply {
  const page = { type: mediaTypeOf("index.html"), policy: `${servedPolicy}; frame-ancestors 'none'` };
  try {
    return { ...page, status, body: dressPage(version.renderPage(file) ?? "", mark) };
  } catch (error) {
    const reason = error instanceof Error ? (error.stack ?? error.message) : String(error);
    return { ...page, status: 500, body: formatFailure(reason, mark) };
  }
}

/** The two files of the server's own; they may be edited while it runs. */
async function replyOwn(file: string): Promise<Reply> {
  const name = path.basename(file);
  const isOurs = name === "reload.js" || name === "notice.css";
  if (!isOurs) return { status: 404, type: "text/plain; charset=utf-8", body: "There is no such file.\n" };
  const body = await readFile(path.join(import.meta.dirname, name));
  return { status: 200, type: mediaTypeOf(name), body };
}

/** A browser keeps what it has and asks whether it still holds. */
function send(
  request: IncomingMessage,
  response: ServerResponse,
  { status, type, body, policy }: Reply,
): void {
  const tag = `"${createHash("sha256").update(body).digest("hex").slice(0, 24)}"`;
  const headers = {
    "Content-Type": type,
    "Cache-Control": "no-cache",
    ETag: tag,
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    ...(policy === undefined ? {} : { "Content-Security-Policy": policy }),
  };
  if (status === 200 && request.headers["if-none-match"] === tag) {
    response.writeHead(304, headers).end();
    return;
  }
  response.writeHead(status, { ...headers, "Content-Length": Buffer.byteLength(body) });
  response.end(request.method === "HEAD" ? undefined : body);
}

function refuse(response: ServerResponse, status: number, reason: string): void {
  if (response.headersSent) response.destroy();
  else response.writeHead(status, { "Content-Type": "text/plain; charset=utf-8" }).end(`${reason}\n`);
}
