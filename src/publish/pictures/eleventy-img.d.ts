// Floor 9. The part of eleventy-img 7 that we use, in types: it ships none.
declare module "@11ty/eleventy-img" {
  import type { PngOptions, Sharp } from "sharp";

  export interface Options {
    readonly formats: readonly ["png"];
    readonly widths: readonly ["auto"];
    /** Works, and returns the bytes in place of writing a file. */
    readonly dryRun: true;
    readonly useCache: false;
    readonly sharpPngOptions: PngOptions;
    readonly transform: (image: Sharp) => unknown;
  }

  export default function eleventyImage(
    source: Buffer,
    options: Options,
  ): Promise<{ readonly png: readonly { readonly buffer: Buffer }[] }>;
}
