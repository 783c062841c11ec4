// Test support. What the script of the vote's page gives to tests; without a page it does nothing else.
import "../../../templates/client/vote.js";

interface Made {
  readonly id: string;
  readonly series: string;
  readonly votes: readonly { readonly study: string; readonly choice: string; readonly why?: string }[];
}

interface Client {
  orderSides(seed: string, question: string, names: readonly string[]): readonly string[];
  formatBallotLine(made: Made): string;
  formatBallotTable(made: Made): string;
}

export const client = globalThis as unknown as Client;
