// Floor 5. The keys of theme.yaml: which there are, within which limits, and what one looks like.
import { z } from "zod";
import type { KeyGuide } from "../yaml/finding.ts";
import { familyNames } from "./fontfamily.ts";

/**
 * CIELAB lightness of the mat. Within these limits it is a middle grey that stands 3:1 off the page, be that light or dark
 * (WCAG 2.2, 1.4.11); what is lighter or darker makes the colours on it look darker or lighter (our own judgement).
 */
export const matLimits = { least: 45, most: 58 };

const family = z.enum(Object.values(familyNames));

/** The keys of theme.yaml. The descriptions go into the JSON Schema that editors read. */
export const themeSchema = z.strictObject({
  text: family.describe("What running text is set in; Source Serif 4 unless said otherwise.").exactOptional(),
  headings: family.describe("What headings are set in; as the text unless said otherwise.").exactOptional(),
  measure: z
    .number()
    .min(50)
    .max(80)
    .describe("About how many characters a line of running text has at most.")
    .exactOptional(),
  density: z
    .enum(["calm", "close"])
    .describe("How much room is between the parts of a page; calm unless said otherwise.")
    .exactOptional(),
  mat: z
    .number()
    .min(matLimits.least)
    .max(matLimits.most)
    .describe("How light the grey around flags is, as L* of CIELAB; 50 unless said otherwise.")
    .exactOptional(),
});

/** What theme.yaml says. */
export type Theme = z.infer<typeof themeSchema>;

/** How theme.yaml and its keys are called in messages, and an example of each. */
export const themeGuide: KeyGuide = {
  whole: "theme.yaml",
  examples: {
    text: "text: Source Sans 3",
    headings: "headings: Source Serif 4",
    measure: "measure: 60",
    density: "density: close",
    mat: "mat: 55",
  },
};
