// Floor 10. Open pages, each told once when it has changed, and always what is wrong. Source: the WHATWG HTML standard,
// server-sent events.
import type { ServerResponse } from "node:http";
import { hasError, type Problem } from "../problem/problem.ts";
import { formatProblems } from "../problem/problemtext.ts";
import { countSeverity } from "../problem/tally.ts";

/** A page that is open somewhere. `path` as in the published folder; `mark` is of what it shows. */
interface Listener {
  readonly path: string;
  readonly mark: string;
  readonly response: ServerResponse;
}

export class News {
  private readonly listeners = new Set<Listener>();
  private problems: readonly Problem[] = [];

  /** Adds an open page, and tells it at once what there is to tell. */
  add(listener: Listener, markPage: (path: string) => string): void {
    listener.response.writeHead(200, {
      "Content-Type": "text/event-stream",
      "Cache-Control": "no-store",
    });
    // Half a second is soon enough for a server that was started again.
    listener.response.write("retry: 500\n\n");
    this.listeners.add(listener);
    listener.response.on("close", () => this.listeners.delete(listener));
    if (this.problems.length > 0) send(listener, "problems", describe(this.problems));
    this.tellOf(listener, markPage);
  }

  /** Tells every open page that now looks otherwise. */
  tell(markPage: (path: string) => string): void {
    for (const listener of this.listeners) this.tellOf(listener, markPage);
  }

  /** Tells every open page what is wrong now. */
  tellProblems(problems: readonly Problem[]): void {
    this.problems = problems;
    for (const listener of this.listeners) send(listener, "problems", describe(problems));
  }

  close(): void {
    for (const { response } of this.listeners) response.end();
    this.listeners.clear();
  }

  private tellOf(listener: Listener, markPage: (path: string) => string): void {
    if (markPage(listener.path) === listener.mark) return;
    // It asks for the page and comes back as another listener.
    this.listeners.delete(listener);
    send(listener, "changed", "");
    listener.response.end();
  }
}

function send({ response }: Listener, event: string, data: unknown): void {
  response.write(`event: ${event}\ndata: ${JSON.stringify(data)}\n\n`);
}

function describe(problems: readonly Problem[]) {
  const [errors, warnings] = [countSeverity(problems, "error"), countSeverity(problems, "warning")];
  const parts = [
    ...(errors === 0 ? [] : [errors === 1 ? "1 error" : `${errors} errors`]),
    ...(warnings === 0 ? [] : [warnings === 1 ? "1 warning" : `${warnings} warnings`]),
  ];
  const under = errors === 0 ? "" : ": what has an error is shown as it was before";
  return {
    title: `${parts.join(", ")}${under}`,
    text: formatProblems(problems),
    hasError: hasError(problems),
  };
}
