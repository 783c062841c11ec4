// Floor 10. Begins to serve a content folder: child processes, the site, the server, and what opens pages are told.
import type { Pool } from "../analysis/jobs/pool.ts";
import type { Store } from "../analysis/store/resultstore.ts";
import type { Problem } from "../problem/problem.ts";
import { News } from "./eventstream.ts";
import { listenFrom } from "./port.ts";
import { ServedSite } from "./servedsite.ts";
import { createSiteServer } from "./server.ts";
import { findTemplates } from "./templates.ts";

/** Milliseconds that the first page has the machine to itself. */
const breath = 120;

export interface ServeOptions {
  readonly contentDir: string;
  readonly host: string;
  /** The port to listen on; the next free one where it is taken and `isFixed` is not set. 0 is any free one. */
  readonly port: number;
  readonly isFixed: boolean;
  readonly drafts: boolean;
  /** Does the work; closed with the server. */
  readonly pool: Pool;
  readonly store?: Store | undefined;
  /** Where pages are made from; default our own. */
  readonly templatesDir?: string;
  /** Hears of each version that is complete: how many studies it shows, and what is wrong with the folder as it is. */
  readonly onVersion: (studies: number, problems: readonly Problem[]) => void;
  /** Hears of what failed while a request was answered. */
  readonly onFault?: (error: unknown) => void;
}

/** A server that runs. */
export interface Serving {
  readonly port: number;
  close(): Promise<void>;
}

/** Serves a content folder until it is closed. Throws TakenError where the port is taken and fixed, or none is free. */
export async function startServing(options: ServeOptions): Promise<Serving> {
  const { pool } = options;
  const news = new News();
  const site = new ServedSite({
    contentDir: options.contentDir,
    templatesDir: options.templatesDir ?? (await findTemplates()),
    drafts: options.drafts,
    line: pool,
    store: options.store,
    onRestart: () => pool.clear(),
    onVersion: (version, problems) => {
      news.tell((page) => version.markPage(page));
      // For the rest and the edits to come; before, starting them would only keep the first page waiting.
      setTimeout(() => pool.warm(), breath);
      if (problems === undefined) return;
      news.tellProblems(problems);
      options.onVersion(version.countStudies(), problems);
    },
  });
  const server = createSiteServer(site, news, [options.host], options.onFault);
  const close = async (): Promise<void> => {
    site.close();
    news.close();
    pool.close();
    server.closeAllConnections();
    await new Promise((resolve) => server.close(resolve));
    await options.store?.close();
  };
  try {
    const port = await listenFrom(server, options);
    void site.start();
    return { port, close };
  } catch (error) {
    await close();
    throw error;
  }
}
