// Floor 7. From a file somebody names to its numbers, in a child process, with the settings of a gallery that says
// nothing of its own.
import { defaultCloth } from "../colour/cloth.ts";
import type { Measure } from "../measure/measure.ts";
import type { Outcome } from "../problem/problem.ts";
import type { DrawnComparison } from "../study/analyse.ts";
import { catchFault } from "../study/fault.ts";
import { readDrawing } from "../study/load.ts";
import type { OptionsReport } from "../study/options.ts";
import { defaultPalette } from "../study/palette.ts";
import { Pool } from "../study/pool.ts";
import type { Store } from "../study/store.ts";
import type { Change } from "../study/study.ts";
import type { SurveyedFlag } from "../study/survey.ts";

/** How a drawing is looked at: from how many flag heights away, and what has to be seen (as typed). */
export interface Looking {
  readonly distance: number;
  readonly focus?: string;
}

/** Drawings by file name. One that is stuck ends as a problem. Problems: those of `readDrawing` and of the work. */
export class Desk {
  private readonly pool: Pool;
  private readonly looking: Looking;

  /** With a store, what was measured before is not measured again. */
  constructor(looking: Looking, store?: Store) {
    this.looking = looking;
    this.pool = new Pool({}, store);
  }

  measure(file: string): Promise<Outcome<Measure>> {
    return this.read(file, (bytes) => this.pool.run("measure", file, this.input(file, bytes)));
  }

  /** Compares the drawing with itself after `change`. */
  compare(file: string, change: Change): Promise<Outcome<DrawnComparison>> {
    return this.read(file, (bytes) => this.pool.run("compare", file, { ...this.input(file, bytes), change }));
  }

  /** Ranks the single changes of the drawing. */
  rank(file: string): Promise<Outcome<OptionsReport>> {
    return this.read(file, (bytes) => this.pool.run("options", file, this.input(file, bytes)));
  }

  survey(file: string): Promise<Outcome<SurveyedFlag>> {
    return this.read(file, (bytes) => this.pool.run("survey", file, this.input(file, bytes)));
  }

  /** Returns the drawing as it would be published. */
  clean(file: string): Promise<Outcome<string>> {
    return this.read(file, (bytes) => this.pool.run("clean", file, { file, bytes }));
  }

  /** Ends the child processes. */
  close(): void {
    this.pool.close();
  }

  private async read<T>(file: string, work: (bytes: Uint8Array) => Promise<Outcome<T>>): Promise<Outcome<T>> {
    const { value, problems } = await readDrawing(file);
    return value === undefined ? { value, problems } : catchFault(file, () => work(value));
  }

  private input(file: string, bytes: Uint8Array) {
    const { distance, focus } = this.looking;
    const options = { cloth: defaultCloth, palette: defaultPalette, distance };
    return { file, bytes, options, ...(focus === undefined ? {} : { focus }) };
  }
}
