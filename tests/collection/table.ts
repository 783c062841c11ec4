// The proof over many drawings as a table: how many files pass each rule, and which do not, by cause.
import type { Count, FileProof, PaintProof } from "./faithful.ts";

export interface Rule {
  readonly name: string;
  /** Cause and detail of each way in which a file breaks the rule; empty when it passes. */
  readonly exceptions: (proof: FileProof) => readonly string[];
}

const least = 0.995;

export const rules: readonly Rule[] = [
  {
    name: "a. read and written: the same pixels",
    exceptions: ({ changed }) => counted("text that was removed, or another change", "", changed),
  },
  {
    name: "b1. nothing changes away from the paint",
    exceptions: ({ paints }) => paints.flatMap((paint) => listStray(paint)),
  },
  {
    name: "b2. … but at edges of other paints, in blended ones and in hairlines",
    exceptions: ({ paints }) =>
      paints.flatMap((paint) => counted("unexplained", paint.colour, paint.stray.other)),
  },
  {
    name: "b3. everything inside the paint changes",
    exceptions: ({ paints }) =>
      paints.flatMap((paint) => [
        ...counted("something lies over the paint", paint.colour, paint.covered),
        ...counted("unexplained", paint.colour, paint.unpainted),
      ]),
  },
  {
    name: "b4. … but where something lies over it",
    exceptions: ({ paints }) =>
      paints.flatMap((paint) => counted("unexplained", paint.colour, paint.unpainted)),
  },
  {
    name: "c. changed back: as it was",
    exceptions: ({ paints }) =>
      paints.flatMap(({ colour, restored }) => (restored ? [] : [`not restored: ${colour}`])),
  },
  {
    name: "d. changed twice: as changed once",
    exceptions: ({ paints }) =>
      paints.flatMap(({ colour, settled }) => (settled ? [] : [`not settled: ${colour}`])),
  },
  {
    name: "e. labels agree in 99.5 % of the pixels",
    exceptions: ({ agreement }) =>
      agreement >= least ? [] : [`renderers differ: ${(100 * agreement).toFixed(2)} %`],
  },
];

/** Returns how many of `proofs` pass each rule, in the order of {@link rules}. */
export function countPasses(proofs: readonly FileProof[]): readonly number[] {
  return rules.map(({ exceptions }) => proofs.filter((proof) => exceptions(proof).length === 0).length);
}

/** Returns the table, and under each rule its exceptions by cause; at most `shown` files of each. */
export function formatTable(proofs: readonly FileProof[], shown = Number.POSITIVE_INFINITY): string {
  const passes = countPasses(proofs);
  const paints = proofs.reduce((sum, proof) => sum + proof.paints.length, 0);
  const apart = proofs.filter((proof) => proof.apart.length > 0);
  const lines = [`${proofs.length} files, ${paints} flat opaque paints of at least 0.4 % of the area`];
  for (const [index, rule] of rules.entries()) {
    lines.push(`${String(passes[index]).padStart(5)} of ${proofs.length}  ${rule.name}`);
    for (const [cause, files] of groupByCause(rule, proofs))
      lines.push(
        `        ${cause} (${files.length}): ${files.slice(0, shown).join(", ")}${files.length > shown ? ", …" : ""}`,
      );
  }
  lines.push(
    `apart, with translucent paints, gradients or patterns of that size (${apart.length}): ${apart.map(({ name, apart: keys }) => `${name} ${keys.join(" ")}`).join(", ")}`,
  );
  return lines.join("\n");
}

function groupByCause(rule: Rule, proofs: readonly FileProof[]): ReadonlyMap<string, readonly string[]> {
  const causes = new Map<string, string[]>();
  for (const proof of proofs) {
    for (const exception of rule.exceptions(proof)) {
      const [cause = "", detail = ""] = exception.split(": ");
      causes.set(cause, [...(causes.get(cause) ?? []), `${proof.name} ${detail}`]);
    }
  }
  return causes;
}

function listStray({ colour, stray }: PaintProof): readonly string[] {
  return [
    ...counted("anti-aliased edge of others lets it through", colour, stray.edge),
    ...counted("translucent paint, gradient or pattern holds it", colour, stray.blended),
    ...counted("thinner than a quarter of a pixel there", colour, stray.thin),
    ...counted("unexplained", colour, stray.other),
  ];
}

function counted(cause: string, colour: string, { librsvg, resvg }: Count): readonly string[] {
  return librsvg + resvg === 0 ? [] : [`${cause}: ${`${colour} ${librsvg}/${resvg} px`.trim()}`];
}
