// Floor 11. From a file somebody names to its numbers, in a child process, with the settings of a gallery that says
// nothing of its own.

import type { DrawnComparison } from "../analysis/analyse.ts";
import { catchFault } from "../analysis/jobs/catchfault.ts";
import { Pool } from "../analysis/jobs/pool.ts";
import type { OptionsReport } from "../analysis/options/rankoptions.ts";
import type { Store } from "../analysis/store/resultstore.ts";
import type { SurveyedFlag } from "../analysis/survey/surveyflags.ts";
import { defaultCloth } from "../colour/cloth.ts";
import { readDrawing } from "../content/folder/drawingfile.ts";
import { defaultPalette } from "../content/gallery/palette.ts";
import type { Change } from "../content/study/study.ts";
import type { Measure } from "../measure/measurement.ts";
import type { Outcome } from "../problem/problem.ts";

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
    return this.read(file, (bytes) => this.pool.run("measure", file, this.input(bytes)));
  }

  /** Compares the drawing with itself after `change`. */
  compare(file: string, change: Change): Promise<Outcome<DrawnComparison>> {
    return this.read(file, (bytes) => this.pool.run("compare", file, { ...this.input(bytes), change }));
  }

  /** Ranks the single changes of the drawing. */
  rank(file: string): Promise<Outcome<OptionsReport>> {
    return this.read(file, (bytes) => this.pool.run("options", file, this.input(bytes)));
  }

  survey(file: string): Promise<Outcome<SurveyedFlag>> {
    return this.read(file, (bytes) => this.pool.run("survey", file, this.input(bytes)));
  }

  /** Returns the drawing as it would be published. */
  sift(file: string): Promise<Outcome<string>> {
    return this.read(file, (bytes) => this.pool.run("sift", file, { bytes }));
  }

  /** Ends the child processes. */
  close(): void {
    this.pool.close();
  }

  private async read<T>(file: string, work: (bytes: Uint8Array) => Promise<Outcome<T>>): Promise<Outcome<T>> {
    const { value, problems } = await readDrawing(file);
    return value === undefined ? { value, problems } : catchFault(file, () => work(value));
  }

  private input(bytes: Uint8Array) {
    const { distance, focus } = this.looking;
    const options = { cloth: defaultCloth, palette: defaultPalette, distance };
    return { bytes, options, ...(focus === undefined ? {} : { focus }) };
  }
}
