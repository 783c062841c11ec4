// Floor 11. The command preview: shows the gallery in a browser while it is written, until it is told to end.
import { hasError, type Problem } from "../problem/problem.ts";
import { formatProblems } from "../problem/problemtext.ts";
import { numberOf } from "./arguments.ts";
import { openCache } from "./cacheoption.ts";
import { type Given, type Output, UsageError } from "./command.ts";
import { findContent } from "./contentfolder.ts";
import { checkTemporary } from "./temporary.ts";
import { count, countProblems } from "./text/exitstatus.ts";

/** No well-known service has it. Source: none; any would do. */
const usualPort = 8642;

export async function run(given: Given, output: Output): Promise<number> {
  const content = await findContent(given);
  const { host = "127.0.0.1", port: asked } = given.values;
  const port = numberOf(given, "port", [0, 65_535], usualPort);
  await checkTemporary();
  const ended = waitForEnd();
  const store = await openCache(given, content, output);
  const { openLine } = await import("../preview/serverpool.ts");
  const pool = openLine(store);
  const [{ startServing }, { HostError, TakenError }] = await Promise.all([
    import("../preview/startserving.ts"),
    import("../preview/port.ts"),
  ]);
  try {
    const drafts = given.switches.has("with-drafts");
    const onVersion = createReporter(output);
    const options = {
      contentDir: content,
      host,
      port,
      isFixed: asked !== undefined,
      drafts,
      pool,
      store,
      onVersion,
      onFault: createFaultReporter(output),
    };
    const serving = await startServing(options);
    if (asked === undefined && serving.port !== port)
      output.message(`Port ${port} is in use: taking the next.`);
    output.data(`Showing ${content} at http://${host.includes(":") ? `[${host}]` : host}:${serving.port}/`);
    output.message("Pages show every change by themselves. Control-C ends it.");
    await ended;
    await serving.close();
    return 0;
  } catch (error) {
    if (error instanceof HostError)
      throw new UsageError(error.message, "Type, for example: --host 127.0.0.1");
    if (error instanceof TakenError)
      throw new UsageError(error.message, "Name another, for example: --port 0 (any that is free)");
    throw error;
  }
}

/** Resolves when this process is told to end. */
function waitForEnd(): Promise<void> {
  return new Promise((resolve) => {
    for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) process.once(signal, () => resolve());
  });
}

/** Tells a fault with its trace, and once while the same comes back at each request. */
function createFaultReporter(output: Output): (error: unknown) => void {
  let said = "";
  return (error) => {
    const trace = error instanceof Error ? (error.stack ?? error.message) : String(error);
    if (trace !== said) output.message(`A page could not be made:\n${trace}`);
    said = trace;
  };
}

/** Says what is wrong when that has changed, and when all is well again. */
function createReporter(output: Output): (studies: number, problems: readonly Problem[]) => void {
  let said: string | undefined;
  return (studies, problems) => {
    const report = formatProblems(problems);
    if (report === said) return;
    const isFirst = said === undefined;
    said = report;
    const shown = count(studies, "study is shown", "studies are shown");
    if (report !== "") output.message(`\n${report}\n`);
    const under = hasError(problems) && !isFirst ? "; what has an error is shown as it was before" : "";
    output.message(`${countProblems(problems)}: ${shown}${under}.`);
  };
}
