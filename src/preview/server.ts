// Floor 10. A site over HTTP: on this machine alone unless told otherwise, read only, under the policy that a host would send.
import { createHash } from "node:crypto";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import path from "node:path";
import { readOwn } from "../content/disk/packagefile.ts";
import { drawingPolicy } from "../views/pagepolicy.ts";
import type { News } from "./eventstream.ts";
import { mediaTypeOf } from "./mediatype.ts";
import { findRefusal, guardHeaders } from "./origin.ts";
import { dressPage, formatFailure, ownFolder, servedPolicy } from "./servedpage.ts";
import type { ServedSite } from "./servedsite.ts";
import type { Version } from "./siteversion.ts";

/** What answers a request. */
interface Reply {
  readonly status: number;
  readonly type: string;
  readonly body: string | Uint8Array;
  readonly policy?: string;
}

/** What hears of a fault of ours, whose trace is for the terminal alone. */
type TellFault = (error: unknown) => void;

const plain = "text/plain; charset=utf-8";

/**
 * Makes the server of `site`; it listens when it is told to. No request ends it: whatever fails while one is answered is
 * told to `tellFault`, and is a 500 without a trace to whoever asked. `names` are the hosts that it may be asked under,
 * beside this machine's own.
 */
export function createSiteServer(
  site: ServedSite,
  news: News,
  names: readonly string[],
  tellFault: TellFault = () => undefined,
): Server {
  const answer = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    // Whoever asked may be gone: an error of the connection is nothing to do about.
    response.on("error", () => undefined);
    for (const [name, value] of Object.entries(guardHeaders)) response.setHeader(name, value);
    try {
      await respond(request, response, { site, news, names, tellFault });
    } catch (error) {
      tellFault(error);
      refuse(response, 500, "This could not be answered. The terminal says why.");
    }
  };
  // One without a Host is refused by us, with our headers.
  const server = createServer(
    { requireHostHeader: false },
    (request, response) => void answer(request, response),
  );
  server.on("checkExpectation", (_, response: ServerResponse) => {
    response.writeHead(417, guardHeaders).end();
  });
  return server.on("clientError", (_, socket) => {
    if (socket.writable) socket.end(malformed);
    else socket.destroy();
  });
}

/** The answer to what is no HTTP. */
const malformed = `${[
  "HTTP/1.1 400 Bad Request",
  "Connection: close",
  "Content-Length: 0",
  ...Object.entries(guardHeaders).map(([name, value]) => `${name}: ${value}`),
].join("\r\n")}\r\n\r\n`;

/** Returns the path of the file that an address names, `studies/a-wheel/index.html`, or undefined where it names none. */
function pathOf(pathname: string): string | undefined {
  try {
    const path = decodeURIComponent(pathname).replace(/^\/+/, "");
    return path === "" || path.endsWith("/") ? `${path}index.html` : path;
  } catch {
    return undefined;
  }
}

interface Served {
  readonly site: ServedSite;
  readonly news: News;
  readonly names: readonly string[];
  readonly tellFault: TellFault;
}

async function respond(request: IncomingMessage, response: ServerResponse, served: Served): Promise<void> {
  const refusal = findRefusal(request, served.names);
  if (refusal !== undefined) return refuse(response, 403, refusal);
  const { method } = request;
  if (method !== "GET" && method !== "HEAD") return refuse(response, 405, "This server is read only.");
  const url = URL.canParse(`http://a${request.url}`) ? new URL(`http://a${request.url}`) : undefined;
  const isNews = method === "GET" && url?.pathname === `${ownFolder}news`;
  const file = pathOf((isNews ? url.searchParams.get("path") : url?.pathname) ?? "/");
  if (url === undefined || file === undefined) return refuse(response, 400, "This is no address.");
  if (isNews) return listen(file, url.searchParams.get("mark") ?? "", response, served);
  if (url.pathname.startsWith(ownFolder)) return send(request, response, await replyOwn(file));
  const version = await served.site.askFor(file);
  if (!version.hasPage(file) && version.hasPage(`${file}/index.html`)) {
    response.writeHead(301, { Location: `/${encodeURI(file)}/${url.search}` }).end();
    return;
  }
  send(request, response, await replyWith(version, file, served.tellFault));
}

async function listen(path: string, mark: string, response: ServerResponse, served: Served): Promise<void> {
  const version = await served.site.askFor(path);
  if (!response.destroyed) served.news.add({ path, mark, response }, (asked) => version.markPage(asked));
}

async function replyWith(version: Version, file: string, tellFault: TellFault): Promise<Reply> {
  const mark = version.markPage(file);
  if (version.hasPage(file)) return replyPage(version, file, 200, mark, tellFault);
  const body = await version.make(file);
  if (body === undefined) return replyPage(version, "404.html", 404, mark, tellFault);
  const policy = path.extname(file) === ".svg" ? { policy: drawingPolicy } : {};
  return { status: 200, type: mediaTypeOf(file), body, ...policy };
}

/** `mark` is of the page that was asked for, so that one that is missing shows itself when it is there. */
function replyPage(
  version: Version,
  file: string,
  status: number,
  mark: string,
  tellFault: TellFault,
): Reply {
  const page = { type: mediaTypeOf("index.html"), policy: `${servedPolicy}; frame-ancestors 'none'` };
  try {
    return { ...page, status, body: dressPage(version.renderPage(file) ?? "", mark) };
  } catch (error) {
    tellFault(error);
    return { ...page, status: 500, body: formatFailure(mark) };
  }
}

/** The two files of the server's own; they may be edited while it runs. */
async function replyOwn(file: string): Promise<Reply> {
  const name = path.basename(file);
  const isOurs = name === "reload.js" || name === "notice.css";
  if (!isOurs) return { status: 404, type: plain, body: "There is no such file.\n" };
  const body = await readOwn(path.join(import.meta.dirname, name));
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
    ETag: tag,
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
  else response.writeHead(status, { "Content-Type": plain }).end(`${reason}\n`);
}
