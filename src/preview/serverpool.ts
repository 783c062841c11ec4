// Floor 10. The child processes of a server: one to begin with, which starts while the rest of the program is loaded.
import { availableParallelism } from "node:os";
import type { Pool } from "../analysis/jobs/pool.ts";
import type { Store } from "../analysis/store/resultstore.ts";
import { openPool } from "../publish/pictures/drawfiles.ts";

/** Studies that one child has measured by the time that another has started, on two cores that are busy loading. */
const worthwhile = 12;

/** Opens the line that a server hands its work to. Its first child starts at once. */
export function openLine(store: Store | undefined): Pool {
  // One more than there are cores: it waits for the study that somebody looks at.
  const size = Math.min(4, availableParallelism() + 1);
  const pool = openPool({ size, reserved: 1, patience: worthwhile }, store);
  pool.warm(1);
  return pool;
}
