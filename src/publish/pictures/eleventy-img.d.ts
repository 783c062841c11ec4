// Floor 9. The part of eleventy-img 7 that we use, in types: it ships none.
declare module "@11ty/eleventy-img" {
  import type { CreateRaw, PngOptions, Sharp, WebpOptions } from "sharp";

  export interface Options {
    readonly formats: readonly ("png" | "webp")[];
    readonly widths: readonly ["auto"];
    /** Works, and returns the bytes in place of writing a file. */
    readonly dryRun: true;
    readonly useCache: false;
    /** With {@link urlFormat} and a source in a buffer: makes no name of a digest, and works as without. */
    readonly statsOnly: true;
    readonly urlFormat: () => string;
    readonly sharpOptions: { readonly raw?: CreateRaw };
    readonly sharpPngOptions: PngOptions;
    readonly sharpWebpOptions: WebpOptions;
    readonly transform: (image: Sharp) => void;
  }

  export default function eleventyImage(
    source: Buffer,
    options: Options,
  ): Promise<{ readonly [format in "png" | "webp"]?: readonly { readonly buffer: Buffer }[] }>;
}
